import { requireInRange } from '../result/index.ts';

/** Molar masses [g/mol]: ethanol and water, IUPAC atomic weights. */
export const ethanolMolarMassGPerMol = 46.06844;
export const waterMolarMassGPerMol = 18.015268;

/**
 * Mole fraction of ethanol from its mass fraction, `x = (w/M1)/(w/M1 + (1 − w)/M2)`.
 *
 * @param ethanolMassFraction [kg/kg], 0 … 1
 * @returns ethanol mole fraction [mol/mol]
 * @throws OutOfRangeError outside 0 … 1
 * @see IUPAC Green Book, 3rd ed., section 2.10; molar masses 46.068 44 and 18.015 268 g/mol.
 * @example
 * moleFractionFromMassFraction(0.5) // ≈ 0.281121 ± 1e-6
 */
export function moleFractionFromMassFraction(ethanolMassFraction: number): number {
  requireInRange('ethanol mass fraction', ethanolMassFraction, 0, 1, 'kg/kg');
  const ethanol = ethanolMassFraction / ethanolMolarMassGPerMol;
  return ethanol / (ethanol + (1 - ethanolMassFraction) / waterMolarMassGPerMol);
}

/**
 * Mass fraction of ethanol from its mole fraction, `w = x M1/(x M1 + (1 − x) M2)`.
 *
 * @param ethanolMoleFraction [mol/mol], 0 … 1
 * @returns ethanol mass fraction [kg/kg]
 * @throws OutOfRangeError outside 0 … 1
 * @see IUPAC Green Book, 3rd ed., section 2.10; molar masses 46.068 44 and 18.015 268 g/mol.
 * @example
 * massFractionFromMoleFraction(0.281121) // ≈ 0.5 ± 1e-6
 */
export function massFractionFromMoleFraction(ethanolMoleFraction: number): number {
  requireInRange('ethanol mole fraction', ethanolMoleFraction, 0, 1, 'mol/mol');
  const ethanol = ethanolMoleFraction * ethanolMolarMassGPerMol;
  return ethanol / (ethanol + (1 - ethanolMoleFraction) * waterMolarMassGPerMol);
}
