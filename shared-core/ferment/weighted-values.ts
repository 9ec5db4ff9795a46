import type { NinetyInterval } from './ferment-log.ts';

/** Value below which a share of the weight lies, for each share; values that are NaN don't count. */
export function weightedQuantiles(
  values: Float64Array,
  weights: Float64Array,
  shares: readonly number[],
): readonly number[] {
  const order = Array.from(values.keys())
    .filter((index) => !Number.isNaN(values[index]))
    .sort((a, b) => (values[a] as number) - (values[b] as number));
  const total = order.reduce((sum, index) => sum + (weights[index] as number), 0);
  return shares.map((share) => {
    let sum = 0;
    for (const index of order) {
      sum += weights[index] as number;
      if (sum >= share * total) return values[index] as number;
    }
    return values[order.at(-1) ?? 0] ?? Number.NaN;
  });
}

/** The middle and 90 % of the weight. */
export function ninetyOf(values: Float64Array, weights: Float64Array): NinetyInterval {
  const [low = 0, value = 0, high = 0] = weightedQuantiles(values, weights, [0.05, 0.5, 0.95]);
  return { low, value, high };
}

/** The weight of those for which something holds. */
export function shareOf(weights: Float64Array, holds: (index: number) => boolean): number {
  return weights.reduce((sum, weight, index) => (holds(index) ? sum + weight : sum), 0);
}
