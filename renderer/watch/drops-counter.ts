/** Taps in rhythm with the drops, in milliseconds of the window's clock. */
export interface DropTaps {
  readonly firstMs: number;
  readonly lastMs: number;
  /** Intervals between taps: the drops counted. */
  readonly count: number;
}

/** Longest pause between two drops of one count. */
export const longestPauseMs = 6000;
const leastCount = 3;

export function tapped(taps: DropTaps | null, nowMs: number): DropTaps {
  if (taps === null || nowMs - taps.lastMs > longestPauseMs) {
    return { firstMs: nowMs, lastMs: nowMs, count: 0 };
  }
  return { ...taps, lastMs: nowMs, count: taps.count + 1 };
}

/** The count as a mark, once there are enough drops to say a rate. */
export function dropsMark(taps: DropTaps) {
  const overS = (taps.lastMs - taps.firstMs) / 1000;
  if (taps.count < leastCount || overS <= 0) return null;
  return { type: 'drops-counted', count: taps.count, overS } as const;
}
