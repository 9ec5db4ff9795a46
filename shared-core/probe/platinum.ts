import { requireInRange } from '../result/index.ts';

/** Coefficients of the industrial platinum thermometer; IEC 60751:2008, 4.2 (unchanged in 2022). */
const a = 3.9083e-3;
const b = -5.775e-7;
const c = -4.183e-12;

const lowestC = -200;
const highestC = 850;

/**
 * Resistance of an industrial platinum thermometer:
 * `R = R0 (1 + A t + B t²)` for t ≥ 0, `R = R0 (1 + A t + B t² + C (t − 100) t³)` below.
 *
 * @param temperatureC [°C], −200 … 850
 * @param r0 resistance at 0 °C [Ω], 1 … 100 000: 100 for Pt100, 1000 for Pt1000
 * @returns resistance [Ω]
 * @throws OutOfRangeError outside these ranges
 *
 * Source: IEC 60751:2008, 4.2; A = 3.9083e-3, B = −5.775e-7, C = −4.183e-12.
 *
 * @example
 * platinumResistanceOhm(100) // ≈ 138.5055 ± 0.0001
 * platinumResistanceOhm(-50, 1000) // ≈ 803.063 ± 0.001
 */
export function platinumResistanceOhm(temperatureC: number, r0 = 100): number {
  requireInRange('temperature', temperatureC, lowestC, highestC, '°C');
  requireNominal(r0);
  return r0 * ratioAt(temperatureC);
}

/**
 * Slope of {@link platinumResistanceOhm}: `dR/dt = R0 (A + 2 B t)`, below 0 °C plus `R0 C (4 t³ − 300 t²)`.
 *
 * @param temperatureC [°C], −200 … 850
 * @param r0 resistance at 0 °C [Ω], 1 … 100 000
 * @returns slope [Ω/K]
 * @throws OutOfRangeError outside these ranges
 *
 * Source: derivative of IEC 60751:2008, 4.2.
 *
 * @example
 * platinumSlopeOhmPerK(80) // ≈ 0.38159 ± 1e-5
 */
export function platinumSlopeOhmPerK(temperatureC: number, r0 = 100): number {
  requireInRange('temperature', temperatureC, lowestC, highestC, '°C');
  requireNominal(r0);
  return r0 * ratioSlopeAt(temperatureC);
}

/**
 * Temperature of an industrial platinum thermometer from its resistance: the inverse of
 * {@link platinumResistanceOhm}. With q = R/R0 − 1: `t = 2 q / (A + √(A² + 4 B q))` for R ≥ R0 (the root written
 * so that it loses no digits near 0 °C), Newton's method on the quartic below.
 *
 * @param ohm resistance [Ω], R(−200 °C) … R(850 °C): 18.52 … 390.48 for Pt100
 * @param r0 resistance at 0 °C [Ω], 1 … 100 000: 100 for Pt100, 1000 for Pt1000
 * @returns temperature [°C], within 1e-9 K of the exact inverse
 * @throws OutOfRangeError outside these ranges; an open or shorted sensor ends here
 *
 * Source: IEC 60751:2008, 4.2, solved for t.
 *
 * @example
 * platinumTemperatureC(138.5055, 100) // ≈ 100 ± 0.0001
 * platinumTemperatureC(1301.907, 1000) // ≈ 78.15 ± 0.001
 */
export function platinumTemperatureC(ohm: number, r0: number): number {
  requireNominal(r0);
  requireInRange('resistance', ohm, r0 * ratioAt(lowestC), r0 * ratioAt(highestC), 'Ω');
  const excess = ohm / r0 - 1;
  const root = (2 * excess) / (a + Math.sqrt(a * a + 4 * b * excess));
  return excess >= 0 ? root : belowIcePoint(excess + 1, root);
}

function belowIcePoint(ratio: number, start: number): number {
  let temperatureC = start;
  for (let step = 0; step < 20; step += 1) {
    const change = (ratioAt(temperatureC) - ratio) / ratioSlopeAt(temperatureC);
    temperatureC -= change;
    if (Math.abs(change) < 1e-12) break;
  }
  return temperatureC;
}

function ratioAt(t: number): number {
  const quadratic = 1 + t * (a + t * b);
  return t >= 0 ? quadratic : quadratic + c * (t - 100) * t ** 3;
}

function ratioSlopeAt(t: number): number {
  const linear = a + 2 * b * t;
  return t >= 0 ? linear : linear + c * (4 * t ** 3 - 300 * t ** 2);
}

function requireNominal(r0: number): void {
  requireInRange('resistance at 0 °C', r0, 1, 100_000, 'Ω');
}
