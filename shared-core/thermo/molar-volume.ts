import {
  densityKgPerM3,
  ethanolMolarMassGPerMol,
  massFractionFromMoleFraction,
  waterMolarMassGPerMol,
} from '../alcoholometry/index.ts';

/**
 * Volume at 20 °C of one mole of ethanol–water liquid, `Vm = (x M1 + (1 − x) M2)/ρ(w, 20)`.
 *
 * @param ethanolMoleFraction [mol/mol], 0 … 1
 * @returns molar volume [mL/mol]
 * @throws OutOfRangeError outside 0 … 1
 *
 * Source: OIML R 22 (1975) density; IUPAC molar masses.
 * @example
 * molarVolumeMlPerMol(0) // ≈ 18.0477 ± 0.0005
 * molarVolumeMlPerMol(1) // ≈ 58.371 ± 0.001
 */
export function molarVolumeMlPerMol(ethanolMoleFraction: number): number {
  const ethanolMassFraction = massFractionFromMoleFraction(ethanolMoleFraction);
  const molarMassGPerMol =
    ethanolMoleFraction * ethanolMolarMassGPerMol +
    (1 - ethanolMoleFraction) * waterMolarMassGPerMol;
  return (1000 * molarMassGPerMol) / densityKgPerM3({ ethanolMassFraction, temperatureC: 20 });
}
