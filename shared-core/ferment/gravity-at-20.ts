import { densityKgPerM3, sodaLimeGlassExpansionPerK } from '../alcoholometry/index.ts';
import { requireInRange } from '../result/index.ts';

/**
 * Gravity 20/20 from a hydrometer made for 20 °C and read at another temperature:
 * `s(20) = s ρ(0, 20)/(ρ(0, t) (1 + β (t − 20)))`, the liquid taken to expand as water does.
 *
 * @param indicated scale reading [1], 0.97 … 1.2
 * @param temperatureC temperature of the liquid [°C], 0 … 40
 * @returns gravity 20/20; a sweet or strong liquid expands more than water, by some 0.0005 at 10 K
 * @throws OutOfRangeError outside these ranges
 *
 * Source: water by OIML R 22 (1975); glass 25e-6 1/K from memory.
 * @example
 * gravityAt20C(1.05, 20) // => 1.05
 * gravityAt20C(1, 30) // ≈ 1.0023 ± 0.0001
 */
export function gravityAt20C(indicated: number, temperatureC: number): number {
  requireInRange('gravity', indicated, 0.97, 1.2, '');
  requireInRange('temperature', temperatureC, 0, 40, '°C');
  const water = (at: number) => densityKgPerM3({ ethanolMassFraction: 0, temperatureC: at });
  const glass = 1 + sodaLimeGlassExpansionPerK * (temperatureC - 20);
  return (indicated * water(20)) / (water(temperatureC) * glass);
}
