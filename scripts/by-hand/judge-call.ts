import type { ByHandRun } from './by-hand-run.ts';
import type { ByHandTruth } from './by-hand-truth.ts';

/**
 * `spell`: too early by the volume, but the vapour was truly weaker than the limit, and came back only because the person
 * then heated otherwise. `none`: there is no main fraction to call the end of, or heat came off in the middle of it.
 */
export type CallJudgement = 'good' | 'late' | 'missed' | 'false' | 'spell' | 'none';

const lateByS = 60;
const lateBelowAbv = 2;
const falseBeforeShare = 0.85;
const spellS = 20;

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
  const { aboveLimitMl, abv, bathed, heatOffS } = course;
  const called = calledS !== null && calledS < heatOffS ? Math.round(calledS) : null;
  if (called !== null && called < (limitS ?? heatOffS)) {
    const ml = (timeS: number): number => aboveLimitMl[Math.max(timeS, mainFromS)] as number;
    const startMl = aboveLimitMl[mainFromS] as number;
    const share = (ml(called) - startMl) / (ml(limitS ?? heatOffS) - startMl);
    if (share >= falseBeforeShare) return 'good';
    return wasWeak({ bathed, abv }, called, settings.leastStrengthAbv) ? 'spell' : 'false';
  }
  if (limitS === null) return 'none';
  if (called === null) return 'missed';
  const isWeak = (abv[called] as number) < settings.leastStrengthAbv - lateBelowAbv;
  return called > limitS + lateByS && isWeak ? 'late' : 'good';
}

/** Whether what last passed the bulb was weaker than the limit, for long enough to be told. */
function wasWeak(
  { bathed, abv }: { readonly bathed: readonly number[]; readonly abv: readonly number[] },
  atS: number,
  leastStrengthAbv: number,
): boolean {
  let seen = 0;
  for (let timeS = atS; timeS > 0 && seen < spellS; timeS -= 1) {
    if ((bathed[timeS] as number) < 0.9) continue;
    if ((abv[timeS] as number) >= leastStrengthAbv) return false;
    seen += 1;
  }
  return true;
}
