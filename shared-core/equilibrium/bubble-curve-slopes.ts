import type { BoilingState } from './boiling-state.ts';

/** Slopes along the bubble curve at constant pressure. */
export interface BubbleCurveSlopes {
  /** ∂T/∂x at constant pressure [K per unit mole fraction of the liquid]. */
  readonly temperaturePerX: number;
  /** ∂y/∂x at constant pressure. */
  readonly vapourPerX: number;
  /** ∂ln α/∂x at constant pressure, α the relative volatility. */
  readonly logVolatilityPerX: number;
}

/**
 * Slopes from a state already solved, by implicit differentiation of modified Raoult's law:
 * `∂T/∂x = −(∂ln p/∂x)/(∂ln p/∂T)` and `∂y/∂x = α (1 + x(1 − x) ∂ln α/∂x)/(1 + (α − 1)x)²`.
 */
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
