import { requireInRange } from '../result/index.ts';

/** The two components of the distilled mixture. */
export type Component = 'ethanol' | 'water';

/** Offset between the Celsius and the kelvin scale [K] (exact by definition). */
export const celsiusOffsetK = 273.15;

interface VapourPressureCurve {
  readonly criticalTemperatureK: number;
  readonly logCriticalPressure: number;
  /** Coefficients of the powers 0, 1, 2 … of √(1 − T/Tc): exponents of one half made whole. */
  readonly coefficients: readonly number[];
}

const curves: Readonly<Record<Component, VapourPressureCurve>> = {
  // IAPWS SR1-86(1992), equation 1.
  water: {
    criticalTemperatureK: 647.096,
    logCriticalPressure: Math.log(22064),
    coefficients: inHalfPowers([
      [-7.85951783, 1],
      [1.84408259, 1.5],
      [-11.7866497, 3],
      [22.6807411, 3.5],
      [-15.9618719, 4],
      [1.80122502, 7.5],
    ]),
  },
  // Wagner 2.5-5 form, Poling, Prausnitz & O'Connell, 5th ed. (2001), appendix A. Of the published
  // curves it lies closest to the static measurements at 30 °C and 90 °C (−0.10 % and +0.14 %).
  ethanol: {
    criticalTemperatureK: 513.92,
    logCriticalPressure: Math.log(6132),
    coefficients: inHalfPowers([
      [-8.68587, 1],
      [1.17831, 1.5],
      [-4.8762, 2.5],
      [1.588, 5],
    ]),
  },
};

function inHalfPowers(terms: readonly (readonly [coefficient: number, exponent: number])[]) {
  const highest = Math.max(...terms.map(([, exponent]) => 2 * exponent));
  const coefficients = new Array<number>(highest + 1).fill(0);
  for (const [coefficient, exponent] of terms) coefficients[2 * exponent] = coefficient;
  return coefficients;
}

/** Natural logarithm of the saturation pressure in kPa and its slope in temperature [1/K]. */
export interface LogSaturationPressure {
  readonly value: number;
  readonly perK: number;
}

/**
 * ln(p/kPa) and d ln p/dT without range checks, the inner loop of every solver here: `ln(p/pc) = Tc/T Σ a v^(i/2)`,
 * `v = 1 − T/Tc`.
 *
 * @param component ethanol or water
 * @param temperatureK [K], 273 … 470
 *
 * Source: as for {@link saturationPressureKPa}.
 * @example
 * logSaturationPressure('water', 647.096).value // ≈ 10.0017 ± 0.001
 */
export function logSaturationPressure(
  component: Component,
  temperatureK: number,
): LogSaturationPressure {
  const { criticalTemperatureK, logCriticalPressure, coefficients } = curves[component];
  const root = Math.sqrt(1 - temperatureK / criticalTemperatureK);
  let sum = 0;
  let sumPerRoot = 0;
  for (let power = coefficients.length - 1; power >= 0; power--) {
    sumPerRoot = sumPerRoot * root + sum;
    sum = sum * root + (coefficients[power] as number);
  }
  const reduced = (criticalTemperatureK / temperatureK) * sum;
  return {
    value: logCriticalPressure + reduced,
    // dv/dT = −1/Tc and dv = 2 √v d√v.
    perK: -(sumPerRoot / (2 * root) + reduced) / temperatureK,
  };
}

/**
 * Saturation (vapour) pressure of pure ethanol or water.
 *
 * `ln(p/pc) = (Tc/T) · Σ a_i v^n_i`, `v = 1 − T/Tc`; for water with the exponents 1, 1.5, 3, 3.5, 4, 7.5
 * of IAPWS, for ethanol with 1, 1.5, 2.5, 5.
 *
 * @param component which pure substance
 * @param temperatureC [°C], 0 … 373.9 for water, 0 … 240.7 for ethanol
 * @returns pressure [kPa]; water within 1e-4 of IF97, ethanol within 0.15 % of static measurements
 * between 30 and 90 °C
 * @throws OutOfRangeError outside these temperatures
 * @see Water: IAPWS SR1-86(1992), equation 1. Ethanol: Poling, Prausnitz & O'Connell, The Properties
 * of Gases and Liquids, 5th ed. (2001), appendix A, compared with Pemberton & Mash (1978).
 * @example
 * saturationPressureKPa('water', 99.974) // ≈ 101.325 ± 0.003
 * saturationPressureKPa('ethanol', 78.29) // ≈ 101.325 ± 0.1
 */
export function saturationPressureKPa(component: Component, temperatureC: number): number {
  const highC = component === 'water' ? 373.9 : 240.7;
  requireInRange(`temperature of ${component}`, temperatureC, 0, highC, '°C');
  return Math.exp(logSaturationPressure(component, temperatureC + celsiusOffsetK).value);
}
