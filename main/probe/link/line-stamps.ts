/** Gives lines their moments of arrival. */
export interface LineStamps {
  /** Moments for `count` lines that were completed in one chunk at `nowS`; never before an earlier one. */
  stamp(count: number, nowS: number): readonly number[];
}

/** How fast the expected interval follows a change of pace. */
const follow = 0.2;

/**
 * Operating systems hand over several lines at once when they were busy; stamping them all "now"
 * would bunch the curve and fake steep slopes. They are spread backwards at the probe's usual
 * interval, but never before the line that came last.
 */
export function createLineStamps(): LineStamps {
  let lastS: number | null = null;
  let intervalS: number | null = null;
  return {
    stamp(count, nowS) {
      if (count === 0) return [];
      const room = lastS === null ? null : Math.max(0, nowS - lastS) / count;
      const step = room === null ? 0 : Math.min(intervalS ?? room, room);
      if (room !== null) {
        intervalS = intervalS === null ? room : intervalS + follow * (room - intervalS);
      }
      lastS = Math.max(nowS, lastS ?? nowS);
      return Array.from({ length: count }, (_, index) => nowS - (count - 1 - index) * step);
    },
  };
}
