import type { RunInput } from '../run/index.ts';

/** The range that the settings allow [s]. */
const [leastS, mostS] = [5, 600] as const;
const intervalsMissed = 3;

/**
 * How long a recorded head may say nothing before its probe counts as silent: three of the logger's
 * usual (median) intervals, from 5 s to 600 s.
 *
 * @param inputs readings, marks and link changes in time order
 *
 * Source: this project's rule; no standard.
 * @example
 * const at = (timeS) => ({ kind: 'reading', timeS, channel: 'head', value: 20, unit: '°C', quality: 'good' });
 * loggerSilenceS([at(0), at(30), at(60), at(300)]) // => 90
 * loggerSilenceS([]) // => 5
 */
export function loggerSilenceS(inputs: Iterable<RunInput>): number {
  const intervalsS: number[] = [];
  let lastS: number | null = null;
  for (const input of inputs) {
    if (input.kind !== 'reading' || input.channel !== 'head') continue;
    if (lastS !== null && input.timeS > lastS) intervalsS.push(input.timeS - lastS);
    lastS = input.timeS;
  }
  const sorted = Float64Array.from(intervalsS).sort();
  const medianS = sorted[sorted.length >> 1] ?? 0;
  return Math.min(mostS, Math.max(leastS, intervalsMissed * medianS));
}
