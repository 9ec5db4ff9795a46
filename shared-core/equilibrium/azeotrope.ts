import { requireInRange } from '../result/index.ts';
import { solveBubblePoint } from './bubble-point.ts';
import { celsiusOffsetK } from './saturation-pressure.ts';

/**
 * Minimum-boiling azeotrope of ethanol and water: the composition whose vapour equals its liquid,
 * `γ1 p1(T) = γ2 p2(T)` on the bubble curve, by safeguarded Newton steps.
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
  requireInRange('pressure', pressureKPa, 20, 200, 'kPa');
  let low = 0.7;
  let high = 1;
  let x = 0.9;
  for (let step = 0; ; step++) {
    const state = solveBubblePoint(x, pressureKPa);
    if (Math.abs(state.logVolatility) < 1e-13 || high - low < 1e-14 || step === 60) {
      return { temperatureC: state.temperatureK - celsiusOffsetK, ethanolMoleFraction: x };
    }
    if (state.logVolatility > 0) low = x;
    else high = x;
    const perX =
      state.logVolatilityPerX -
      (state.logVolatilityPerK * state.logPressurePerX) / state.logPressurePerK;
    const newton = x - state.logVolatility / perX;
    x = newton > low && newton < high ? newton : (low + high) / 2;
  }
}
