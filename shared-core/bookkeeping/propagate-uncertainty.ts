import { requireInRange } from '../result/index.ts';
import { type CombinedUncertainty, combineContributions } from '../uncertainty/index.ts';
import type { Quantity } from './quantity.ts';

/** An input of a calculation: how well it is known, and in words why. */
export interface MeasuredInput extends Quantity {
  readonly name: string;
  readonly reason: string;
}

/** A result with the budget that its standard uncertainty comes from. */
export interface DerivedQuantity extends Quantity {
  readonly budget: CombinedUncertainty;
}

/** Step of the numeric derivative, in standard uncertainties: small against any bend of these functions. */
const stepInUncertainties = 1e-3;

/**
 * A result and its standard uncertainty from independent inputs: `u² = Σ (∂f/∂xᵢ uᵢ)²`, the derivatives by
 * central differences of a thousandth of `uᵢ`, one-sided where the function ends.
 *
 * Limits: linear, good to a few per cent of u for the masses and strengths booked here. Inputs that share an error
 * need that error as an input of its own.
 *
 * @param inputs each with its value and standard uncertainty (≥ 0) in its own unit
 * @param of the calculation; given the values in the order of the inputs
 * @throws OutOfRangeError for a negative or NaN uncertainty, or when the result is not finite
 *
 * Source: JCGM 100:2008, equation (10) and 5.1.3, note 2 (numeric sensitivities).
 * @example
 * const doubt = { name: 'a', reason: '', value: 3, standardUncertainty: 0.3 };
 * propagateUncertainty([doubt, { ...doubt, value: 4, standardUncertainty: 0.1 }], ([a = 0, b = 0]) => a * b).value // => 12
 * propagateUncertainty([doubt, { ...doubt, value: 4, standardUncertainty: 0.1 }], ([a = 0, b = 0]) => a * b).standardUncertainty // ≈ 1.2369 ± 0.0001
 */
export function propagateUncertainty(
  inputs: readonly MeasuredInput[],
  of: (values: readonly number[]) => number,
): DerivedQuantity {
  const values = inputs.map(({ value }) => value);
  const value = of(values);
  requireInRange('result', value, -Number.MAX_VALUE, Number.MAX_VALUE, '');
  const budget = combineContributions(
    inputs.map(({ name, reason, standardUncertainty }, index) => ({
      name,
      distribution: 'normal',
      inputStandardUncertainty: standardUncertainty,
      sensitivity: sensitivity(values, of, index, standardUncertainty),
      reason,
    })),
  );
  return { value, standardUncertainty: budget.combinedStandardUncertainty, budget };
}

function sensitivity(
  values: readonly number[],
  of: (values: readonly number[]) => number,
  index: number,
  standardUncertainty: number,
): number {
  if (!(standardUncertainty > 0)) return 0;
  const step = stepInUncertainties * standardUncertainty;
  const at = (offset: number) =>
    attempt(() => of(values.map((value, other) => (other === index ? value + offset : value))));
  const [above, below] = [at(step), at(-step)];
  if (above !== null && below !== null) return (above - below) / (2 * step);
  const here = of(values);
  if (above !== null) return (above - here) / step;
  if (below !== null) return (here - below) / step;
  return 0;
}

/** Null beyond the end of a function's range, e.g. below 0 % vol. */
function attempt(of: () => number): number | null {
  try {
    return of();
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
