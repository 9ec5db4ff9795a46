import { type DistillatePoint, meanStrength } from '../distillate/index.ts';
import { type ChargeSetting, chargeDoubtMl, cylinderDoubt } from '../run/index.ts';
import type { Estimate } from '../uncertainty/index.ts';

/** How pure and how complete the distillate was at a time. */
export interface RecoveryPoint {
  readonly timeS: number;
  readonly volumeMl: number;
  /** Mean strength of all collected [% vol]. */
  readonly meanStrengthAbv: Estimate;
  /** Share of the charge's ethanol collected, 0 … 1. */
  readonly recovery: Estimate;
}

/** More points than a drawing is wide show nothing more. */
const mostPoints = 60;

/**
 * Purity against recovery as the run went: mean strength `q̄` of what was collected, see {@link meanStrength}, and recovery `V q̄/(V0 q0)`, this with the
 * doubts of charge and receiver (k = 2). Volumes are taken as at 20 °C; hold-up in column and condenser is left out.
 *
 * @param course what came over by when [mL, % vol], in order of time
 * @param charge what went into the pot [mL, % vol]
 * @returns points of the course, the last of them always, at most sixty
 *
 * Source: mass balance, own derivation; volumes of mixing below 0.1 % above 80 % vol are ignored.
 * @example
 * const abv = { value: 90, low: 88, high: 92 };
 * const course = [0, 5, 10].map((volumeMl) => ({ timeS: 60 * volumeMl, volumeMl, abv, stretch: null }));
 * const charge = { volumeMl: 200, strengthAbv: 9, standardUncertaintyAbv: 0 };
 * recoverySoFar(course, charge)[1].recovery.value // ≈ 0.5 ± 1e-9
 */
export function recoverySoFar(
  course: readonly DistillatePoint[],
  charge: ChargeSetting,
): readonly RecoveryPoint[] {
  const chargeEthanolMl = (charge.volumeMl * charge.strengthAbv) / 100;
  const ofCharge = Math.hypot(
    charge.standardUncertaintyAbv / charge.strengthAbv,
    chargeDoubtMl(charge) / charge.volumeMl,
  );
  const come = course.filter(({ volumeMl }) => volumeMl > 0);
  const everyNth = Math.max(1, Math.ceil(come.length / mostPoints));
  const shown = come.filter((_, index) => (come.length - 1 - index) % everyNth === 0);
  return shown.map(({ timeS, volumeMl }) => {
    const meanStrengthAbv = meanStrength(course, 0, volumeMl);
    const share = (strengthAbv: number) => (volumeMl * strengthAbv) / 100 / chargeEthanolMl;
    // The receiver is read in a cylinder too: of the first millilitres that is the greatest doubt.
    const ofReceiver = Math.hypot(cylinderDoubt.constantMl / volumeMl, cylinderDoubt.share);
    const doubt = 2 * Math.hypot(ofCharge, ofReceiver);
    const recovery = {
      value: share(meanStrengthAbv.value),
      low: share(meanStrengthAbv.low) / (1 + doubt),
      high: share(meanStrengthAbv.high) / Math.max(0.1, 1 - doubt),
    };
    return { timeS, volumeMl, meanStrengthAbv, recovery };
  });
}
