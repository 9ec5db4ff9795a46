import type { BoilingState } from './boiling-state.ts';
import {
  type MixtureAtPressure,
  requireMixtureAtPressure,
  solveBubblePoint,
} from './bubble-point.ts';

/** Slopes along the bubble curve at constant pressure. */
export interface BubbleCurveSlopes {
  /** ∂T/∂x at constant pressure [K per unit mole fraction of the liquid]. */
  readonly temperaturePerX: number;
  /** ∂y/∂x at constant pressure. */
  readonly vapourPerX: number;
  /** ∂ln α/∂x at constant pressure, α the relative volatility. */
  readonly logVolatilityPerX: number;
}

/** Slopes from a state already solved. */
export function slopesOfState(state: BoilingState): BubbleCurveSlopes {
  const { x } = state;
  const temperaturePerX = -state.logPressurePerX / state.logPressurePerK;
  const logVolatilityPerX = state.logVolatilityPerX + state.logVolatilityPerK * temperaturePerX;
  const volatility = Math.exp(state.logVolatility);
  return {
    temperaturePerX,
    // dy/dx of y = αx/(1 + (α − 1)x): well scaled from x = 0 to x = 1.
    vapourPerX:
      (volatility / (1 + (volatility - 1) * x) ** 2) * (1 + x * (1 - x) * logVolatilityPerX),
    logVolatilityPerX,
  };
}

/**
 * Slopes of the boiling curve at constant pressure, analytic:
 * `∂T/∂x = −(∂ln p/∂x)/(∂ln p/∂T)` and `∂y/∂x = α (1 + x(1 − x) ∂ln α/∂x)/(1 + (α − 1)x)²`.
 *
 * @param mixture liquid: ethanol mole fraction [mol/mol], 0 … 1; pressure [kPa], 2 … 200
 * @returns temperature slope [°C per mol/mol] and vapour slope [1]
 * @throws OutOfRangeError outside these ranges
 * @see Implicit differentiation of modified Raoult's law; tested against central differences.
 * @example
 * bubblePointSlopes({ ethanolMoleFraction: 0.5, pressureKPa: 101.325 }).temperatureCPerMoleFraction // ≈ -6.9 ± 0.5
 * bubblePointSlopes({ ethanolMoleFraction: 0.5, pressureKPa: 101.325 }).vapourPerLiquid // ≈ 0.42 ± 0.04
 */
export function bubblePointSlopes(mixture: MixtureAtPressure): {
  readonly temperatureCPerMoleFraction: number;
  readonly vapourPerLiquid: number;
} {
  requireMixtureAtPressure(mixture);
  const slopes = slopesOfState(solveBubblePoint(mixture.ethanolMoleFraction, mixture.pressureKPa));
  return {
    temperatureCPerMoleFraction: slopes.temperaturePerX,
    vapourPerLiquid: slopes.vapourPerX,
  };
}
