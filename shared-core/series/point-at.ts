import type { Series, SeriesPoint } from './series.ts';

/**
 * One point of a series, counted from its start, or from its end with a negative index.
 *
 * @param series any series
 * @param index [points], −length … length − 1
 * @returns the point, or null outside
 *
 * Limits: O(1). Source: own design, no equation.
 *
 * @example
 * const series = appendToSeries(emptySeries(), [{ timeS: 0, value: 20 }, { timeS: 2, value: 21 }]);
 * pointAt(series, -1) // => {"timeS":2,"value":21}
 */
export function pointAt(series: Series, index: number): SeriesPoint | null {
  const position = index < 0 ? series.length + index : index;
  if (!(position >= 0 && position < series.length)) return null;
  return {
    timeS: series.storage.times[position]!,
    value: series.storage.values[position]!,
  };
}
