import { strengthBetween } from '../distillate/index.ts';
import { estimateEveryS } from '../monitor/index.ts';
import type { Verdicts } from '../snapshot/index.ts';
import type { Estimate } from '../uncertainty/index.ts';

/**
 * How strong the vapour at the head is as the monitor told it, asked for intervals of stepS by their middles, which only go forward: straight from one
 * minute to the next as the books take it, null where none was told at either of them. An interval in which one was told has that one.
 */
export function strengthTold(
  estimates: Verdicts['estimates'],
  stepS: number,
): (timeS: number) => Estimate | null {
  let next = 0;
  return (timeS) => {
    while ((estimates[next]?.timeS ?? Number.POSITIVE_INFINITY) < timeS + stepS / 2) next += 1;
    const [before, after] = [estimates[next - 1], estimates[next]];
    if (before?.headVapourAbv == null) return null;
    const from = { timeS: before.timeS, abv: before.headVapourAbv };
    if (from.timeS >= timeS - stepS / 2) return from.abv;
    // A minute that is left out is one of a still that cools.
    if (after?.headVapourAbv == null || after.timeS - from.timeS > estimateEveryS) return null;
    const to = { timeS: after.timeS, abv: after.headVapourAbv };
    return strengthBetween({ from, to, share: (timeS - from.timeS) / (to.timeS - from.timeS) });
  };
}
