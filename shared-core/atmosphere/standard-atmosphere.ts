import { requireInRange } from '../result/index.ts';

/** Constants of the lowest layer of the standard atmosphere; ISO 2533:1975. */
export const standardAtmosphere = {
  seaLevelPressureKPa: 101.325,
  seaLevelTemperatureK: 288.15,
  /** Fall of temperature with geopotential altitude. */
  lapseKPerM: 0.0065,
  gravityMPerS2: 9.80665,
  /** Specific gas constant of dry air [J/(kg K)]. */
  gasConstantJPerKgK: 287.05287,
} as const;

const { seaLevelPressureKPa, seaLevelTemperatureK, lapseKPerM } = standardAtmosphere;

/** g/(R L) = 5.25588. */
export const pressureExponent =
  standardAtmosphere.gravityMPerS2 / (standardAtmosphere.gasConstantJPerKgK * lapseKPerM);

const lowestAltitudeM = -500;
const highestAltitudeM = 11_000;

/**
 * Air pressure of the standard atmosphere at an altitude:
 * `p = p0 (1 − L H / T0)^(g/(R L))`, p0 = 101.325 kPa, T0 = 288.15 K, L = 6.5 K/km.
 *
 * Real air differs by the weather: see {@link stationPressure} for the uncertainty that goes with it.
 *
 * @param altitudeM geopotential altitude above sea level [m], −500 … 11 000; below 3 km map height serves as
 * well (the difference is under 1.5 m, 0.02 kPa)
 * @throws OutOfRangeError outside this range
 *
 * Source: ISO 2533:1975, barometric formula of the layer with constant lapse (constants from memory, checked
 * against its table); the same as ICAO Doc 7488.
 *
 * @example
 * pressureAtAltitudeKPa(0) // => 101.325
 * pressureAtAltitudeKPa(1000) // ≈ 89.8746 ± 0.0001
 */
export function pressureAtAltitudeKPa(altitudeM: number): number {
  requireInRange('altitude', altitudeM, lowestAltitudeM, highestAltitudeM, 'm');
  return (
    seaLevelPressureKPa * (1 - (lapseKPerM * altitudeM) / seaLevelTemperatureK) ** pressureExponent
  );
}
