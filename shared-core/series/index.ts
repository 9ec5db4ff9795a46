/** Long series of points, reduced for drawing. */
export { appendToSeries } from './append-to-series.ts';
export { indexAtTime } from './index-at-time.ts';
export { pointAt } from './point-at.ts';
export { pointsGoingOn } from './points-going-on.ts';
export { type DrawnPoint, reduceToWidth } from './reduce-to-width.ts';
export { emptySeries, type Series, type SeriesPoint } from './series.ts';
export { unbrokenStretches } from './unbroken-stretches.ts';
