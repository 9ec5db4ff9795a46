import { requireInRange } from '../result/index.ts';
import type { BudgetLine, Contribution } from './contribution.ts';

/** Contributions and what they add up to, in the unit of the result. */
export interface CombinedUncertainty {
  /** Largest first. */
  readonly lines: readonly BudgetLine[];
  readonly combinedStandardUncertainty: number;
}

/**
 * Law of propagation for independent inputs: `u² = Σ (cᵢ uᵢ)²`.
 *
 * @param contributions each with its input's standard uncertainty (≥ 0) and sensitivity (finite)
 * @throws OutOfRangeError for a negative, infinite or NaN uncertainty or sensitivity
 *
 * Source: JCGM 100:2008, equation (10).
 *
 * @example
 * const doubt = { name: '', distribution: 'normal', sensitivity: 1, reason: '' };
 * combineContributions([
 *   { ...doubt, inputStandardUncertainty: 3 },
 *   { ...doubt, inputStandardUncertainty: 2, sensitivity: -2 },
 * ]).combinedStandardUncertainty // => 5
 */
export function combineContributions(contributions: readonly Contribution[]): CombinedUncertainty {
  const carried = contributions.map((contribution) => {
    const { name, inputStandardUncertainty, sensitivity } = contribution;
    requireInRange(`uncertainty of ${name}`, inputStandardUncertainty, 0, Number.MAX_VALUE, '');
    requireInRange(`sensitivity of ${name}`, sensitivity, -Number.MAX_VALUE, Number.MAX_VALUE, '');
    return {
      ...contribution,
      standardUncertainty: Math.abs(sensitivity) * inputStandardUncertainty,
    };
  });
  const variance = carried.reduce((sum, line) => sum + line.standardUncertainty ** 2, 0);
  const lines = carried
    .map((line) => ({
      ...line,
      share: variance === 0 ? 0 : line.standardUncertainty ** 2 / variance,
    }))
    .sort((a, b) => b.standardUncertainty - a.standardUncertainty);
  return { lines, combinedStandardUncertainty: Math.sqrt(variance) };
}
