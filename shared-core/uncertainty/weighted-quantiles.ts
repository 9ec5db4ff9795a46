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
  const sorted = new Float64Array(values).sort();
  // Those that are NaN come last.
  let count = sorted.length;
  while (count > 0 && Number.isNaN(sorted[count - 1])) count -= 1;
  const total = weightUpTo(Number.POSITIVE_INFINITY, values, weights);
  return shares.map((share) => {
    if (count === 0) return Number.NaN;
    const reaches = (index: number): boolean =>
      !(weightUpTo(sorted[index] as number, values, weights) < share * total);
    return sorted[firstThat(reaches, Math.floor(share * count), count - 1)] as number;
  });
}

/**
 * The least index that satisfies what all above it do, or the last. Looked for from where it is likely, in steps that double, then
 * by halves: of values whose weights hardly differ that takes three tries, and nine by halves alone.
 */
function firstThat(isMet: (index: number) => boolean, likely: number, last: number): number {
  let low = 0;
  let high = last;
  let index = Math.max(0, Math.min(last - 1, likely));
  for (let step = 1; low < high && index >= low && index < high; step *= 2) {
    const isAbove = isMet(index);
    if (isAbove) high = index;
    else low = index + 1;
    const isTurned = isAbove ? low > 0 : high < last;
    if (isTurned) break;
    index = isAbove ? index - step : index + step;
  }
  while (low < high) {
    const middle = (low + high) >> 1;
    if (isMet(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Sorting pairs of value and weight would cost more than adding the weights up anew for each halving. */
function weightUpTo(value: number, values: ArrayLike<number>, weights: ArrayLike<number>): number {
  let sum = 0;
  for (let index = 0; index < values.length; index += 1) {
    if ((values[index] as number) <= value) sum += weights[index] as number;
  }
  return sum;
}
