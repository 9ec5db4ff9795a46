import { requireInRange } from '../result/index.ts';
import { extremesBetween } from './extremes-between.ts';
import { indexAtTime } from './index-at-time.ts';
import type { Series } from './series.ts';

/** A point to draw; `value` null breaks the line. */
export interface DrawnPoint {
  readonly timeS: number;
  readonly value: number | null;
}

/** What part of a series is drawn, and how wide. */
export interface DrawnRange {
  readonly fromS: number;
  readonly toS: number;
  /** Pixel columns. */
  readonly columns: number;
  /** Times at which the line is interrupted, ascending: the probe was lost there. */
  readonly breaksS?: readonly number[];
}

/**
 * Reduces readings to what a plot of so many pixel columns can show: first, least, greatest and last
 * point of each column, in time order. A line through them covers the same pixels as one through all.
 *
 * Equation: column = ⌊timeS / ((toS − fromS) / columns)⌋, counted from time 0 so that columns do not
 * shift when the range moves on by whole columns.
 *
 * @param series any series
 * @param range `fromS`, `toS` [s], toS > fromS; `columns` [pixels], 1 … 20 000
 * @returns at most 4 points a column + one on either side of the range, + one null a break
 *
 * Limits: an empty series gives no points; O(columns · log n).
 * Source: U. Jugel et al., "M4: a visualization-oriented time series data aggregation",
 * Proc. VLDB Endowment 7 (2014) 797–808, section 4 (from memory).
 *
 * @example
 * const points = [20, 25, 19, 22, 23].map((value, timeS) => ({ timeS, value }));
 * const series = appendToSeries(emptySeries(), points);
 * reduceToWidth(series, { fromS: 0, toS: 5, columns: 1 }).map(({ value }) => value) // => [20,25,19,23]
 */
export function reduceToWidth(series: Series, range: DrawnRange): readonly DrawnPoint[] {
  const { fromS, toS, columns, breaksS = [] } = range;
  requireInRange('columns', columns, 1, 20_000, 'pixels');
  requireInRange('length of the drawn range', toS - fromS, Number.MIN_VALUE, 1e12, 's');
  const columnS = (toS - fromS) / columns;
  const first = Math.max(0, indexAtTime(series, fromS) - 1);
  const end = Math.min(series.length, indexAtTime(series, toS) + 1);
  const drawn: DrawnPoint[] = [];
  let nextBreak = 0;
  const nextBreakS = () => breaksS[nextBreak] ?? Infinity;
  const draw = (index: number) => {
    const timeS = series.storage.times[index]!;
    const breakS = nextBreakS();
    if (timeS >= breakS) {
      if (drawn.length > 0) drawn.push({ timeS: breakS, value: null });
      while (nextBreakS() <= timeS) nextBreak += 1;
    }
    drawn.push({ timeS, value: series.storage.values[index]! });
  };
  let index = first;
  while (index < end) {
    const column = Math.floor(series.storage.times[index]! / columnS);
    const columnEndS = Math.min((column + 1) * columnS, nextBreakS());
    const columnEnd = Math.min(end, Math.max(index + 1, indexAtTime(series, columnEndS)));
    for (const kept of keptIndices(series, index, columnEnd)) draw(kept);
    index = columnEnd;
  }
  return drawn;
}

function keptIndices(series: Series, from: number, to: number): readonly number[] {
  const last = to - 1;
  if (last - from < 4) return Array.from({ length: to - from }, (_, offset) => from + offset);
  const { least, greatest } = extremesBetween(series, from, to)!;
  const kept = least < greatest ? [from, least, greatest, last] : [from, greatest, least, last];
  return kept.filter((index, position) => position === 0 || index !== kept[position - 1]);
}
