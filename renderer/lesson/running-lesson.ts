import type { RunPlan, Snapshot } from '#shared-core';
import { expectedEnd } from '../strip/index.ts';
import type { Stretch } from './expected-time.ts';

/** What is still ahead in the run, as ranges of run time [s]; null where it is past, or nothing is known of it. */
export interface RunningLesson {
  readonly vapour: Stretch | null;
  readonly heatOff: Stretch | null;
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
  if (snapshot.stage.stage !== 'warm-up') return { vapour: null, heatOff: expectedEnd(snapshot) };
  if (plan === null || snapshot.heat === 'off') return { vapour: null, heatOff: null };
  const fromS = heatOnS ?? snapshot.timeS;
  return {
    vapour: later(plan.timeToVapourS, fromS),
    heatOff: later(plan.mainFraction?.toS ?? null, fromS),
  };
}

function later(range: Stretch | null, byS: number): Stretch | null {
  return range && { low: range.low + byS, high: range.high + byS };
}
