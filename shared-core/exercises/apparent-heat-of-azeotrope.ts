import { azeotrope } from '../equilibrium/index.ts';
import { enthalpyOfVaporizationJPerMol, gasConstantJPerMolK } from '../thermo/index.ts';

/**
 * Apparent enthalpy of vaporisation of the azeotrope [kJ/mol] from the slope of its own vapour pressure:
 * `ΔH = −R d ln p/d(1/T)` (Clausius–Clapeyron), so that question and model agree. It is no calorimeter's value: the
 * composition moves along, and the vapour is taken for ideal.
 */
export function apparentHeatOfAzeotropeKjPerMol(pressureKPa: number): number {
  const inverseK = (kPa: number) => 1 / (azeotrope(kPa).temperatureC + 273.15);
  const [below, above] = [0.98 * pressureKPa, 1.02 * pressureKPa];
  const slopeK = Math.log(above / below) / (inverseK(above) - inverseK(below));
  return (-gasConstantJPerMolK * slopeK) / 1000;
}

/** What a calorimeter would find [kJ/mol]: the pure substances' enthalpies by their shares; mixing left out (below 1 %). */
export function heatOfAzeotropeKjPerMol(pressureKPa: number): number {
  const { ethanolMoleFraction: x, temperatureC } = azeotrope(pressureKPa);
  const perMolJ =
    x * enthalpyOfVaporizationJPerMol('ethanol', temperatureC) +
    (1 - x) * enthalpyOfVaporizationJPerMol('water', temperatureC);
  return perMolJ / 1000;
}
