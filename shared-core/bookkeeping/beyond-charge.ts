import { worded } from '../wording/index.ts';
import type { BookedLiquid } from './book-liquid.ts';
import type { Quantity } from './quantity.ts';

/** No uncertainty explains more than this many of its standard uncertainties. */
export const mostDeviations = 3;

/** Whether liquids weigh more together than what went into the pot, by more than their uncertainties explain. */
export function isMoreThanCharge(
  liquids: readonly { readonly massG: Quantity }[],
  charge: { readonly massG: Quantity },
): boolean {
  const masses = liquids.map(({ massG }) => massG);
  const surplus = masses.reduce((sum, { value }) => sum + value, -charge.massG.value);
  const variances = [...masses, charge.massG].map(
    ({ standardUncertainty }) => standardUncertainty ** 2,
  );
  return surplus > mostDeviations * Math.sqrt(variances.reduce((sum, one) => sum + one, 0));
}

const grams = ({ value }: Quantity) => `${value.toFixed(0)} g`;

/** Of one liquid by itself. */
export function beyondChargeWords(liquid: BookedLiquid, charge: BookedLiquid): string {
  return worded(
    '{name}: {mass} is more than the {charged} that were charged, so it is not in the balance. Look at its amount again, or correct the charge.',
    { name: liquid.name, mass: grams(liquid.massG), charged: grams(charge.massG) },
  );
}

/** Of liquids that are each possible. */
export function togetherBeyondChargeWords(
  liquids: readonly BookedLiquid[],
  charge: BookedLiquid,
): string {
  const value = liquids.reduce((sum, { massG }) => sum + massG.value, 0);
  return worded(
    'All liquids together weigh {mass}, more than the {charged} that were charged: an amount or the charge is wrong, and the balance with it.',
    { mass: grams({ value, standardUncertainty: 0 }), charged: grams(charge.massG) },
  );
}
