import { headVapour } from '../equilibrium/index.ts';
import { type RunInput, type RunSettings, standingMarks } from '../run/index.ts';
import type { Stage, StageSpan } from '../snapshot/index.ts';
import type { Interval } from '../uncertainty/index.ts';

/** One moment of a run as the tool sees it: calibrated, averaged, interpreted. */
export interface ProcessedRow {
  /** Middle of the interval averaged over [s]. */
  readonly timeS: number;
  /** Mean of the good readings, calibrated [°C]. */
  readonly headC: number;
  readonly readings: number;
  readonly pressureKPa: number;
  readonly stage: Stage;
  readonly aboveAzeotropeK: number;
  /** Strength of the head vapour [% vol at 20 °C]; null while no vapour bathes the bulb. */
  readonly vapourAbv: Interval | null;
}

export interface RunToProcess {
  readonly settings: Pick<RunSettings, 'probe' | 'pressure'>;
  readonly inputs: readonly RunInput[];
  readonly stages: readonly StageSpan[];
  readonly endS: number;
}

/** More rows than this help nobody: longer runs are averaged over longer intervals. */
const mostRows = 20_000;
const niceStepsS = [1, 2, 5, 10, 20, 30, 60, 120, 300, 600];

/**
 * The interval over which a run's readings are averaged: 1 s for runs up to 5.5 h, then the next round number.
 *
 * @param endS length of the run [s], ≥ 0
 * @returns interval [s]
 *
 * Source: this project's choice.
 * @example
 * processingStepS(5400) // => 1
 * processingStepS(36000) // => 2
 */
export function processingStepS(endS: number): number {
  return niceStepsS.find((step) => endS / step <= mostRows) ?? Math.ceil(endS / mostRows);
}

/**
 * A run's head readings averaged over equal intervals, calibrated as `T = offset + gain · reading`, with stage,
 * pressure, distance from the azeotrope and vapour strength beside each. Intervals without a good reading have no row.
 *
 * @param run settings (probe offset [K], gain; pressure [kPa]), inputs in order of time, stages, endS [s] ≥ 0
 * @returns rows in order of time
 *
 * Source: see `headVapour`.
 * @example
 * const inputs = [0.2, 0.7].map((timeS) => ({ kind: 'reading', timeS, channel: 'head', value: 20, unit: '°C', quality: 'good' }));
 * processedRows({ settings: defaultRunSettings, inputs, stages: [], endS: 1 }).map((row) => [row.timeS, row.headC, row.readings]) // => [[0.5, 20, 2]]
 */
export function processedRows({
  settings,
  inputs,
  stages,
  endS,
}: RunToProcess): readonly ProcessedRow[] {
  const stepS = processingStepS(endS);
  const pressureAt = pressureCourse(settings.pressure, inputs);
  const stageAt = stageCourse(stages);
  const rows: ProcessedRow[] = [];
  let bin = -1;
  let sum = 0;
  let readings = 0;
  const close = () => {
    if (readings === 0) return;
    const timeS = (bin + 0.5) * stepS;
    const headC = settings.probe.offsetK + settings.probe.gain * (sum / readings);
    rows.push(interpret(timeS, headC, readings));
  };
  function interpret(timeS: number, headC: number, count: number): ProcessedRow {
    const pressureKPa = pressureAt(timeS);
    const stage = stageAt(timeS);
    const vapour = headVapour({
      temperatureC: Math.min(150, Math.max(-50, headC)),
      pressureKPa,
      temperatureUncertaintyK: settings.probe.standardUncertaintyK,
      pressureUncertaintyKPa: settings.pressure.standardUncertaintyKPa,
    });
    const isBathed =
      stage !== 'warm-up' && stage !== 'cool-down' && vapour.kind === 'ethanol-water';
    return {
      timeS,
      headC,
      readings: count,
      pressureKPa,
      stage,
      aboveAzeotropeK: vapour.temperatureAboveAzeotropeK,
      vapourAbv: isBathed ? vapour.alcoholByVolume : null,
    };
  }
  for (const input of inputs) {
    if (input.kind !== 'reading' || input.channel !== 'head' || input.quality !== 'good') continue;
    const index = Math.floor(input.timeS / stepS);
    if (index !== bin) {
      close();
      [bin, sum, readings] = [index, 0, 0];
    }
    sum += input.value;
    readings += 1;
  }
  close();
  return rows;
}

/** Pressure at a time: the last one written down or, if the run says so, measured; times only go forward. */
function pressureCourse(
  setting: RunSettings['pressure'],
  inputs: readonly RunInput[],
): (timeS: number) => number {
  const changes = [
    ...standingMarks(inputs).flatMap(({ timeS, mark }) =>
      mark.type === 'pressure-read' ? [{ timeS, pressureKPa: mark.pressureKPa }] : [],
    ),
    ...inputs.flatMap((input) =>
      setting.source === 'channel' &&
      input.kind === 'reading' &&
      input.channel === 'air-pressure' &&
      input.quality === 'good' &&
      input.value >= 50 &&
      input.value <= 115
        ? [{ timeS: input.timeS, pressureKPa: input.value }]
        : [],
    ),
  ].sort((a, b) => a.timeS - b.timeS);
  let next = 0;
  let pressureKPa = setting.pressureKPa;
  return (timeS) => {
    for (let change = changes[next]; change !== undefined && change.timeS <= timeS; ) {
      pressureKPa = change.pressureKPa;
      next += 1;
      change = changes[next];
    }
    return pressureKPa;
  };
}

/** Stage at a time, for times that only go forward. */
function stageCourse(stages: readonly StageSpan[]): (timeS: number) => Stage {
  let current = 0;
  return (timeS) => {
    while ((stages[current + 1]?.fromS ?? Number.POSITIVE_INFINITY) <= timeS) current += 1;
    return stages[current]?.stage ?? 'warm-up';
  };
}
