import { densityKgPerM3 } from '../alcoholometry/index.ts';
import { worded } from '../wording/index.ts';
import { mostDeviations } from './beyond-charge.ts';
import type { AmountMeasurement } from './book-liquid.ts';

/** Mixtures of ethanol and water at the bench are no lighter and no heavier than these [g/mL]: pure ethanol at 40 °C, and water. */
const lightestGPerMl = densityKgPerM3({ ethanolMassFraction: 1, temperatureC: 40 }) / 1000;
const heaviestGPerMl = densityKgPerM3({ ethanolMassFraction: 0, temperatureC: 10 }) / 1000;

/** The volumes that a liquid of this amount can have, whatever its strength [mL]. */
function possibleMl(amount: AmountMeasurement): { readonly low: number; readonly high: number } {
  const { value, standardUncertainty } = amount.by === 'mass' ? amount.massG : amount.volumeMl;
  const reach = mostDeviations * standardUncertainty;
  const [heaviest, lightest] = amount.by === 'mass' ? [heaviestGPerMl, lightestGPerMl] : [1, 1];
  return { low: (value - reach) / heaviest, high: (value + reach) / lightest };
}

/**
 * Whether two amounts written down of one cut are beyond what their uncertainties, and any strength, explain: one of them is a slip of
 * the pen, or some of it was spilt or taken away in between.
 *
 * @param one amounts, volumes [mL] or masses [g]
 *
 * Source: densities of OIML R 22 (1975); that three standard uncertainties are not explained is this project's rule.
 * @example
 * const exact = (value) => ({ value, standardUncertainty: 0 });
 * areAtOdds({ by: 'mass', massG: exact(31.4) }, { by: 'volume', volumeMl: exact(42), temperatureC: exact(20) }) // => true
 * areAtOdds({ by: 'mass', massG: exact(35) }, { by: 'volume', volumeMl: exact(42), temperatureC: exact(20) }) // => false
 */
export function areAtOdds(one: AmountMeasurement, other: AmountMeasurement): boolean {
  const [first, second] = [possibleMl(one), possibleMl(other)];
  return first.high < second.low || second.high < first.low;
}

/** A cut as far as its amount is known. */
interface CutAmount {
  readonly number: number;
  readonly amount: AmountMeasurement | null;
}

/** In words, each cut whose amount as it was measured later, which is booked, cannot be that of its receiver. */
export function amountsAtOdds(
  received: readonly CutAmount[],
  booked: readonly CutAmount[],
): readonly string[] {
  return received.flatMap(({ number, amount }) => {
    const measured = booked.find((cut) => cut.number === number)?.amount ?? null;
    if (amount === null || measured === null || !areAtOdds(amount, measured)) return [];
    return [
      worded(
        'Cut {number}: {received} in its receiver and {measured} measured later are not one liquid. {measured} is booked; look at both again.',
        { number: `${number}`, received: amountWords(amount), measured: amountWords(measured) },
      ),
    ];
  });
}

function amountWords(amount: AmountMeasurement): string {
  return amount.by === 'mass'
    ? `${amount.massG.value.toFixed(1)} g`
    : `${amount.volumeMl.value.toFixed(1)} mL`;
}
