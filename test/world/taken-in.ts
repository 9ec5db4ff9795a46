import type { KeptThings } from './kept-things.ts';

/** A run that was taken in from a table, as far as it was said to be kept. */
export interface TakenInRun {
  /** What it is called among the kept things. */
  readonly thing: string;
  readonly runId: string;
  readonly place: 'library' | 'bin';
  readonly readings: number;
  /** Every second one is put away now and then; the others stay where what is measured of them can be looked up. */
  readonly staysInLibrary: boolean;
}

/** Which runs became of tables. */
export interface TakenIn {
  note(run: Omit<TakenInRun, 'place' | 'staysInLibrary'>): void;
  all(): readonly TakenInRun[];
}

/** Nothing else tells of a run from outside which table it came from: each is said to have begun at a moment of its own. */
export const beganIso = (number: number) =>
  new Date(Date.UTC(2024, 0, 1) + number * 60_000).toISOString();

export const tableOf = (startedAtIso: string) => `table of ${startedAtIso}`;

export const standsIn = (place: TakenInRun['place'], readings: number) =>
  `in the ${place}, ${readings} readings`;

export function createTakenIn(kept: KeptThings): TakenIn {
  const runs: Omit<TakenInRun, 'place'>[] = [];
  return {
    note(run) {
      runs.push({ ...run, staysInLibrary: runs.length % 2 === 0 });
    },
    all: () =>
      runs.map((run) => {
        const isInBin = kept.standing(run.thing) === standsIn('bin', run.readings);
        return { ...run, place: isInBin ? 'bin' : 'library' };
      }),
  };
}
