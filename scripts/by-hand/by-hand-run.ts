import type { RunInput, RunSettings } from '#shared-core';
import { drawByHand, type SideChannel, type Tag } from './draw-by-hand.ts';
import { runStill, type StillCourse } from './hand-heated-still.ts';
import { type ByHandReport, reportByHand } from './report-by-hand.ts';

/** What of a course is needed to judge by; what the bulb felt is only needed to report. */
export type KeptCourse = Omit<StillCourse, 'feltC' | 'slowness'>;

/** One run as it is kept: plain data, so that it can be written to a file and judged again. */
export interface ByHandRun {
  readonly name: string;
  readonly tags: readonly Tag[];
  readonly settings: RunSettings;
  readonly channels: readonly SideChannel[];
  readonly report: ByHandReport;
  readonly course: KeptCourse;
  readonly words: string;
}

export function byHandRun(seed: string): ByHandRun {
  const draw = drawByHand(seed);
  const course = runStill(draw.still, draw.random.fork('still'));
  const { feltC, slowness, ...kept } = course;
  const { column, usualDistillateMolPerS, pressureKPa, bulb } = draw.still;
  const refluxRatio = column.usualMolPerS / usualDistillateMolPerS - 1;
  return {
    name: seed,
    tags: draw.tags,
    settings: draw.settings,
    channels: draw.channels,
    report: reportByHand(draw, course),
    course: kept,
    words: `units ${column.transferUnits.toFixed(1)} R ${refluxRatio.toFixed(1)} P ${pressureKPa.toFixed(1)} bulb ${bulb.tooHighCm.toFixed(1)} cm probe ${draw.probe.offsetK.toFixed(2)} K acts ${course.acts.length}`,
  };
}

/** What the monitor is given, in time order. */
export function inputsOf(
  { report }: ByHandRun,
  channels: readonly SideChannel[],
): readonly RunInput[] {
  const readings = (channel: string): RunInput[] => {
    const { unit, timeS, values, bad } =
      channel === 'head' ? report.head : report.side[channel as SideChannel];
    const faults = new Set(bad);
    return timeS.map((atS, index) => ({
      kind: 'reading',
      timeS: atS,
      channel,
      value: values[index] as number,
      unit,
      quality: faults.has(index) ? 'bad' : 'good',
    }));
  };
  return ['head', ...channels]
    .flatMap(readings)
    .concat(report.others)
    .toSorted((a, b) => a.timeS - b.timeS);
}

export function endS({ course }: ByHandRun): number {
  return course.bulbC.length - 1;
}
