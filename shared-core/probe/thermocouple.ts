import { requireInRange } from '../result/index.ts';
import {
  type ThermocoupleCoefficients,
  thermocoupleCoefficients,
} from './thermocouple-coefficients.ts';

/** Thermocouple types that can be read. */
export type ThermocoupleType = 'K' | 'T';

/**
 * Voltage of a thermocouple whose other end is at 0 °C: `E = Σ cᵢ tⁱ`, for type K above 0 °C
 * plus `a0 exp(a1 (t − a2)²)`.
 *
 * @param type K or T
 * @param temperatureC [°C], −200 … 500 (K), −200 … 400 (T)
 * @returns emf [mV]
 * @throws OutOfRangeError outside these ranges
 *
 * Source: NIST ITS-90 Thermocouple Database, SRD 60; NIST Monograph 175 (1993).
 *
 * @example
 * thermocoupleEmfMv('K', 100) // ≈ 4.096 ± 0.0005
 * thermocoupleEmfMv('T', 100) // ≈ 4.279 ± 0.0005
 */
export function thermocoupleEmfMv(type: ThermocoupleType, temperatureC: number): number {
  const table = thermocoupleCoefficients[type];
  requireInRange('temperature', temperatureC, table.lowC, table.highC, '°C');
  return emfAt(table, temperatureC).emfMv;
}

/** Lets the ends of the range through in spite of rounding; 1e-9 mV is less than 1e-7 K. */
const roundingMv = 1e-9;

/**
 * Temperature of a thermocouple whose other end is at 0 °C: the approximate ITS-90 inverse `t = Σ dᵢ Eⁱ`
 * (± 0.05 K) refined by Newton's method on the reference function.
 *
 * @param type K or T
 * @param emfMv [mV], E(−200 °C) … E(500 °C) = −5.891 … 20.644 (K), E(−200 °C) … E(400 °C) = −5.603 … 20.872 (T)
 * @returns temperature [°C], within 1e-6 K of the exact inverse of {@link thermocoupleEmfMv}
 * @throws OutOfRangeError outside these ranges
 *
 * Source: NIST ITS-90 Thermocouple Database, SRD 60; NIST Monograph 175 (1993).
 *
 * @example
 * thermocoupleTemperatureC('K', 4.0962) // ≈ 100 ± 0.05
 * thermocoupleTemperatureC('T', 3.2741) // ≈ 78.15 ± 0.05
 */
export function thermocoupleTemperatureC(type: ThermocoupleType, emfMv: number): number {
  const table = thermocoupleCoefficients[type];
  const least = emfAt(table, table.lowC).emfMv - roundingMv;
  const most = emfAt(table, table.highC).emfMv + roundingMv;
  requireInRange('thermocouple voltage', emfMv, least, most, 'mV');
  const inverse = emfMv < 0 ? table.inverseBelowZero : table.inverseAboveZero;
  let temperatureC = polynomial(inverse, emfMv).value;
  for (let step = 0; step < 10; step += 1) {
    const { emfMv: reached, slopeMvPerK } = emfAt(table, temperatureC);
    const change = (reached - emfMv) / slopeMvPerK;
    temperatureC -= change;
    if (Math.abs(change) < 1e-9) break;
  }
  return temperatureC;
}

function emfAt(
  table: ThermocoupleCoefficients,
  temperatureC: number,
): { emfMv: number; slopeMvPerK: number } {
  const coefficients = temperatureC < 0 ? table.emfBelowZero : table.emfAboveZero;
  const { value, slope } = polynomial(coefficients, temperatureC);
  if (temperatureC < 0 || table.emfBump === null) return { emfMv: value, slopeMvPerK: slope };
  const [a0, a1, a2] = table.emfBump;
  const bump = a0 * Math.exp(a1 * (temperatureC - a2) ** 2);
  return { emfMv: value + bump, slopeMvPerK: slope + 2 * a1 * (temperatureC - a2) * bump };
}

/** Horner's rule for a polynomial and its derivative. */
function polynomial(coefficients: readonly number[], x: number): { value: number; slope: number } {
  let value = 0;
  let slope = 0;
  for (const coefficient of coefficients.toReversed()) {
    slope = slope * x + value;
    value = value * x + coefficient;
  }
  return { value, slope };
}
