import { pointAt, type SeriesPoint } from '#shared-core';
import type { RunView } from './run-view.ts';

/**
 * The newest reading of the head; null while no probe is there, and after the program was closed until one has been heard
 * again, since nothing tells for sure how long ago that was.
 */
export function newestHead({ tracks, gaps }: Pick<RunView, 'tracks' | 'gaps'>): SeriesPoint | null {
  const newest = tracks.head && pointAt(tracks.head.series, -1);
  const gap = gaps.at(-1);
  if (!newest || gap?.toS === null) return null;
  const wasHeardSince = gap?.reason !== 'program-closed' || newest.timeS > gap.fromS;
  return wasHeardSince ? newest : null;
}
