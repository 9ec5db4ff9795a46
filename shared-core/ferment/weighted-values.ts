import { weightedQuantiles } from '../uncertainty/index.ts';
import type { NinetyInterval } from './ferment-log.ts';

/** The middle and 90 % of the weight. */
export function ninetyOf(values: Float64Array, weights: Float64Array): NinetyInterval {
  const [low = 0, value = 0, high = 0] = weightedQuantiles(values, weights, [0.05, 0.5, 0.95]);
  return { low, value, high };
}

/** The weight of those for which something holds. */
export function shareOf(weights: Float64Array, holds: (index: number) => boolean): number {
  return weights.reduce((sum, weight, index) => (holds(index) ? sum + weight : sum), 0);
}
