import { logActivityCoefficients } from './activity-coefficients.ts';
import type { BoilingState } from './boiling-state.ts';
import { logSaturationPressure } from './saturation-pressure.ts';

/**
 * Slope of the dew pressure at constant vapour composition [kPa/K].
 *
 * `∂ln p/∂T = Σ x_i ∂ln(γ_i p_i)/∂T`: the liquid is the weight, because at constant temperature the
 * changes of ln γ cancel by the Gibbs–Duhem equation.
 */
export function dewPressurePerK(state: BoilingState, pressureKPa: number): number {
  const { x, temperatureK } = state;
  const activity = logActivityCoefficients(x, temperatureK);
  const ethanol = activity.ln1PerK + logSaturationPressure('ethanol', temperatureK).perK;
  const water = activity.ln2PerK + logSaturationPressure('water', temperatureK).perK;
  return pressureKPa * (x * ethanol + (1 - x) * water);
}
