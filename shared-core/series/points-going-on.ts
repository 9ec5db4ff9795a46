import { pointAt } from './point-at.ts';
import type { Series, SeriesPoint } from './series.ts';

/**
 * The points that a series can go on with: one whose time runs back, as a clock that was set or a damaged record has left it, is
 * left out of every drawing. The record keeps it.
 *
 * @param series what the points follow
 * @param points `timeS` [s], finite, in the order they were recorded
 * @returns those not before the last of the series nor before any that is kept
 *
 * Source: this project's rule; no standard.
 *
 * @example
 * const at = (timeS) => ({ timeS, value: 20 });
 * pointsGoingOn(emptySeries(), [at(0), at(2), at(1), at(2), at(3)]).map(({ timeS }) => timeS) // => [0, 2, 2, 3]
 */
export function pointsGoingOn(
  series: Series,
  points: readonly SeriesPoint[],
): readonly SeriesPoint[] {
  let lastS = pointAt(series, -1)?.timeS ?? Number.NEGATIVE_INFINITY;
  return points.filter(({ timeS }) => {
    if (timeS < lastS) return false;
    lastS = timeS;
    return true;
  });
}
