/**
 * The values below which shares of the weight lie: the least value at which the weight of it and of all below reaches the share.
 *
 * @param values in any order; those that are NaN don't count
 * @param weights ≥ 0, one for each value, not all 0
 * @param shares 0 … 1
 * @returns a value for each share; NaN where no value counts
 *
 * Source: JCGM 101:2008, 7.5, for draws of unequal weight.
 * @example
 * weightedQuantiles([3, 1, 2], [1, 1, 2], [0.25, 0.5, 1]) // => [1, 2, 3]
 */
export function weightedQuantiles(
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
  shares: readonly number[],
): readonly number[] {
  const order: number[] = [];
  for (let index = 0; index < values.length; index += 1) {
    if (!Number.isNaN(values[index])) order.push(index);
  }
  // By their sign alone: a difference is a new number for each of some thousand comparisons.
  order.sort((a, b) => Math.sign((values[a] as number) - (values[b] as number)));
  let total = 0;
  for (const index of order) total += weights[index] as number;
  return shares.map((share) => {
    let sum = 0;
    for (const index of order) {
      sum += (weights[index] as number) / total;
      if (sum >= share) return values[index] as number;
    }
    return values[order.at(-1) ?? -1] ?? Number.NaN;
  });
}
