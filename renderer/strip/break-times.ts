import type { Series } from '#shared-core';
import type { LinkGap } from '../stores/index.ts';

/** Where the line of the head is interrupted, ascending: the probe was lost, or said what cannot be believed. */
export function breakTimes(gaps: readonly LinkGap[], doubtful: Series): readonly number[] {
  const doubtfulS = doubtful.storage.times.slice(0, doubtful.length);
  return [...gaps.map(({ fromS }) => fromS), ...doubtfulS].sort((a, b) => a - b);
}
