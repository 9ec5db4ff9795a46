import type { Series } from './series.ts';

/**
 * How many points lie before a time: the index of the first point at or after it, by bisection.
 *
 * @param series any series
 * @param timeS [s], any number; −∞ and +∞ give the ends
 * @returns index [points], 0 … length
 *
 * Limits: O(log n). Source: own design; binary search, no equation.
 *
 * @example
 * const series = appendToSeries(emptySeries(), [{ timeS: 0, value: 20 }, { timeS: 2, value: 21 }]);
 * indexAtTime(series, 1) // => 1
 */
export function indexAtTime(series: Series, timeS: number): number {
  const { times } = series.storage;
  let low = 0;
  let high = series.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (times[middle]! < timeS) low = middle + 1;
    else high = middle;
  }
  return low;
}
