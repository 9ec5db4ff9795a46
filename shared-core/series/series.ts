/** One value of a series at its time. */
export interface SeriesPoint {
  readonly timeS: number;
  readonly value: number;
}

/**
 * Growing storage shared by every {@link Series} that grew from the same start. Only
 * `appendToSeries` writes to it, and only past the length of every series handed out before.
 */
export interface SeriesStorage {
  times: Float64Array;
  values: Float64Array;
  used: number;
  readonly levels: SeriesLevel[];
}

/** Where the least and the greatest value lie in each block of one level. */
export interface SeriesLevel {
  least: Uint32Array;
  greatest: Uint32Array;
}

/**
 * Readings of one channel in time order, with a pyramid of minima and maxima above them.
 * A value: appending gives a new series and leaves the old one as it was.
 */
export interface Series {
  readonly length: number;
  readonly storage: SeriesStorage;
}

/** Each block of a level covers this many blocks of the level below: 2^4. */
export const blockBits = 4;
const firstCapacity = 256;

/**
 * A series without points.
 *
 * @returns length 0 [points]; any number of points up to 2³² − 1 may be appended
 *
 * Limits: none; takes no argument. Source: own design, no equation.
 *
 * @example
 * emptySeries().length // => 0
 */
export function emptySeries(): Series {
  return {
    length: 0,
    storage: {
      times: new Float64Array(firstCapacity),
      values: new Float64Array(firstCapacity),
      used: 0,
      levels: [],
    },
  };
}
