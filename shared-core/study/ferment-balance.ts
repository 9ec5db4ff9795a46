import {
  type DerivedQuantity,
  gayLussacGPerG,
  propagateUncertainty,
  type Quantity,
} from '../bookkeeping/index.ts';
import { carbonDioxidePerEthanolGPerG, ethanolPerAbvGPerL } from '../ferment/index.ts';
import type { FermentOrigin } from '../run/index.ts';
import { standardFromNinety } from '../uncertainty/index.ts';

/** What has become of a ferment's sugar. */
export interface FermentBalance {
  readonly volumeMl: number;
  /** Sugar that it began with, as hexose [g]. */
  readonly sugarG: Quantity;
  /** Ethanol that the sugar could give at most [g]. */
  readonly mostEthanolG: Quantity;
  /** Ethanol in it by its log [g]. */
  readonly ethanolG: Quantity;
  /** Gas that came with that ethanol [g]. */
  readonly carbonDioxideG: Quantity;
  /** Sugar from which that ethanol and gas were made, by the equation [g]. */
  readonly turnedG: Quantity;
  /** Ethanol there is, of that which the sugar could give [%]. */
  readonly yieldPercent: DerivedQuantity;
}

/** Of volumes from a jug's or a bucket's scale; common practice, no source. */
const volumeShare = 0.02;

/**
 * What has become of the sugar of a ferment: `m_ethanol = q V ρ/100`, `m_most = 0.5114 m_sugar`, and the share of both. The volume's
 * doubt is in both masses alike, so it is not in the share.
 *
 * @param origin strength by the log (90 % interval [% vol]) and sugar in a litre at the beginning [g/L]
 * @param volumeMl volume of the ferment [mL] > 0
 * @returns masses [g] and the yield [%]; null where the sugar is not known or nothing has fermented
 *
 * Source: Gay-Lussac's equation; propagation by JCGM 100, 5.1.2.
 * @example
 * const origin = { strengthAbv: { low: 9.6, value: 10, high: 10.4 }, sugarGPerL: { value: 170, standardUncertainty: 4 } };
 * fermentBalance(origin, 1000).yieldPercent.value // ≈ 90.8 ± 0.1
 */
export function fermentBalance(
  { strengthAbv, sugarGPerL }: Pick<FermentOrigin, 'strengthAbv' | 'sugarGPerL'>,
  volumeMl: number,
): FermentBalance | null {
  if (sugarGPerL === null || strengthAbv.value <= 0) return null;
  const litres = volumeMl / 1000;
  const strength: Quantity = {
    value: strengthAbv.value,
    standardUncertainty: standardFromNinety(strengthAbv),
  };
  const times = (quantity: Quantity, factor: number): Quantity => ({
    value: factor * quantity.value,
    standardUncertainty:
      factor * Math.hypot(quantity.standardUncertainty, volumeShare * quantity.value),
  });
  return {
    volumeMl,
    sugarG: times(sugarGPerL, litres),
    mostEthanolG: times(sugarGPerL, litres * gayLussacGPerG),
    ethanolG: times(strength, litres * ethanolPerAbvGPerL),
    carbonDioxideG: times(strength, litres * ethanolPerAbvGPerL * carbonDioxidePerEthanolGPerG),
    turnedG: times(strength, (litres * ethanolPerAbvGPerL) / gayLussacGPerG),
    yieldPercent: propagateUncertainty(
      [
        { name: 'Strength', reason: 'by the log [% vol]', ...strength },
        { name: 'Sugar', reason: 'as it began [g/L]', ...sugarGPerL },
      ],
      ([abv = 0, sugar = 1]) => (100 * abv * ethanolPerAbvGPerL) / (gayLussacGPerG * sugar),
    ),
  };
}
