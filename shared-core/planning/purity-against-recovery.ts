import { estimateFrom } from './estimate-from.ts';
import type { PlanOutcome, PlanSample } from './run-member.ts';
import type { PurityPoint } from './run-plan.ts';

const stepFraction = 0.05;
/** A point is given only where most of the runs get that far. */
const leastShare = 0.8;

/** How mean strength falls as more of the ethanol is collected, over all runs. */
export function purityAgainstRecovery(outcomes: readonly PlanOutcome[]): readonly PurityPoint[] {
  const points: PurityPoint[] = [];
  for (let index = 1; index * stepFraction < 1; index++) {
    const recoveredFraction = Math.round(index * stepFraction * 100) / 100;
    const reached = outcomes
      .map(({ samples }) => firstRecovering(samples, recoveredFraction))
      .filter((sample) => sample !== undefined);
    if (reached.length < leastShare * outcomes.length) break;
    const strengthAbv = estimateFrom(reached.map((sample) => sample.meanStrengthAbv));
    const vapourStrengthAbv = estimateFrom(reached.map((sample) => sample.vapourStrengthAbv));
    if (strengthAbv === null || vapourStrengthAbv === null) break;
    points.push({ recoveredFraction, strengthAbv, vapourStrengthAbv });
  }
  return points;
}

function firstRecovering(samples: readonly PlanSample[], share: number): PlanSample | undefined {
  return samples.find((sample) => sample.recoveredFraction >= share);
}
