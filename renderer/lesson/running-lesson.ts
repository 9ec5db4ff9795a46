import type { RunPlan, Snapshot } from '#shared-core';
import { expectedEnd } from '../strip/index.ts';
import type { Expectation, Stretch } from './expected-time.ts';

/** What is still ahead in the run, as ranges of run time [s]; null where it is past, or nothing is known of it. */
export interface RunningLesson {
  readonly vapour: Expectation | null;
  readonly heatOff: Expectation | null;
}

/**
 * Until vapour comes nothing is measured that could tell more than the plan, which counts from the heat; from then on the run's own
 * forecast holds, and the plan is not asked any more.
 */
export function runningLesson(
  snapshot: Snapshot,
  plan: RunPlan | null,
  heatOnS: number | null,
): RunningLesson {
  if (snapshot.stage.stage !== 'warm-up') {
    const end = expectedEnd(snapshot);
    return { vapour: null, heatOff: end && { ...end, madeS: snapshot.timeS } };
  }
  if (plan === null || snapshot.heat === 'off') return { vapour: null, heatOff: null };
  const fromS = heatOnS ?? snapshot.timeS;
  return {
    vapour: later(plan.timeToVapourS, fromS),
    heatOff: later(plan.mainFraction?.toS ?? null, fromS),
  };
}

/** As planned, counted from when the heat was on. */
function later(range: Stretch | null, byS: number): Expectation | null {
  return range && { low: range.low + byS, high: range.high + byS, madeS: byS };
}
