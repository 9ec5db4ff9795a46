import { strengthToldAt, vapourLeftS } from '../distillate/index.ts';
import { headVapour } from '../equilibrium/index.ts';
import { scaleDoubts } from '../probe/index.ts';
import type { RunInput, RunSettings } from '../run/index.ts';
import type { Verdicts } from '../snapshot/index.ts';
import type { Stage, StageSpan } from '../stages/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { type HeadRow, headCourse, processingStepS } from './head-course.ts';
import { pressureCourse } from './pressure-course.ts';

/** One moment of a run as the tool sees it: calibrated, averaged, interpreted. */
export interface ProcessedRow extends HeadRow {
  readonly stage: Stage;
  readonly aboveAzeotropeK: number;
  /** Whether vapour bathed the bulb, as far as can be told afterwards. */
  readonly isBathed: boolean;
  /** Strength of the head vapour [% vol at 20 °C] as the monitor told it; null where it told none. */
  readonly vapourAbv: Estimate | null;
}

export interface RunToProcess {
  readonly settings: Pick<RunSettings, 'probe' | 'pressure'>;
  readonly inputs: readonly RunInput[];
  readonly verdicts: Pick<Verdicts, 'stages' | 'estimates'>;
  readonly endS: number;
}

/**
 * A run's head readings averaged over equal intervals, calibrated as `T = offset + gain · reading`, with stage,
 * pressure and distance from the azeotrope beside each, and the strength of the vapour that the monitor told then: it has learned of probe and pressure
 * what a temperature alone does not say. Intervals without a good reading have no row.
 *
 * @param run settings (probe offset [K], gain; pressure [kPa]), inputs in order of time, the monitor's stages and estimates [% vol], endS [s] ≥ 0
 * @returns rows in order of time
 *
 * Source: see `headVapour`; between two estimates a straight line.
 * @example
 * const inputs = [0.2, 0.7].map((timeS) => ({ kind: 'reading', timeS, channel: 'head', value: 20, unit: '°C', quality: 'good' }));
 * processedRows({ settings: defaultRunSettings, inputs, verdicts: { stages: [], estimates: [] }, endS: 1 }).map((row) => [row.timeS, row.headC, row.readings]) // => [[0.5, 20, 2]]
 */
export function processedRows({
  settings,
  inputs,
  verdicts: { stages, estimates },
  endS,
}: RunToProcess): readonly ProcessedRow[] {
  const stageAt = stageCourse(stages);
  const course = headCourse({ settings, inputs, endS });
  const leftS = vapourLeftS(course, stages);
  const pressureAt = pressureCourse(settings.pressure, inputs);
  const stepS = processingStepS(endS);
  return course.map((row) => {
    const { timeS, headC, pressureKPa } = row;
    const stage = stageAt(timeS);
    const vapour = headVapour({
      temperatureC: Math.min(150, Math.max(-50, headC)),
      pressureKPa,
      ...scaleDoubts({ probe: settings.probe, pressure: pressureAt(timeS) }),
    });
    const isInVapour = stage !== 'warm-up' && stage !== 'cool-down' && timeS <= leftS;
    const vapourAbv = isInVapour ? strengthToldAt(estimates, timeS, stepS) : null;
    return {
      ...row,
      stage,
      aboveAzeotropeK: vapour.temperatureAboveAzeotropeK,
      // A bulb that reads colder than any vapour may hang in it all the same, where the monitor has found by how much it reads low.
      isBathed: isInVapour && (vapour.kind === 'ethanol-water' || vapourAbv !== null),
      vapourAbv,
    };
  });
}

/** Stage at a time, for times that only go forward. */
function stageCourse(stages: readonly StageSpan[]): (timeS: number) => Stage {
  let current = 0;
  return (timeS) => {
    while ((stages[current + 1]?.fromS ?? Number.POSITIVE_INFINITY) <= timeS) current += 1;
    return stages[current]?.stage ?? 'warm-up';
  };
}
