import { requireInRange } from '../result/index.ts';
import { type BoilingState, boilingState } from './boiling-state.ts';
import { type NrtlParameters, nrtlParameters } from './nrtl-parameters.ts';
import { celsiusOffsetK } from './saturation-pressure.ts';

/** A composition (of liquid or vapour, as the function says) under a pressure. */
export interface MixtureAtPressure {
  /** Mole fraction of ethanol, 0 … 1. */
  readonly ethanolMoleFraction: number;
  /** Pressure [kPa], 2 … 200; compared with measurements from 4 to 159 kPa. */
  readonly pressureKPa: number;
}

/** Throws unless composition and pressure lie in the range the solvers answer for. */
export function requireMixtureAtPressure(mixture: MixtureAtPressure): void {
  requireInRange('ethanol mole fraction', mixture.ethanolMoleFraction, 0, 1, 'mol/mol');
  requireInRange('pressure', mixture.pressureKPa, 2, 200, 'kPa');
}

/**
 * Solves `ln p(x, T) = ln p` for T by Newton steps in 1/T, in which ln p is nearly straight: four evaluations reach 1e-9 K.
 *
 * @param x mole fraction of ethanol in the liquid [mol/mol], 0 … 1
 * @param pressureKPa [kPa], 2 … 200; no range is checked here
 * @param parameters a12, b12, a21, b21, alpha0, alpha1 of the activity model [1], near the fitted ones
 * @param startK where to begin [K]
 *
 * Source: this project's solver; the equation is that of `boilingState`.
 * @example
 * solveBubblePoint(1, 101.325).y // => 1
 */
export function solveBubblePoint(
  x: number,
  pressureKPa: number,
  parameters: NrtlParameters = nrtlParameters,
  startK: number = roughBubblePointK(x, pressureKPa),
): BoilingState {
  const target = Math.log(pressureKPa);
  let temperatureK = startK;
  for (let step = 0; ; step++) {
    const state = boilingState(x, temperatureK, parameters);
    const difference = state.logPressure - target;
    if (Math.abs(difference) < 1e-13 || step === 20) return state;
    temperatureK =
      1 / (1 / temperatureK + difference / (state.logPressurePerK * temperatureK ** 2));
  }
}

/** Within some 2 K near 1 atm, 10 K at the ends of the range: the shape at 1 atm, moved by ΔH/R. */
function roughBubblePointK(x: number, pressureKPa: number): number {
  const atOneAtmosphereK = 351 + 22.1 / (1 + 17 * x);
  return 1 / (1 / atOneAtmosphereK - Math.log(pressureKPa / 101.325) / 4900);
}

/**
 * Bubble point: where a liquid boils, and what vapour it gives.
 * Solves `p = x γ1 p1(T) + (1 − x) γ2 p2(T)` for T; then `y = x γ1 p1/p`.
 *
 * @param mixture liquid: ethanol mole fraction [mol/mol], 0 … 1; pressure [kPa], 2 … 200
 * @returns temperature [°C] and ethanol mole fraction of the vapour [mol/mol]
 * @throws OutOfRangeError outside these ranges
 * @see Modified Raoult's law with the NRTL model of this folder; check: Kamihama et al.,
 * J. Chem. Eng. Data 57 (2012) 339 at 101.3 kPa.
 * @example
 * bubblePoint({ ethanolMoleFraction: 0.311, pressureKPa: 101.3 }).temperatureC // ≈ 81.40 ± 0.15
 * bubblePoint({ ethanolMoleFraction: 0.311, pressureKPa: 101.3 }).vapourEthanolMoleFraction // ≈ 0.589 ± 0.008
 */
export function bubblePoint(mixture: MixtureAtPressure): {
  readonly temperatureC: number;
  readonly vapourEthanolMoleFraction: number;
} {
  requireMixtureAtPressure(mixture);
  const { temperatureK, y } = solveBubblePoint(mixture.ethanolMoleFraction, mixture.pressureKPa);
  return { temperatureC: temperatureK - celsiusOffsetK, vapourEthanolMoleFraction: y };
}
