/** A spell of bumping: boil-up held back, then set free, again and again. */
export interface Surge {
  untilS: number;
  /** Share of the boil-up that is held back, 0 … 1. */
  depth: number;
  periodS: number;
  startedS: number;
  /** Mean boil-up, learnt while the pot boils evenly [mol/s]. */
  usualMolPerS: number;
}

/** Share of the period in which the pot is held back before it bumps. */
const quietShare = 0.75;
const averagingS = 60;

export function calmSurge(): Surge {
  return { untilS: Number.NEGATIVE_INFINITY, depth: 0, periodS: 1, startedS: 0, usualMolPerS: 0 };
}

/** Most vapour the pot may release in this step [mol]. */
export function potReleaseMol(surge: Surge, timeS: number, stepS: number): number {
  if (timeS >= surge.untilS) return Number.POSITIVE_INFINITY;
  const phase = ((timeS - surge.startedS) % surge.periodS) / surge.periodS;
  const quiet = 1 - surge.depth;
  // A burst gives back what was held, spread over the rest of the period, so it does not clear at once.
  const burst = 1 + (surge.depth * quietShare) / (1 - quietShare);
  return (phase < quietShare ? quiet : burst) * surge.usualMolPerS * stepS;
}

/** Learns the usual boil-up while the pot boils evenly. */
export function observeBoilUp(
  surge: Surge,
  timeS: number,
  stepS: number,
  boilUpMolPerS: number,
): void {
  if (timeS < surge.untilS) return;
  surge.usualMolPerS += (boilUpMolPerS - surge.usualMolPerS) * (stepS / averagingS);
}
