import { requireInRange } from '../result/index.ts';
import type { BoilingState } from './boiling-state.ts';
import { slopesOfState } from './bubble-curve-slopes.ts';
import { solveBubblePoint } from './bubble-point.ts';
import { celsiusOffsetK } from './saturation-pressure.ts';

/** Throws unless the azeotrope exists and the model is trusted there. */
export function requireAzeotropePressure(pressureKPa: number): void {
  requireInRange('pressure', pressureKPa, 20, 200, 'kPa');
}

/** Newton steps on ln α(x) = 0 along the bubble curve, kept inside a shrinking bracket. */
export function solveAzeotrope(pressureKPa: number): BoilingState {
  let low = 0.7;
  let high = 1;
  let x = 0.9;
  for (let step = 0; ; step++) {
    const state = solveBubblePoint(x, pressureKPa);
    if (Math.abs(state.logVolatility) < 1e-12 || step === 60) return state;
    if (state.logVolatility > 0) low = x;
    else high = x;
    const newton = x - state.logVolatility / slopesOfState(state).logVolatilityPerX;
    x = newton > low && newton < high ? newton : (low + high) / 2;
  }
}

/**
 * Minimum-boiling azeotrope of ethanol and water: the composition whose vapour equals its liquid,
 * `γ1 p1(T) = γ2 p2(T)` on the bubble curve.
 *
 * @param pressureKPa [kPa], 20 … 200
 * @returns temperature [°C] and ethanol mole fraction [mol/mol]
 * @throws OutOfRangeError outside this pressure range; near 10 kPa the azeotrope vanishes
 * @see Modified Raoult's law with the NRTL model of this folder; check: 78.15 °C and 0.8943 at
 * 101.325 kPa in Carey & Lewis, Ind. Eng. Chem. 24 (1932) 882.
 * @example
 * azeotrope(101.325).temperatureC // ≈ 78.15 ± 0.05
 * azeotrope(101.325).ethanolMoleFraction // ≈ 0.90 ± 0.01
 */
export function azeotrope(pressureKPa: number): {
  readonly temperatureC: number;
  readonly ethanolMoleFraction: number;
} {
  requireAzeotropePressure(pressureKPa);
  const { temperatureK, x } = solveAzeotrope(pressureKPa);
  return { temperatureC: temperatureK - celsiusOffsetK, ethanolMoleFraction: x };
}
