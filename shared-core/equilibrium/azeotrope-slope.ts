import { requireInRange } from '../result/index.ts';
import { azeotrope } from './azeotrope.ts';

/**
 * How far the azeotrope moves with the air pressure: `dT_az/dp`, as a difference over ±0.5 kPa.
 *
 * @param pressureKPa [kPa], 21 … 199
 * @returns slope [K/kPa]
 * @throws OutOfRangeError outside this range
 * @see The azeotrope of this folder's NRTL model. Check: Clausius–Clapeyron with the 40.65 kJ/mol of
 * `apparentHeatOfAzeotropeKjPerMol` gives `R T²/(ΔH p)` = 0.249 K/kPa at 101.325 kPa.
 * @example
 * azeotropeSlopeKPerKPa(101.3) // ≈ 0.249 ± 0.001
 * azeotropeSlopeKPerKPa(80) // ≈ 0.303 ± 0.001
 */
export function azeotropeSlopeKPerKPa(pressureKPa: number): number {
  requireInRange('pressure', pressureKPa, 21, 199, 'kPa');
  return azeotrope(pressureKPa + 0.5).temperatureC - azeotrope(pressureKPa - 0.5).temperatureC;
}
