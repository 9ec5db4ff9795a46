import { type StationPressure, steamRealisationK } from '../atmosphere/index.ts';
import { saturationTemperatureC } from '../equilibrium/index.ts';
import { requireInRange } from '../result/index.ts';
import { standardFromHalfWidth } from '../uncertainty/index.ts';

/** A temperature that nature fixes, and how well it is reached on a bench. */
export interface ReferencePoint {
  readonly point: 'ice' | 'steam';
  readonly temperatureC: number;
  readonly standardUncertaintyK: number;
}

/**
 * The ice point: crushed ice and water, stirred, is at 0 °C within limits `± a`, so `u = a/√3` with a = 0.05 K for
 * distilled and 0.1 K for tap water. Salts lower it by `1.86 K kg/mol` times their molality, 0.03 K in hard tap water.
 *
 * @param water what the ice and the water are made of; valid for a bath that is kept stirred and full of ice
 *
 * Source: 0 °C by ITS-90 (water triple point 0.01 °C less 0.0100 K); cryoscopic constant of water, CRC Handbook (from
 * memory); the limits are common practice, no source.
 *
 * @example
 * icePoint('distilled') // => {"point":"ice","temperatureC":0,"standardUncertaintyK":0.02886751345948129}
 */
export function icePoint(water: 'distilled' | 'tap'): ReferencePoint {
  return {
    point: 'ice',
    temperatureC: 0,
    standardUncertaintyK: standardFromHalfWidth('rectangular', water === 'distilled' ? 0.05 : 0.1),
  };
}

/**
 * The steam point at the pressure of the day: `T = Tsat(p)`, about 0.28 K a kPa, with
 * `u² = (dT/dp u(p))² + (0.05 K)²/3`. The bulb hangs in the steam, not in the water, which may be superheated.
 *
 * @param pressure pressure at the still [kPa], 50 … 115, and its standard uncertainty [kPa], 0 … 10; a value reduced
 * to sea level must be converted by {@link stationPressure} first
 * @throws OutOfRangeError outside these ranges
 *
 * Source: IAPWS SR1-86(1992) for Tsat; JCGM 100:2008, equation (10).
 *
 * @example
 * const pressure = { kind: 'station', pressureKPa: 98.6, standardUncertaintyKPa: 0.1 };
 * steamPoint(pressure).temperatureC // ≈ 99.21 ± 0.01
 * steamPoint(pressure).standardUncertaintyK // ≈ 0.040 ± 0.001
 */
export function steamPoint(
  pressure: Pick<StationPressure, 'kind' | 'pressureKPa' | 'standardUncertaintyKPa'>,
): ReferencePoint {
  const { pressureKPa, standardUncertaintyKPa } = pressure;
  requireInRange('air pressure', pressureKPa, 50, 115, 'kPa');
  requireInRange('uncertainty of the air pressure', standardUncertaintyKPa, 0, 10, 'kPa');
  const step = 0.01;
  const slopeKPerKPa =
    (saturationTemperatureC('water', pressureKPa + step) -
      saturationTemperatureC('water', pressureKPa - step)) /
    (2 * step);
  return {
    point: 'steam',
    temperatureC: saturationTemperatureC('water', pressureKPa),
    standardUncertaintyK: Math.hypot(
      slopeKPerKPa * standardUncertaintyKPa,
      standardFromHalfWidth('rectangular', steamRealisationK),
    ),
  };
}
