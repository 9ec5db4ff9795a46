import type { Bookmark } from './run-pager.ts';

/** Places in the runs that were read last, from which they can be read on. */
export interface Bookmarks {
  /** The last one at which no more than so many inputs have passed; null where there is none. */
  before(runId: string, inputs: number): Bookmark | null;
  add(runId: string, bookmark: Bookmark): void;
  forget(runId: string): void;
}

/** Windows that look at more runs at once than that read some of them again. */
const mostRuns = 8;
/** A tenth of a page: reading on from one is hardly dearer than from where a page ended [inputs]. */
const leastBetween = 400;

export function createBookmarks(): Bookmarks {
  const ofRuns = new Map<string, Bookmark[]>();
  return {
    before(runId, inputs) {
      const known = ofRuns.get(runId);
      if (known === undefined) return null;
      // The run that was looked at longest ago makes room first.
      ofRuns.delete(runId);
      ofRuns.set(runId, known);
      return known.findLast((bookmark) => bookmark.inputs <= inputs) ?? null;
    },
    add(runId, bookmark) {
      const known = ofRuns.get(runId) ?? [];
      if (bookmark.inputs < (known.at(-1)?.inputs ?? 0) + leastBetween) return;
      known.push(bookmark);
      ofRuns.set(runId, known);
      for (const oldest of ofRuns.keys()) if (ofRuns.size > mostRuns) ofRuns.delete(oldest);
    },
    forget: (runId) => void ofRuns.delete(runId),
  };
}
