import { estimateEveryS } from '../monitor/index.ts';
import type { Verdicts } from '../snapshot/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { strengthBetween } from './place-among.ts';

/**
 * How strong the vapour at the head was as the monitor told it, in an interval of stepS round a time: straight from one minute to the next as the books
 * take it, null where none was told at either of them. An interval in which one was told has that one. All that is said of a strength over time is
 * taken from here, so that a moment, a report and a sheet say the same of a run.
 *
 * @param estimates in order of time [% vol at 20 °C]
 * @param timeS middle of the interval, since the run began [s]
 * @param stepS its width [s], > 0
 * @returns value and 95 % interval [% vol at 20 °C]
 *
 * Source: linear interpolation.
 * @example
 * const told = (timeS, value) => ({ timeS, headVapourAbv: value === null ? null : { value, low: value - 1, high: value + 1 } });
 * const estimates = [told(600, 90), told(660, 84), told(720, null)];
 * strengthToldAt(estimates, 620, 1) // => { "value": 88, "low": 87, "high": 89 }
 * strengthToldAt(estimates, 700, 1) // => null
 */
export function strengthToldAt(
  estimates: Verdicts['estimates'],
  timeS: number,
  stepS: number,
): Estimate | null {
  const next = countBefore(estimates, timeS + stepS / 2);
  const [before, after] = [estimates[next - 1], estimates[next]];
  if (before?.headVapourAbv == null) return null;
  const from = { timeS: before.timeS, abv: before.headVapourAbv };
  if (from.timeS >= timeS - stepS / 2) return from.abv;
  // A minute that is left out is one of a still that cools.
  if (after?.headVapourAbv == null || after.timeS - from.timeS > estimateEveryS) return null;
  const to = { timeS: after.timeS, abv: after.headVapourAbv };
  return strengthBetween({ from, to, share: (timeS - from.timeS) / (to.timeS - from.timeS) });
}

function countBefore(estimates: Verdicts['estimates'], timeS: number): number {
  let low = 0;
  let high = estimates.length;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if ((estimates[middle]?.timeS ?? Number.POSITIVE_INFINITY) < timeS) low = middle + 1;
    else high = middle;
  }
  return low;
}
