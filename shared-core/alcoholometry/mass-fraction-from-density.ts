import { requireInRange } from '../result/index.ts';
import { densityKgPerM3 } from './density.ts';
import { findRoot } from './find-root.ts';

/**
 * Ethanol mass fraction from the density of an ethanol–water mixture at any temperature: the inverse of
 * the general formula `ρ(w, t)`, which falls with w from 0 °C up.
 *
 * @param measured density [kg/m³], between ρ(1, t) and ρ(0, t); temperature [°C], 0 … 40
 * @returns ethanol mass fraction [kg/kg]
 * @throws OutOfRangeError outside these ranges: denser than water means sugar or salt is dissolved
 * @see OIML R 22 (1975), general formula.
 * @example
 * massFractionFromDensity({ densityKgPerM3: 935.145, temperatureC: 20 }) // ≈ 0.4 ± 1e-6
 * massFractionFromDensity({ densityKgPerM3: 931.424, temperatureC: 25 }) // ≈ 0.4 ± 2e-6
 */
export function massFractionFromDensity(measured: {
  readonly densityKgPerM3: number;
  readonly temperatureC: number;
}): number {
  const { temperatureC } = measured;
  requireInRange('temperature', temperatureC, 0, 40, '°C');
  const densityAt = (ethanolMassFraction: number) =>
    densityKgPerM3({ ethanolMassFraction, temperatureC });
  requireInRange('density', measured.densityKgPerM3, densityAt(1), densityAt(0), 'kg/m³');
  return findRoot((massFraction) => densityAt(massFraction) - measured.densityKgPerM3, 0, 1);
}
