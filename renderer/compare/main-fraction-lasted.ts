import type { Estimate, StageSpan, Verdicts } from '#shared-core';

/** The strength of the vapour at one moment, where it was known. */
interface StrengthAt extends Estimate {
  readonly timeS: number;
}

/**
 * How long the main fraction lasted [s], 95 %. It begins where the first fraction was set apart, which is a convention, and ends where
 * the vapour passed the limit, which lies between the first moment it may have and the first it must have; or where vapour was gone.
 */
export function mainFractionLastedS(
  { stages, estimates }: Pick<Verdicts, 'stages' | 'estimates'>,
  leastStrengthAbv: number,
  endS: number,
): Estimate | null {
  const main = stages.find(({ stage }) => stage === 'main-fraction');
  if (main === undefined) return null;
  const calledS = main.toS ?? endS;
  const known = estimates.flatMap(({ timeS, headVapourAbv }) =>
    headVapourAbv === null || timeS < main.fromS ? [] : [{ timeS, ...headVapourAbv }],
  );
  const before = known.filter(({ timeS }) => timeS <= calledS);
  const after = known.filter(({ timeS }) => timeS > calledS);
  const sure = before.findLastIndex(({ low }) => low >= leastStrengthAbv);
  const mayS = crossingS(before[sure], before[sure + 1] ?? after[0], 'low', leastStrengthAbv);
  const isOver = after.findIndex(({ high }) => high < leastStrengthAbv);
  const mustS =
    isOver < 0
      ? vapourGoneS(stages, main, endS)
      : crossingS(after[isOver - 1] ?? before.at(-1), after[isOver], 'high', leastStrengthAbv);
  return {
    value: calledS - main.fromS,
    low: Math.min(mayS ?? main.fromS, calledS) - main.fromS,
    high: Math.max(mustS ?? calledS, calledS) - main.fromS,
  };
}

/** When one end of the interval fell through the limit: between the last estimate above it and the next. */
function crossingS(
  above: StrengthAt | undefined,
  below: StrengthAt | undefined,
  end: 'low' | 'high',
  limitAbv: number,
): number | null {
  if (above === undefined) return null;
  if (below === undefined) return Number.POSITIVE_INFINITY;
  const share = (above[end] - limitAbv) / (above[end] - below[end]);
  return above.timeS + share * (below.timeS - above.timeS);
}

/** After it no vapour comes that could be strong enough. */
function vapourGoneS(stages: readonly StageSpan[], main: StageSpan, endS: number): number {
  return (
    stages.find(({ stage, fromS }) => stage === 'cool-down' && fromS >= main.fromS)?.fromS ?? endS
  );
}
