import type { RunPlan } from '#shared-core';

/** Share of the ethanol collected when the mean strength has fallen to a value; null when it never does. */
export function recoveryAtMeanStrength(
  points: RunPlan['purityAgainstRecovery'],
  meanStrengthAbv: number,
): number | null {
  for (let index = 1; index < points.length; index++) {
    const before = points[index - 1]!;
    const after = points[index]!;
    const drop = before.strengthAbv.value - after.strengthAbv.value;
    if (after.strengthAbv.value > meanStrengthAbv || drop <= 0) continue;
    const along = Math.max(0, (before.strengthAbv.value - meanStrengthAbv) / drop);
    return before.recoveredFraction + along * (after.recoveredFraction - before.recoveredFraction);
  }
  return null;
}
