import { alcoholByVolume, massFractionFromAlcoholByVolume } from './alcohol-by-volume.ts';
import { massFractionFromMoleFraction, moleFractionFromMassFraction } from './amount-fractions.ts';

/**
 * Ethanol mole fraction of a mixture from its strength: `x = (w/M1)/(w/M1 + (1 − w)/M2)`, with the mass fraction w
 * from `q = 100 w ρ(w, 20)/ρ(1, 20)`.
 *
 * @param strengthAbv [% vol at 20 °C], 0 … 100
 * @returns ethanol mole fraction [mol/mol], 0 … 1
 * @throws OutOfRangeError outside this range
 * @see OIML R 22 (1975), density formula; IUPAC Green Book, 3rd ed., section 2.10.
 * @example
 * moleFractionFromStrength(40) // ≈ 0.1634 ± 0.0001
 * moleFractionFromStrength(100) // => 1
 */
export function moleFractionFromStrength(strengthAbv: number): number {
  return moleFractionFromMassFraction(
    massFractionFromAlcoholByVolume({ alcoholByVolume: strengthAbv }),
  );
}

/**
 * Strength of a mixture from its ethanol mole fraction: `q = 100 w ρ(w, 20)/ρ(1, 20)` with
 * `w = x M1/(x M1 + (1 − x) M2)`; the inverse of {@link moleFractionFromStrength}.
 *
 * @param ethanolMoleFraction [mol/mol], 0 … 1
 * @returns strength [% vol at 20 °C], 0 … 100
 * @throws OutOfRangeError outside this range
 * @see OIML R 22 (1975), density formula; IUPAC Green Book, 3rd ed., section 2.10.
 * @example
 * strengthFromMoleFraction(moleFractionFromStrength(40)) // ≈ 40 ± 1e-9
 * strengthFromMoleFraction(0) // => 0
 */
export function strengthFromMoleFraction(ethanolMoleFraction: number): number {
  return alcoholByVolume({
    ethanolMassFraction: massFractionFromMoleFraction(ethanolMoleFraction),
  });
}
