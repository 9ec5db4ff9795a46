import { type ChargeSetting, chargeDoubtMl, cylinderDoubt } from '../run/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { type Booking, collectedAtMl } from './collected-course.ts';

/** Vapour strength at the head at a time, as worked out from the readings. */
export interface StrengthMoment {
  readonly timeS: number;
  readonly strengthAbv: Estimate;
}

/** How pure and how complete the distillate was at a time. */
export interface RecoveryPoint {
  readonly timeS: number;
  readonly volumeMl: number;
  /** Mean strength of all collected [% vol]. */
  readonly meanStrengthAbv: Estimate;
  /** Share of the charge's ethanol collected, 0 … 1. */
  readonly recovery: Estimate;
}

/**
 * Purity against recovery as the run went: ethanol collected `E(t) = ∫ q dV` over the bookings, mean strength
 * `E/V` and recovery `E/(V0 q0)`, this with the doubts of charge and receiver (k = 2). Volumes are taken as at 20 °C; hold-up in column
 * and condenser is left out.
 *
 * @param course bookings [mL]
 * @param strengths head vapour [% vol], in time order
 * @param charge what went into the pot [mL, % vol]
 * @returns points at the times of `strengths` that lie within the bookings
 *
 * Source: mass balance, own derivation; volumes of mixing below 0.1 % above 80 % vol are ignored.
 * @example
 * const course = [{ timeS: 0, volumeMl: 0 }, { timeS: 600, volumeMl: 10 }];
 * const strength = { value: 90, low: 88, high: 92 };
 * const strengths = [0, 300, 600].map((timeS) => ({ timeS, strengthAbv: strength }));
 * const charge = { volumeMl: 200, strengthAbv: 9, standardUncertaintyAbv: 0 };
 * recoverySoFar(course, strengths, charge)[1].recovery.value // ≈ 0.5 ± 1e-9
 */
export function recoverySoFar(
  course: readonly Booking[],
  strengths: readonly StrengthMoment[],
  charge: ChargeSetting,
): readonly RecoveryPoint[] {
  const chargeEthanolMl = (charge.volumeMl * charge.strengthAbv) / 100;
  const ofCharge = Math.hypot(
    charge.standardUncertaintyAbv / charge.strengthAbv,
    chargeDoubtMl(charge) / charge.volumeMl,
  );
  const points: RecoveryPoint[] = [];
  const ethanolMl = { value: 0, low: 0, high: 0 };
  let lastMl = 0;
  for (const { timeS, strengthAbv } of strengths) {
    const volumeMl = collectedAtMl(course, timeS);
    if (volumeMl === null || volumeMl <= 0) continue;
    const addedMl = volumeMl - lastMl;
    lastMl = volumeMl;
    ethanolMl.value += (addedMl * strengthAbv.value) / 100;
    ethanolMl.low += (addedMl * strengthAbv.low) / 100;
    ethanolMl.high += (addedMl * strengthAbv.high) / 100;
    // The receiver is read in a cylinder too: of the first millilitres that is the greatest doubt.
    const ofReceiver = Math.hypot(cylinderDoubt.constantMl / volumeMl, cylinderDoubt.share);
    const doubt = 2 * Math.hypot(ofCharge, ofReceiver);
    points.push({
      timeS,
      volumeMl,
      meanStrengthAbv: scaled(ethanolMl, 100 / volumeMl, 100 / volumeMl, 100 / volumeMl),
      recovery: scaled(
        ethanolMl,
        1 / chargeEthanolMl,
        1 / (chargeEthanolMl * (1 + doubt)),
        1 / (chargeEthanolMl * Math.max(0.1, 1 - doubt)),
      ),
    });
  }
  return points;
}

function scaled(
  { value, low, high }: Estimate,
  byValue: number,
  byLow: number,
  byHigh: number,
): Estimate {
  return { value: value * byValue, low: low * byLow, high: high * byHigh };
}
