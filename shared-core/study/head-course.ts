import type { RunInput, RunSettings } from '../run/index.ts';
import { pressureCourse } from './pressure-course.ts';

/** The head over an interval, calibrated, with the air pressure at that time. */
export interface HeadRow {
  /** Middle of the interval averaged over [s]. */
  readonly timeS: number;
  /** Mean of the good readings, calibrated [°C]. */
  readonly headC: number;
  readonly readings: number;
  readonly pressureKPa: number;
}

export interface HeadToFollow {
  readonly settings: Pick<RunSettings, 'probe' | 'pressure'>;
  /** Gone through more than once. */
  readonly inputs: Iterable<RunInput>;
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

/** A run's head readings averaged over equal intervals and calibrated; intervals without a good reading have no row. */
export function headCourse({ settings, inputs, endS }: HeadToFollow): readonly HeadRow[] {
  const stepS = processingStepS(endS);
  const pressureAt = pressureCourse(settings.pressure, inputs);
  const rows: HeadRow[] = [];
  let bin = -1;
  let sum = 0;
  let readings = 0;
  const close = () => {
    if (readings === 0) return;
    const timeS = (bin + 0.5) * stepS;
    const headC = settings.probe.offsetK + settings.probe.gain * (sum / readings);
    rows.push({ timeS, headC, readings, pressureKPa: pressureAt(timeS).pressureKPa });
  };
  for (const input of inputs) {
    if (input.kind !== 'reading' || input.channel !== 'head' || input.quality !== 'good') continue;
    const index = Math.floor(input.timeS / stepS);
    // A clock that was set or a damaged record runs back: what is of an interval that is over comes too late for it.
    if (index < bin) continue;
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
