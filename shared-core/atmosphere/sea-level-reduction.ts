import { requireInRange } from '../result/index.ts';
import { pressureExponent, standardAtmosphere } from './standard-atmosphere.ts';

const { seaLevelPressureKPa: p0, seaLevelTemperatureK: t0, lapseKPerM } = standardAtmosphere;
const gravityOverGasConstantKPerM =
  standardAtmosphere.gravityMPerS2 / standardAtmosphere.gasConstantJPerKgK;

/** A pressure that a weather service has reduced to sea level, and where the still stands. */
export interface SeaLevelReport {
  readonly seaLevelPressureKPa: number;
  readonly altitudeM: number;
  /** Outdoor air temperature at the still, when known. */
  readonly temperatureC?: number;
}

/**
 * Pressure that truly acts on the still, from a sea-level value in a weather report or forecast.
 *
 * Without a temperature the report is taken as reduced by the standard atmosphere (altimeter setting):
 * `p = p0 ((q/p0)^(1/n) − L H/T0)^n`, n = g/(R L). With the outdoor temperature it is taken as reduced through the
 * real air column: `p = q exp(−g H / (R Tm))`, Tm = T + L H / 2 (dry air; moisture changes Tm by less than 0.5 %).
 *
 * @param report sea-level pressure [kPa], 85 … 110; altitude [m], −430 … 5000; temperature [°C], −50 … 50
 * @returns station pressure [kPa]
 * @throws OutOfRangeError outside these ranges
 *
 * Source: ICAO Doc 8896 (altimeter setting) with ISO 2533:1975; WMO-No. 8, part I, chapter 3 (reduction with the
 * mean column temperature); both from memory.
 *
 * @example
 * stationPressureFromSeaLevelKPa({ seaLevelPressureKPa: 101.325, altitudeM: 1000 }) // ≈ 89.8746 ± 0.0001
 * stationPressureFromSeaLevelKPa({ seaLevelPressureKPa: 102, altitudeM: 500, temperatureC: 30 }) // ≈ 96.44 ± 0.01
 */
export function stationPressureFromSeaLevelKPa(report: SeaLevelReport): number {
  const { seaLevelPressureKPa, altitudeM, temperatureC } = report;
  requireInRange('sea-level pressure', seaLevelPressureKPa, 85, 110, 'kPa');
  requireReductionRange(altitudeM, temperatureC);
  if (temperatureC !== undefined) {
    return seaLevelPressureKPa / columnFactor(altitudeM, temperatureC);
  }
  const base = (seaLevelPressureKPa / p0) ** (1 / pressureExponent) - (lapseKPerM * altitudeM) / t0;
  return p0 * base ** pressureExponent;
}

/** Sea-level over station pressure for a column of the given temperature at its top. */
function columnFactor(altitudeM: number, temperatureC: number): number {
  const meanTemperatureK = temperatureC + 273.15 + (lapseKPerM * altitudeM) / 2;
  return Math.exp((gravityOverGasConstantKPerM * altitudeM) / meanTemperatureK);
}

function requireReductionRange(altitudeM: number, temperatureC: number | undefined): void {
  requireInRange('altitude', altitudeM, -430, 5000, 'm');
  if (temperatureC !== undefined) requireInRange('air temperature', temperatureC, -50, 50, '°C');
}
