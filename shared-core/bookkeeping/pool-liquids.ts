import {
  alcoholByVolume,
  densityKgPerM3,
  moleFractionFromMassFraction,
} from '../alcoholometry/index.ts';
import { requireInRange } from '../result/index.ts';
import type { BookedLiquid } from './book-liquid.ts';
import type { Quantity } from './quantity.ts';
import { sumOfLiquids } from './sum-liquids.ts';

/** Liquids poured together. */
export interface PooledLiquid {
  readonly massG: Quantity;
  readonly ethanolG: Quantity;
  readonly volumeMl: number;
  readonly strengthAbv: number;
  readonly ethanolMassFraction: number;
  readonly ethanolMoleFraction: number;
}

/**
 * Several liquids poured together: masses add, `m = Σ mᵢ`, `m_ethanol = Σ m_ethanol,i`; the strength follows.
 * Volumes at 20 °C do not simply add (ethanol and water contract): the volume is that of the mixture.
 *
 * @param parts at least one booked liquid with some mass
 * @returns mass and ethanol [g] with standard uncertainties (errors of a shared instrument add up), volume at 20 °C [mL],
 * strength [% vol at 20 °C]
 * @throws OutOfRangeError when there is no liquid at all
 *
 * Source: conservation of mass; OIML R 22 (1975); JCGM 100:2008, equation (10).
 * @example
 * const exact = (value) => ({ value, standardUncertainty: 0 });
 * const liquid = (volumeMl, abv) => bookLiquid({ name: '', amount: { by: 'volume', volumeMl: exact(volumeMl), temperatureC: exact(20) }, strength: { by: 'stated', strengthAbv: exact(abv) } });
 * poolLiquids([liquid(50, 96), liquid(50, 0)]).volumeMl // ≈ 96.96 ± 0.01
 * poolLiquids([liquid(50, 90), liquid(20, 90)]).strengthAbv // ≈ 90 ± 1e-9
 */
export function poolLiquids(parts: readonly BookedLiquid[]): PooledLiquid {
  const massG = sumOfLiquids(parts, 'massG');
  const ethanolG = sumOfLiquids(parts, 'ethanolG');
  requireInRange('mass', massG.value, 1e-9, 1e9, 'g');
  const ethanolMassFraction = Math.min(1, ethanolG.value / massG.value);
  return {
    massG,
    ethanolG,
    volumeMl: (1000 * massG.value) / densityKgPerM3({ ethanolMassFraction, temperatureC: 20 }),
    strengthAbv: alcoholByVolume({ ethanolMassFraction }),
    ethanolMassFraction,
    ethanolMoleFraction: moleFractionFromMassFraction(ethanolMassFraction),
  };
}
