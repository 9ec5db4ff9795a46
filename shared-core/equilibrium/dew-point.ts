import type { BoilingState } from './boiling-state.ts';
import { slopesOfState } from './bubble-curve-slopes.ts';
import {
  type MixtureAtPressure,
  requireMixtureAtPressure,
  solveBubblePoint,
} from './bubble-point.ts';
import { type NrtlParameters, nrtlParameters } from './nrtl-parameters.ts';
import { celsiusOffsetK } from './saturation-pressure.ts';

/**
 * Solves `logit(x) + ln α(x) = logit(y)` along the bubble curve by Newton steps kept inside a
 * shrinking bracket. In logits the equation stays well scaled down to traces of either component.
 *
 * @param y mole fraction of ethanol in the vapour [mol/mol], 0 … 1
 * @param pressureKPa [kPa], 2 … 200; no range is checked here
 * @param parameters a12, b12, a21, b21, alpha0, alpha1 of the activity model [1], near the fitted ones
 *
 * Source: this project's solver; the equation is that of `boilingState`.
 * @example
 * solveDewPoint(0, 101.325).x // => 0
 */
export function solveDewPoint(
  y: number,
  pressureKPa: number,
  parameters: NrtlParameters = nrtlParameters,
): BoilingState {
  if (y === 0 || y === 1) return solveBubblePoint(y, pressureKPa, parameters);
  const target = Math.log(y) - Math.log1p(-y);
  let low = target - 4;
  let high = target + 2;
  let logit = target - (y < 0.9 ? 0.7 : 0);
  let temperatureK: number | undefined;
  for (let step = 0; ; step++) {
    const x = 1 / (1 + Math.exp(-logit));
    const state = solveBubblePoint(x, pressureKPa, parameters, temperatureK);
    temperatureK = state.temperatureK;
    const difference = logit + state.logVolatility - target;
    if (Math.abs(difference) < 1e-12 || step === 60) return state;
    if (difference > 0) high = logit;
    else low = logit;
    const perX = slopesOfState(state).logVolatilityPerX;
    const newton = logit - difference / (1 + x * (1 - x) * perX);
    logit = newton > low && newton < high ? newton : (low + high) / 2;
  }
}

/**
 * Dew point: where a vapour begins to condense, and what liquid it gives first.
 * Solves `y = x γ1 p1(T)/p` and `p = x γ1 p1(T) + (1 − x) γ2 p2(T)` for x and T.
 *
 * @param mixture vapour: ethanol mole fraction [mol/mol], 0 … 1; pressure [kPa], 2 … 200
 * @returns temperature [°C] and ethanol mole fraction of the liquid [mol/mol]
 * @throws OutOfRangeError outside these ranges
 * @see Modified Raoult's law with the NRTL model of this folder; check: Kamihama et al.,
 * J. Chem. Eng. Data 57 (2012) 339 at 101.3 kPa.
 * @example
 * dewPoint({ ethanolMoleFraction: 0.652, pressureKPa: 101.3 }).temperatureC // ≈ 79.81 ± 0.15
 * dewPoint({ ethanolMoleFraction: 0.652, pressureKPa: 101.3 }).liquidEthanolMoleFraction // ≈ 0.488 ± 0.02
 */
export function dewPoint(mixture: MixtureAtPressure): {
  readonly temperatureC: number;
  readonly liquidEthanolMoleFraction: number;
} {
  requireMixtureAtPressure(mixture);
  const { temperatureK, x } = solveDewPoint(mixture.ethanolMoleFraction, mixture.pressureKPa);
  return { temperatureC: temperatureK - celsiusOffsetK, liquidEthanolMoleFraction: x };
}
