import type { FermentOrigin } from '../run/index.ts';
import { standardFromNinety } from '../uncertainty/index.ts';
import { bookLiquid, type LiquidMeasurement } from './book-liquid.ts';
import { type FermentYield, gayLussacGPerG, pasteurEthanolGPerG } from './ferment-yield.ts';
import { type DerivedQuantity, propagateUncertainty } from './propagate-uncertainty.ts';
import type { Quantity } from './quantity.ts';

/** From the sugar of a ferment that was kept in this program to what was collected of it; all ethanol in grams. */
export interface FromFerment {
  readonly origin: FermentOrigin;
  /** Sugar that belongs to this charge [g]; null where nobody knows it. */
  readonly sugarG: Quantity | null;
  /** By the equation, and as ferments in practice do. */
  readonly mostG: Quantity | null;
  readonly practiceG: Quantity | null;
  /** By the judgement of its log, for the volume that was charged. */
  readonly byLogG: Quantity;
  readonly chargedG: Quantity;
  /** In the cuts that were measured; null while none is booked. */
  readonly collectedG: Quantity | null;
  /** False where a cut was not measured: what was collected is then a least amount. */
  readonly isCollectedWhole: boolean;
  /** Ethanol by the log, of the most the sugar could give [%]. */
  readonly fermentPercent: DerivedQuantity | null;
  readonly yields: FermentYield | null;
}

/** What a charge from a ferment came from and came to. */
export function fromFerment(
  origin: FermentOrigin,
  amount: LiquidMeasurement['amount'],
  known: Pick<FromFerment, 'sugarG' | 'chargedG' | 'collectedG' | 'isCollectedWhole' | 'yields'>,
): FromFerment {
  const strengthAbv = {
    value: origin.strengthAbv.value,
    standardUncertainty: standardFromNinety(origin.strengthAbv),
  };
  const byLog = bookLiquid({
    name: origin.name,
    amount,
    strength: { by: 'stated', strengthAbv },
  });
  const { sugarG } = known;
  const times = (factor: number): Quantity | null =>
    sugarG && {
      value: factor * sugarG.value,
      standardUncertainty: factor * sugarG.standardUncertainty,
    };
  return {
    ...known,
    origin,
    mostG: times(gayLussacGPerG),
    practiceG: times(pasteurEthanolGPerG),
    byLogG: byLog.ethanolG,
    fermentPercent:
      sugarG &&
      propagateUncertainty(
        [
          { name: origin.name, reason: 'by its log [g]', ...byLog.ethanolG },
          { name: 'Sugar', reason: 'as it began [g]', ...sugarG },
        ],
        ([ethanol = 0, sugar = 1]) => (100 * ethanol) / (gayLussacGPerG * sugar),
      ),
  };
}
