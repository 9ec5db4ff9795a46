import { assertNever, requireInRange } from '../result/index.ts';
import { standardFromHalfWidth } from '../uncertainty/index.ts';

/** Tolerance classes of platinum thermometers. */
export type PlatinumClass = 'AA' | 'A' | 'B' | 'C';

/** What the sensor is sold as. */
export type SensorKind =
  | { readonly kind: 'platinum'; readonly toleranceClass: PlatinumClass }
  | { readonly kind: 'thermocouple'; readonly type: 'K' | 'T'; readonly toleranceClass: 1 | 2 }
  /** Digital thermometer with 1/16 °C steps. */
  | { readonly kind: 'one-wire' }
  /** Limits of error ± as its papers state them [K]. */
  | { readonly kind: 'stated'; readonly toleranceK: number };

interface ClassLimits {
  readonly baseK: number;
  readonly perC: number;
  readonly lowC: number;
  readonly highC: number;
}

/** Tolerance base + slope |t| and range of validity for wire-wound resistors; IEC 60751:2008, table 3. */
const platinumClasses: Readonly<Record<PlatinumClass, ClassLimits>> = {
  AA: { baseK: 0.1, perC: 0.0017, lowC: -50, highC: 250 },
  A: { baseK: 0.15, perC: 0.002, lowC: -100, highC: 450 },
  B: { baseK: 0.3, perC: 0.005, lowC: -196, highC: 600 },
  C: { baseK: 0.6, perC: 0.01, lowC: -196, highC: 600 },
};

/** The larger of a fixed limit and a part of |t|, above −40 °C; IEC 60584-1:2013, table 12, from memory. */
const thermocoupleClasses = {
  K: { 1: { baseK: 1.5, perC: 0.004 }, 2: { baseK: 2.5, perC: 0.0075 } },
  T: { 1: { baseK: 0.5, perC: 0.004 }, 2: { baseK: 1, perC: 0.0075 } },
} as const;

/**
 * Limits of error ± of a new sensor, as its standard or data sheet promises: platinum `a + b |t|`, thermocouple
 * `max(a, b |t|)`, 1/16 °C digital 0.5 K from −10 to 85 °C and 2 K elsewhere.
 *
 * @param sensor what it is sold as; a stated tolerance [K] must be positive
 * @param temperatureC [°C]; class AA −50 … 250, A −100 … 450, B and C −196 … 600, thermocouples −40 … 350, digital
 * −55 … 125
 * @returns half-width of the limits [K]
 * @throws OutOfRangeError outside these ranges
 *
 * Source: IEC 60751:2008, table 3; IEC 60584-1:2013 (from memory); DS18B20 data sheet (± 2 K from memory).
 *
 * @example
 * sensorToleranceK({ kind: 'platinum', toleranceClass: 'A' }, 78.15) // ≈ 0.3063 ± 0.0001
 * sensorToleranceK({ kind: 'one-wire' }, 78.15) // => 0.5
 */
export function sensorToleranceK(sensor: SensorKind, temperatureC: number): number {
  switch (sensor.kind) {
    case 'platinum': {
      const { baseK, perC, lowC, highC } = platinumClasses[sensor.toleranceClass];
      requireInRange('temperature', temperatureC, lowC, highC, '°C');
      return baseK + perC * Math.abs(temperatureC);
    }
    case 'thermocouple': {
      const { baseK, perC } = thermocoupleClasses[sensor.type][sensor.toleranceClass];
      requireInRange('temperature', temperatureC, -40, 350, '°C');
      return Math.max(baseK, perC * Math.abs(temperatureC));
    }
    case 'one-wire':
      requireInRange('temperature', temperatureC, -55, 125, '°C');
      return temperatureC >= -10 && temperatureC <= 85 ? 0.5 : 2;
    case 'stated':
      requireInRange('stated tolerance', sensor.toleranceK, Number.MIN_VALUE, 100, 'K');
      requireInRange('temperature', temperatureC, -273.15, 2000, '°C');
      return sensor.toleranceK;
    default:
      return assertNever(sensor);
  }
}

/**
 * Standard uncertainty of a new sensor: its limits of error taken as a rectangular distribution, `u = a/√3`.
 *
 * @param sensor what it is sold as; a stated tolerance [K] must be positive
 * @param temperatureC [°C], within the range of {@link sensorToleranceK}
 * @returns standard uncertainty [K], before any calibration
 * @throws OutOfRangeError outside these ranges
 *
 * Source: JCGM 100:2008, 4.3.7; limits as in {@link sensorToleranceK}.
 *
 * @example
 * sensorStandardUncertaintyK({ kind: 'platinum', toleranceClass: 'A' }, 80) // ≈ 0.179 ± 0.0005
 * sensorStandardUncertaintyK({ kind: 'one-wire' }, 80) // ≈ 0.2887 ± 0.0001
 */
export function sensorStandardUncertaintyK(sensor: SensorKind, temperatureC: number): number {
  return standardFromHalfWidth('rectangular', sensorToleranceK(sensor, temperatureC));
}
