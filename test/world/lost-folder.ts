import type { ServiceProblem } from '#shared-core';
import type { Judge } from './judge.ts';
import type { Program } from './program.ts';
import type { RunBook } from './run-book.ts';

/** What is so at the end of a step. */
export interface LostFolderMoment {
  readonly nowS: number;
  readonly isAway: boolean;
  /** Null while it has no turns. */
  readonly program: Program | null;
  readonly book: RunBook | null;
}

/** Whoever sees readings go by whose folder is gone is told so within this time [s]. */
const toldWithinS = 5;

/** A folder that is gone is told: by the run under way, and by whatever is refused meanwhile. */
export function createLostFolderCheck(judge: Judge) {
  let before: { readonly book: RunBook | null; readonly count: number } | null = null;
  /** Since when the run goes on without its folder [s]. */
  let goesOnSinceS: number | null = null;

  return {
    see({ nowS, isAway, program, book }: LostFolderMoment): void {
      if (!isAway || program === null || book === null || before?.book !== book) {
        before = isAway && program !== null ? { book, count: book?.told.length ?? 0 } : null;
        goesOnSinceS = null;
        return;
      }
      if (book.told.length > before.count) goesOnSinceS ??= nowS;
      const { state, problem } = program.session.recordingStatus();
      const isTold = state === 'failed' && problem !== null;
      if (goesOnSinceS !== null && nowS - goesOnSinceS > toldWithinS && !isTold) {
        judge.violated(
          'lost-folder-is-told',
          `Since ${goesOnSinceS} s, and the record is ${state}.`,
        );
      }
    },
    /** Something that needs the folder was refused while it was away. */
    refused({ kind }: ServiceProblem): void {
      if (kind !== 'folder-unavailable') judge.violated('lost-folder-is-told', `Said: ${kind}.`);
    },
  };
}
