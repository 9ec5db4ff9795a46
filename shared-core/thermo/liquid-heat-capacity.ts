import type { Component } from '../equilibrium/index.ts';
import { requireInRange } from '../result/index.ts';
import { gasConstantJPerMolK } from './gas-constant.ts';

/**
 * Molar heat capacity of the pure liquid at constant pressure.
 *
 * Ethanol: `Cp/R = 35.434 − 23.9925 τ + 7.09467 τ² − 0.508705 τ³`, `τ = T/(100 K)`.
 * Water: `Cp = 276.37 − 2.0901 T + 8.125e-3 T² − 1.4116e-5 T³ + 9.3701e-9 T⁴`, T in kelvin.
 *
 * @param component which pure substance
 * @param temperatureC [°C], 17 … 105
 * @returns heat capacity [J/(mol K)], within 0.5 % of the check values
 * @throws OutOfRangeError outside these temperatures
 *
 * Source: ethanol, Zábranský et al., Heat Capacity of Liquids (as collected in the open `chemicals` data
 * tables); water, DIPPR 100 coefficients of Perry's Handbook, 8th ed., Table 2-153 (from memory,
 * checked against 75.3 and 76.0 J/(mol K) at 25 and 100 °C).
 * @example
 * liquidHeatCapacityJPerMolK('ethanol', 25) // ≈ 112.1 ± 0.3
 * liquidHeatCapacityJPerMolK('water', 25) // ≈ 75.3 ± 0.2
 */
export function liquidHeatCapacityJPerMolK(component: Component, temperatureC: number): number {
  requireInRange('temperature', temperatureC, 17, 105, '°C');
  const temperatureK = temperatureC + 273.15;
  if (component === 'ethanol') {
    const tau = temperatureK / 100;
    return gasConstantJPerMolK * (35.434 + tau * (-23.9925 + tau * (7.09467 - tau * 0.508705)));
  }
  return (
    276.37 +
    temperatureK *
      (-2.0901 + temperatureK * (8.125e-3 + temperatureK * (-1.4116e-5 + temperatureK * 9.3701e-9)))
  );
}
