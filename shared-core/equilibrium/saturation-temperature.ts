import { requireInRange } from '../result/index.ts';
import { type Component, celsiusOffsetK, logSaturationPressure } from './saturation-pressure.ts';

/**
 * Boiling temperature of pure ethanol or water: the inverse of the saturation pressure, by Newton
 * steps in 1/T, in which ln p is nearly straight.
 *
 * @param component which pure substance
 * @param pressureKPa [kPa], 2 … 200
 * @returns temperature [°C], within 1e-9 K of the exact inverse
 * @throws OutOfRangeError outside this pressure range
 * @see IAPWS SR1-86(1992); Poling, Prausnitz & O'Connell (2001), as for the saturation pressure.
 * @example
 * saturationTemperatureC('water', 101.325) // ≈ 99.974 ± 0.001
 * saturationTemperatureC('ethanol', 101.325) // ≈ 78.29 ± 0.02
 */
export function saturationTemperatureC(component: Component, pressureKPa: number): number {
  requireInRange('pressure', pressureKPa, 2, 200, 'kPa');
  const target = Math.log(pressureKPa);
  let temperatureK = component === 'water' ? 373.12 : 351.44;
  for (let step = 0; step < 20; step++) {
    const { value, perK } = logSaturationPressure(component, temperatureK);
    const next = 1 / (1 / temperatureK + (value - target) / (perK * temperatureK ** 2));
    const change = next - temperatureK;
    temperatureK = next;
    if (Math.abs(change) < 1e-9) break;
  }
  return temperatureK - celsiusOffsetK;
}
