import { type LiquidState, requireLiquidState } from './activity-coefficients.ts';
import { boilingState } from './boiling-state.ts';
import { celsiusOffsetK } from './saturation-pressure.ts';

/**
 * Total pressure of a boiling liquid, `p = x γ1 p1(T) + (1 − x) γ2 p2(T)`.
 *
 * @param state ethanol mole fraction [mol/mol], 0 … 1; temperature [°C], 0 … 130
 * @returns pressure [kPa]
 * @throws OutOfRangeError outside these ranges
 * @see Modified Raoult's law with the NRTL model of this folder; check: Pemberton & Mash,
 * J. Chem. Thermodynamics 10 (1978) 867 at 30 °C.
 * @example
 * bubblePressureKPa({ ethanolMoleFraction: 0.50492, temperatureC: 30 }) // ≈ 9.663 ± 0.05
 * bubblePressureKPa({ ethanolMoleFraction: 0, temperatureC: 99.974 }) // ≈ 101.325 ± 0.003
 */
export function bubblePressureKPa(state: LiquidState): number {
  return bubblePressure(state).pressureKPa;
}

/**
 * Total pressure of a boiling liquid and the composition of its vapour, `y = x γ1 p1(T)/p`.
 *
 * @param state ethanol mole fraction [mol/mol], 0 … 1; temperature [°C], 0 … 130
 * @returns pressure [kPa] and ethanol mole fraction of the vapour [mol/mol]
 * @throws OutOfRangeError outside these ranges
 * @see Modified Raoult's law with the NRTL model of this folder; check: Kurihara et al.,
 * J. Chem. Eng. Data 40 (1995) 679 at 55 °C.
 * @example
 * bubblePressure({ ethanolMoleFraction: 0.3306, temperatureC: 55 }).pressureKPa // ≈ 33.048 ± 0.2
 * bubblePressure({ ethanolMoleFraction: 0.3306, temperatureC: 55 }).vapourEthanolMoleFraction // ≈ 0.6058 ± 0.008
 */
export function bubblePressure(state: LiquidState): {
  readonly pressureKPa: number;
  readonly vapourEthanolMoleFraction: number;
} {
  requireLiquidState(state);
  const { logPressure, y } = boilingState(
    state.ethanolMoleFraction,
    state.temperatureC + celsiusOffsetK,
  );
  return { pressureKPa: Math.exp(logPressure), vapourEthanolMoleFraction: y };
}
