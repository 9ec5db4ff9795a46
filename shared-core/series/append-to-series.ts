import { requireInRange } from '../result/index.ts';
import {
  blockBits,
  type Series,
  type SeriesLevel,
  type SeriesPoint,
  type SeriesStorage,
} from './series.ts';

/**
 * The series with points added at its end. Amortised O(log n) a point: storage is shared with the
 * series it grew from, and copied only when that one had already grown another way.
 *
 * Equation: level k keeps, for each block of 16ᵏ points, the index of its least and greatest value.
 *
 * @param series what the points follow
 * @param points `timeS` [s], finite and not before the last point; `value` in the channel's unit, finite
 * @returns a new series; the old one is unchanged. Throws `OutOfRangeError` on NaN or on time running back.
 *
 * Limits: 2³² − 1 points. Source: own design; the pyramid is a segment tree with fan-out 16.
 *
 * @example
 * appendToSeries(emptySeries(), [{ timeS: 0, value: 20 }, { timeS: 1, value: 21 }]).length // => 2
 */
export function appendToSeries(series: Series, points: readonly SeriesPoint[]): Series {
  if (points.length === 0) return series;
  const storage =
    series.storage.used === series.length ? series.storage : fork(series.storage, series.length);
  for (const { timeS, value } of points) {
    const last = storage.used === 0 ? -Number.MAX_VALUE : storage.times[storage.used - 1]!;
    requireInRange('time of a point', timeS, last, Number.MAX_VALUE, 's');
    requireInRange('value of a point', value, -Number.MAX_VALUE, Number.MAX_VALUE, '1');
    push(storage, timeS, value);
  }
  return { length: storage.used, storage };
}

function push(storage: SeriesStorage, timeS: number, value: number): void {
  const index = storage.used;
  if (index === storage.times.length) {
    storage.times = grown(storage.times, Float64Array);
    storage.values = grown(storage.values, Float64Array);
  }
  storage.times[index] = timeS;
  storage.values[index] = value;
  storage.used = index + 1;
  for (let level = 0; index >> (blockBits * level) > 0 || level === 0; level++) {
    recordExtremes(storage, level, index);
  }
}

function recordExtremes(storage: SeriesStorage, level: number, index: number): void {
  const bits = blockBits * (level + 1);
  const block = index >>> bits;
  const extremes = levelAt(storage, level);
  if (block >= extremes.least.length) {
    extremes.least = grown(extremes.least, Uint32Array);
    extremes.greatest = grown(extremes.greatest, Uint32Array);
  }
  if (index === block << bits) {
    extremes.least[block] = index;
    extremes.greatest[block] = index;
    return;
  }
  const { values } = storage;
  const value = values[index]!;
  if (value < values[extremes.least[block]!]!) extremes.least[block] = index;
  if (value > values[extremes.greatest[block]!]!) extremes.greatest[block] = index;
}

/**
 * A level comes into being with the first point after the first whole block of the level below, which is then all that its own first
 * block holds.
 */
function levelAt(storage: SeriesStorage, level: number): SeriesLevel {
  const existing = storage.levels[level];
  if (existing) return existing;
  const below = storage.levels[level - 1];
  const made = { least: new Uint32Array(16), greatest: new Uint32Array(16) };
  storage.levels.push(made);
  if (!below) return made;
  made.least[0] = below.least[0]!;
  made.greatest[0] = below.greatest[0]!;
  return made;
}

function fork(storage: SeriesStorage, length: number): SeriesStorage {
  const copy: SeriesStorage = {
    times: new Float64Array(Math.max(256, length * 2)),
    values: new Float64Array(Math.max(256, length * 2)),
    used: 0,
    levels: [],
  };
  for (let index = 0; index < length; index++) {
    push(copy, storage.times[index]!, storage.values[index]!);
  }
  return copy;
}

function grown<A extends Float64Array | Uint32Array>(
  array: A,
  ArrayType: new (length: number) => A,
): A {
  const larger = new ArrayType(array.length * 2);
  larger.set(array);
  return larger;
}
