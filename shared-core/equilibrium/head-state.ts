import { solveAzeotrope } from './azeotrope.ts';
import { type BoilingState, boilingState } from './boiling-state.ts';
import { remember } from './remember.ts';
import { celsiusOffsetK } from './saturation-pressure.ts';
import { saturationTemperatureC } from './saturation-temperature.ts';

/** The ends of the water-rich branch at a pressure: azeotrope and pure water. */
export interface HeadBounds {
  readonly pressureKPa: number;
  readonly azeotrope: BoilingState;
  readonly waterBoilingK: number;
}

/** Both ends of the branch on which the vapour of any still lies. */
export const headBounds = remember(32, solveHeadBounds);

function solveHeadBounds(pressureKPa: number): HeadBounds {
  return {
    pressureKPa,
    azeotrope: solveAzeotrope(pressureKPa),
    waterBoilingK: saturationTemperatureC('water', pressureKPa) + celsiusOffsetK,
  };
}

/**
 * Vapour and condensate at a head temperature, on the water-rich side of the azeotrope: `p(x, T) = p` for
 * x, by Newton steps on ln p kept inside a shrinking bracket. Temperatures outside the branch answer with
 * its nearer end.
 */
export function solveHeadState(temperatureK: number, bounds: HeadBounds): BoilingState {
  const { azeotrope, waterBoilingK, pressureKPa } = bounds;
  if (temperatureK <= azeotrope.temperatureK) return azeotrope;
  if (temperatureK >= waterBoilingK) {
    return boilingState(0, waterBoilingK);
  }
  const target = Math.log(pressureKPa);
  const height = (temperatureK - azeotrope.temperatureK) / (waterBoilingK - azeotrope.temperatureK);
  let low = 0;
  let high = azeotrope.x;
  // The curve is nearly parabolic at the azeotrope and straight at water.
  let x = azeotrope.x * (1 - Math.sqrt(height)) ** 1.5;
  for (let step = 0; ; step++) {
    const state = boilingState(x, temperatureK);
    const difference = state.logPressure - target;
    if (Math.abs(difference) < 1e-14 || high - low < 1e-15 || step === 100) return state;
    if (difference < 0) low = x;
    else high = x;
    const newton = x - difference / state.logPressurePerX;
    x = newton > low && newton < high ? newton : (low + high) / 2;
  }
}
