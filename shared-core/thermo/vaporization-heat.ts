import { moleFractionFromStrength } from '../alcoholometry/index.ts';
import { requireInRange } from '../result/index.ts';
import { enthalpyOfVaporizationJPerMol } from './enthalpy-of-vaporization.ts';
import { molarVolumeMlPerMol } from './molar-volume.ts';

/**
 * Heat that vaporizes one millilitre of ethanol–water liquid, the volume taken at 20 °C:
 * `q = (x ΔH1(T) + (1 − x) ΔH2(T))/Vm(x)`. The heat of mixing (below 1 % of it near the boil) is left out.
 *
 * @param liquid strength `strengthAbv` [% vol at 20 °C], 0 … 100, and temperature `temperatureC` [°C], 0 … 150
 * @returns heat [J/mL], within 2 %
 * @throws OutOfRangeError outside these ranges
 *
 * Source: DIPPR 106 enthalpies as in {@link enthalpyOfVaporizationJPerMol}; OIML R 22 (1975) density. Check:
 * ethanol 38.56 kJ/mol (CRC Handbook) over 58.37 mL/mol, water 40.65 kJ/mol over 18.05 mL/mol.
 * @example
 * vaporizationHeatJPerMl({ strengthAbv: 100, temperatureC: 78.29 }) // ≈ 661 ± 8
 * vaporizationHeatJPerMl({ strengthAbv: 92, temperatureC: 78.5 }) // ≈ 830 ± 8
 * vaporizationHeatJPerMl({ strengthAbv: 0, temperatureC: 100 }) // ≈ 2252 ± 11
 */
export function vaporizationHeatJPerMl(liquid: {
  readonly strengthAbv: number;
  readonly temperatureC: number;
}): number {
  const { strengthAbv, temperatureC } = liquid;
  requireInRange('strength', strengthAbv, 0, 100, '% vol');
  const x = moleFractionFromStrength(strengthAbv);
  const perMolJ =
    x * enthalpyOfVaporizationJPerMol('ethanol', temperatureC) +
    (1 - x) * enthalpyOfVaporizationJPerMol('water', temperatureC);
  return perMolJ / molarVolumeMlPerMol(x);
}
