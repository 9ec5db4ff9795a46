import { azeotrope, bubblePoint } from '../equilibrium/index.ts';
import { requireInRange } from '../result/index.ts';

/**
 * Ethanol mole fraction of a liquid that boils at a temperature: the bubble curve `T(x)` read backwards on its
 * water-rich side, by bisection. Colder than the azeotrope gives the azeotrope, hotter than water gives 0.
 *
 * @param liquid temperature [°C], −50 … 150; pressure [kPa], 20 … 200
 * @returns mole fraction [mol/mol], within 1e-9
 * @throws OutOfRangeError outside these ranges
 *
 * Source: see `bubblePoint`.
 * @example
 * const { temperatureC } = bubblePoint({ ethanolMoleFraction: 0.05, pressureKPa: 99 });
 * boilingLiquidMoleFraction({ temperatureC, pressureKPa: 99 }) // ≈ 0.05 ± 1e-6
 * boilingLiquidMoleFraction({ temperatureC: 101, pressureKPa: 99 }) // => 0
 */
export function boilingLiquidMoleFraction(liquid: {
  readonly temperatureC: number;
  readonly pressureKPa: number;
}): number {
  const { temperatureC, pressureKPa } = liquid;
  requireInRange('pot temperature', temperatureC, -50, 150, '°C');
  const lowest = azeotrope(pressureKPa);
  if (temperatureC <= lowest.temperatureC) return lowest.ethanolMoleFraction;
  const boilsAt = (ethanolMoleFraction: number) =>
    bubblePoint({ ethanolMoleFraction, pressureKPa }).temperatureC;
  if (temperatureC >= boilsAt(0)) return 0;
  let weak = 0;
  let strong = lowest.ethanolMoleFraction;
  for (let step = 0; step < 40; step++) {
    const middle = (weak + strong) / 2;
    if (boilsAt(middle) > temperatureC) weak = middle;
    else strong = middle;
  }
  return (weak + strong) / 2;
}
