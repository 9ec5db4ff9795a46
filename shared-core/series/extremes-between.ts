import { blockBits, type Series } from './series.ts';

/** Where the least and the greatest value of a range lie. */
export interface Extremes {
  readonly least: number;
  readonly greatest: number;
}

/**
 * Indices of the least and the greatest value among points `from … to − 1`, by the pyramid:
 * only whole blocks inside the range are taken from it, so an older series never sees newer points.
 *
 * @param series any series
 * @param from first index [points], 0 … length
 * @param to index after the last [points], from … length
 * @returns the indices, or null for an empty range
 *
 * Limits: O(16 log₁₆ n). Source: own design; segment-tree query.
 *
 * @example
 * const points = [20, 25, 19, 22].map((value, timeS) => ({ timeS, value }));
 * extremesBetween(appendToSeries(emptySeries(), points), 0, 4) // => {"least":2,"greatest":1}
 */
export function extremesBetween(series: Series, from: number, to: number): Extremes | null {
  const end = Math.min(to, series.length);
  if (!(from >= 0 && from < end)) return null;
  const { values, levels } = series.storage;
  let least = from;
  let greatest = from;
  let index = from;
  while (index < end) {
    let level = -1;
    // Every level of which a whole block is there has come into being.
    while (
      index % 2 ** (blockBits * (level + 2)) === 0 &&
      index + 2 ** (blockBits * (level + 2)) <= end
    ) {
      level += 1;
    }
    const block = index >>> (blockBits * (level + 1));
    const low = level < 0 ? index : levels[level]!.least[block]!;
    const high = level < 0 ? index : levels[level]!.greatest[block]!;
    if (values[low]! < values[least]!) least = low;
    if (values[high]! > values[greatest]!) greatest = high;
    index += level < 0 ? 1 : 2 ** (blockBits * (level + 1));
  }
  return { least, greatest };
}
