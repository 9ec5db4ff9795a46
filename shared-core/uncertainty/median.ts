/**
 * The middle value, or the mean of the two middle ones.
 *
 * @param values in any order [any unit]; the result has the same unit
 * @returns null where there is none
 *
 * Source: ISO 3534-1:2006, 1.13 (from memory).
 * @example
 * median([3, 1, 2]) // => 2
 * median([4, 1, 2, 3]) // => 2.5
 * median([]) // => null
 */
export function median(values: readonly number[]): number | null {
  const sorted = values.toSorted((a, b) => a - b);
  const [below, above] = [sorted[(sorted.length - 1) >> 1], sorted[sorted.length >> 1]];
  return below === undefined || above === undefined ? null : (below + above) / 2;
}
