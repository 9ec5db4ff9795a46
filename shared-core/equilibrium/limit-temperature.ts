import { moleFractionFromStrength } from '../alcoholometry/index.ts';
import { requireInRange } from '../result/index.ts';
import { requireAzeotropePressure } from './azeotrope.ts';
import { solveDewPoint } from './dew-point.ts';
import { celsiusOffsetK } from './saturation-pressure.ts';

/**
 * Head temperature at which the vapour has just the least strength wanted: its dew temperature at the
 * local pressure. Above it the distillate is weaker.
 *
 * Solves `γ1 x p1(T) = y p`, `γ2 (1 − x) p2(T) = (1 − y) p` with y from the strength.
 *
 * @param limit leastStrengthAbv [% vol at 20 °C], 0 … 96; pressure [kPa], 20 … 200
 * @returns temperature [°C]
 * @throws OutOfRangeError outside these ranges (from some 97 % vol on there is the azeotrope only)
 * @see Dew curve of this folder's NRTL model with the strength of OIML R 22; check: 90 % vol lies
 * 1.0 … 1.1 K above the azeotrope from 70 to 104 kPa.
 * @example
 * limitTemperatureC({ leastStrengthAbv: 90, pressureKPa: 101.325 }) - azeotrope(101.325).temperatureC // ≈ 1.05 ± 0.06
 * limitTemperatureC({ leastStrengthAbv: 0, pressureKPa: 101.325 }) // ≈ 99.974 ± 0.001
 */
export function limitTemperatureC(limit: {
  readonly leastStrengthAbv: number;
  readonly pressureKPa: number;
}): number {
  requireInRange('least strength', limit.leastStrengthAbv, 0, 96, '% vol');
  requireAzeotropePressure(limit.pressureKPa);
  const y = moleFractionFromStrength(limit.leastStrengthAbv);
  return solveDewPoint(y, limit.pressureKPa).temperatureK - celsiusOffsetK;
}
