import { logActivityCoefficients } from './activity-coefficients.ts';
import { type NrtlParameters, nrtlParameters } from './nrtl-parameters.ts';
import { logSaturationPressure } from './saturation-pressure.ts';

/** A liquid at its boiling point, with the derivatives every solver here needs. */
export interface BoilingState {
  /** Ethanol mole fraction of the liquid. */
  readonly x: number;
  readonly temperatureK: number;
  /** Natural logarithm of the total pressure in kPa. */
  readonly logPressure: number;
  readonly logPressurePerK: number;
  readonly logPressurePerX: number;
  /** Ethanol mole fraction of the vapour. */
  readonly y: number;
  /** Logarithm of the relative volatility: logit(y) = logit(x) + this, for every x. */
  readonly logVolatility: number;
  readonly logVolatilityPerK: number;
  readonly logVolatilityPerX: number;
}

/**
 * Modified Raoult's law, `p = x γ1 p1 + (1 − x) γ2 p2`, at given liquid composition and temperature.
 *
 * The vapour is taken as ideal. Fugacity corrections (some 2 % at 1 atm, nearly equal for both
 * components) change the RMS on sets left out of the fit by 0.001 K and 0.0003 in y only; see the last
 * table of scripts/fit-activity-model.ts.
 *
 * @param x mole fraction of ethanol in the liquid [mol/mol], 0 … 1
 * @param temperatureK of the liquid [K], 300 … 400; no range is checked here
 * @param parameters a12, b12, a21, b21, alpha0, alpha1 of the activity model [1], near the fitted ones
 *
 * Source: J. M. Smith, H. C. Van Ness, M. M. Abbott, Introduction to Chemical Engineering Thermodynamics, 7th ed., 10.5;
 * from memory.
 * @example
 * boilingState(0, 373.124).y // => 0
 */
export function boilingState(
  x: number,
  temperatureK: number,
  parameters: NrtlParameters = nrtlParameters,
): BoilingState {
  const activity = logActivityCoefficients(x, temperatureK, parameters);
  const ethanol = logSaturationPressure('ethanol', temperatureK);
  const water = logSaturationPressure('water', temperatureK);
  const volatile1 = Math.exp(activity.ln1 + ethanol.value);
  const volatile2 = Math.exp(activity.ln2 + water.value);
  const pressure = x * volatile1 + (1 - x) * volatile2;
  const y = (x * volatile1) / pressure;
  const per1K = activity.ln1PerK + ethanol.perK;
  const per2K = activity.ln2PerK + water.perK;
  return {
    x,
    temperatureK,
    logPressure: Math.log(pressure),
    logPressurePerK: y * per1K + (1 - y) * per2K,
    logPressurePerX:
      (volatile1 * (1 + x * activity.ln1PerX) + volatile2 * ((1 - x) * activity.ln2PerX - 1)) /
      pressure,
    y,
    logVolatility: activity.ln1 + ethanol.value - activity.ln2 - water.value,
    logVolatilityPerK: per1K - per2K,
    logVolatilityPerX: activity.ln1PerX - activity.ln2PerX,
  };
}
