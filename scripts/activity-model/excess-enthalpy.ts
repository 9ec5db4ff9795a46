import type { NrtlParameters } from '../../shared-core/equilibrium/index.ts';
import { logActivityCoefficients } from '../../shared-core/equilibrium/index.ts';

/** One published excess enthalpy. */
export interface ExcessEnthalpyPoint {
  readonly temperatureK: number;
  readonly x: number;
  readonly valueJPerMol: number;
}

/**
 * Shape of the excess enthalpy: Larkin, J. Chem. Thermodynamics 7 (1975) 137, approximate values from
 * memory. A soft guide for the temperature dependence only, hence the wide uncertainty.
 */
export const excessEnthalpyGuide: readonly ExcessEnthalpyPoint[] = [
  { temperatureK: 298.15, x: 0.17, valueJPerMol: -775 },
  { temperatureK: 323.15, x: 0.17, valueJPerMol: -440 },
  { temperatureK: 348.15, x: 0.1, valueJPerMol: -220 },
  { temperatureK: 348.15, x: 0.55, valueJPerMol: 130 },
  { temperatureK: 363.15, x: 0.1, valueJPerMol: -120 },
  { temperatureK: 363.15, x: 0.55, valueJPerMol: 250 },
];

/** Weight of the guide: one standard uncertainty [J/mol]. */
export const excessEnthalpyUncertaintyJPerMol = 60;

/** `h = −R T² Σ x_i ∂ln γ_i/∂T` (Gibbs–Helmholtz) [J/mol]. */
export function excessEnthalpyJPerMol(
  x: number,
  temperatureK: number,
  parameters: NrtlParameters,
): number {
  const { ln1PerK, ln2PerK } = logActivityCoefficients(x, temperatureK, parameters);
  return -8.314462618 * temperatureK ** 2 * (x * ln1PerK + (1 - x) * ln2PerK);
}
