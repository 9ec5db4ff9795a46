import { azeotrope } from '../equilibrium/index.ts';

/**
 * Enthalpy of vaporisation of the azeotrope [kJ/mol] from the slope of its own vapour pressure:
 * `ΔH = −R d ln p/d(1/T)` (Clausius–Clapeyron), so that question and model agree.
 */
export function heatOfAzeotropeKjPerMol(pressureKPa: number): number {
  const inverseK = (kPa: number) => 1 / (azeotrope(kPa).temperatureC + 273.15);
  const [below, above] = [0.98 * pressureKPa, 1.02 * pressureKPa];
  return (-8.314463e-3 * Math.log(above / below)) / (inverseK(above) - inverseK(below));
}
