import { coverageFactor95, type Interval } from '../uncertainty/index.ts';

/** A measured or derived number with its standard uncertainty, both in one unit (JCGM 100, 2.3.1). */
export interface Quantity {
  readonly value: number;
  /** ≥ 0; 0 for a number that is exact by definition. */
  readonly standardUncertainty: number;
}

/** `value ± 1.96 u`: the 95 % interval of a quantity whose errors are normal. */
export function intervalOfQuantity({ value, standardUncertainty }: Quantity): Interval {
  const reach = coverageFactor95 * standardUncertainty;
  return { value, low: value - reach, high: value + reach };
}
