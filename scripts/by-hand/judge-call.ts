import type { ByHandRun } from './by-hand-run.ts';
import type { ByHandTruth } from './by-hand-truth.ts';

/** `none`: there is no main fraction to call the end of, or heat came off in the middle of it. */
export type CallJudgement = 'good' | 'late' | 'missed' | 'false' | 'none';

const lateByS = 60;
const lateBelowAbv = 2;
const falseBeforeShare = 0.85;

/**
 * A first heat-off call against the true limit. False: before 85 % of the main fraction has come over. Late: more than
 * 60 s after the limit, with vapour more than 2 % vol weaker. Missed: never while the heat was on.
 */
export function judgeCall(
  { course, settings }: ByHandRun,
  { mainFromS, limitS }: ByHandTruth,
  calledS: number | null,
): CallJudgement {
  if (mainFromS === null) return 'none';
  const { aboveLimitMl, abv, heatOffS } = course;
  const called = calledS !== null && calledS < heatOffS ? Math.round(calledS) : null;
  if (called !== null && called < (limitS ?? heatOffS)) {
    const ml = (timeS: number): number => aboveLimitMl[Math.max(timeS, mainFromS)] as number;
    const startMl = aboveLimitMl[mainFromS] as number;
    const share = (ml(called) - startMl) / (ml(limitS ?? heatOffS) - startMl);
    return share < falseBeforeShare ? 'false' : 'good';
  }
  if (limitS === null) return 'none';
  if (called === null) return 'missed';
  const isWeak = (abv[called] as number) < settings.leastStrengthAbv - lateBelowAbv;
  return called > limitS + lateByS && isWeak ? 'late' : 'good';
}
