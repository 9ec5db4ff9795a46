import type { MonitorChange, RunInput, RunSettings, Verdicts } from '#shared-core';
import type { RunIdentity, RunView } from '../stores/index.ts';

/** A recorded run, as read. */
export interface RecordedRun {
  readonly identity: RunIdentity;
  readonly inputs: readonly RunInput[];
  readonly endS: number;
}

/**
 * A run gone through once more by the same monitor and the same reducer as live: what Watch showed
 * at each moment. Moments share what they have in common, so thousands of them are small.
 */
export interface Film extends RecordedRun {
  readonly settings: RunSettings;
  readonly frames: readonly RunView[];
  readonly changes: readonly MonitorChange[];
  readonly verdicts: Verdicts;
}

export function frameTimeS(frame: RunView): number {
  return frame.snapshot?.timeS ?? 0;
}

/** The last frame at or before a time; the first one before all. */
export function frameIndexAt(film: Film, timeS: number): number {
  let low = 0;
  let high = film.frames.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (frameTimeS(film.frames[middle]!) <= timeS) low = middle;
    else high = middle - 1;
  }
  return low;
}
