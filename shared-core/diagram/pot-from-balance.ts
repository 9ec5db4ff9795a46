import { type ChargeSetting, chargeDoubtMl } from '../run/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import type { RecoveryPoint } from './recovery-so-far.ts';

/**
 * Liquid that hangs in column and head while vapour flows, and its ethanol, at most: teaching columns hold up to
 * some 10 mL of about 80 % vol. Common practice, no source.
 */
const holdUp = { volumeMl: 10, ethanolMl: 8 };

/**
 * Strength of the pot from what has been taken out: `q = (V0 q0 − E)/(V0 − V)`. The low end also takes away the
 * ethanol that column and head may hold up; the high end leaves it in.
 *
 * @param charge volume [mL] and strength [% vol]
 * @param collected volume [mL], mean strength [% vol] and recovery so far
 * @returns strength [% vol], not below 0; null when nothing would be left in the pot
 *
 * Source: mass balance, own derivation; volumes as at 20 °C.
 * @example
 * const charge = { volumeMl: 350, strengthAbv: 9, standardUncertaintyAbv: 0 };
 * const exactly = (value) => ({ value, low: value, high: value });
 * const collected = { timeS: 0, volumeMl: 20, meanStrengthAbv: exactly(90), recovery: exactly(0.571) };
 * potStrengthFromBalance(charge, collected).high // ≈ 4.09 ± 0.01
 * potStrengthFromBalance(charge, { ...collected, volumeMl: 345 }) // => null
 */
export function potStrengthFromBalance(
  charge: ChargeSetting,
  collected: RecoveryPoint,
): Estimate | null {
  const leftMl = charge.volumeMl - collected.volumeMl;
  if (leftMl < 2 * holdUp.volumeMl) return null;
  const { meanStrengthAbv: taken, volumeMl } = collected;
  const doubtAbv =
    2 *
    Math.hypot(
      charge.standardUncertaintyAbv,
      // ∂q/∂V0 = V (q̄ − q0)/(V0 − V)², as a strength of the charge that would do the same.
      (((taken.value - charge.strengthAbv) * volumeMl) / leftMl / charge.volumeMl) *
        chargeDoubtMl(charge),
    );
  const strength = (chargeAbv: number, takenAbv: number, heldMl: number, heldEthanolMl: number) => {
    const ethanolMl = (charge.volumeMl * chargeAbv - volumeMl * takenAbv) / 100 - heldEthanolMl;
    return Math.max(0, (100 * ethanolMl) / (leftMl - heldMl));
  };
  const { volumeMl: heldMl, ethanolMl: heldEthanolMl } = holdUp;
  return {
    value: strength(charge.strengthAbv, taken.value, heldMl / 2, heldEthanolMl / 2),
    low: strength(charge.strengthAbv - doubtAbv, taken.high, heldMl, heldEthanolMl),
    high: strength(charge.strengthAbv + doubtAbv, taken.low, 0, 0),
  };
}
