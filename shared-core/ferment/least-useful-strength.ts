import { moleFractionFromStrength, strengthFromMoleFraction } from '../alcoholometry/index.ts';
import { equilibriumCurve, potBelowStages } from '../column/index.ts';

/** Reflux that a patient class collects with; more nobody waits for. Common practice, no source. */
const patientReflux = 6;
/** The pot must still serve when a quarter of its ethanol has gone, or the plateau is over at once. */
const depletedShare = 0.75;

/**
 * Weakest charge with which a column still gives a plateau of a strength: the pot below its plates by the method of McCabe and
 * Thiele, over 0.75 for what the plateau itself takes.
 *
 * @param plates theoretical plates of the column, 0 … 100 [1]
 * @param leastStrengthAbv strength that is wanted at the head [% vol], 1 … 96
 * @param pressureKPa air pressure [kPa], 60 … 110
 * @returns strength of the charge [% vol]; null where no charge is enough for so few plates
 * @throws OutOfRangeError outside these ranges
 *
 * Source: W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605, see `stepPlates`.
 * @example
 * leastUsefulStrengthAbv(3, 80, 101.325) // ≈ 4 ± 3
 */
export function leastUsefulStrengthAbv(
  plates: number,
  leastStrengthAbv: number,
  pressureKPa: number,
): number | null {
  const limit = moleFractionFromStrength(leastStrengthAbv);
  const pot =
    potBelowStages(equilibriumCurve(pressureKPa), limit, patientReflux, plates + 1) / depletedShare;
  return pot < 0.5 * limit ? strengthFromMoleFraction(pot) : null;
}
