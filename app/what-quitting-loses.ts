import { clockWords, type EventBody } from '#shared-core';

type RecordingStatus = EventBody<'recording'>;

/** A run goes on, or one that is over stands whole only in memory: the program does not end without a yes. */
export function isAnythingAtStake({ state, notSaved }: RecordingStatus): boolean {
  return state !== 'idle' || notSaved !== undefined;
}

/** What ends with the program, and what of it would be lost; empty where nothing is at stake. */
export function whatQuittingLoses(status: RecordingStatus): string {
  const { state, savedToS, notSaved = [] } = status;
  const underWay = {
    idle: [],
    recording: ['A run is being recorded, and it goes on.'],
    failed: [
      `A run is being recorded, and it goes on; the disk has taken it only up to ${clockWords(savedToS ?? 0)}, and what it does not take at the end is lost.`,
    ],
  } satisfies Record<RecordingStatus['state'], readonly string[]>;
  return [...underWay[state], ...notSaved.map(notSavedSentence)].join(' ');
}

function notSavedSentence(run: NonNullable<RecordingStatus['notSaved']>[number]): string {
  const [savedTo, ended] = [clockWords(run.savedToS), clockWords(run.endedS)];
  return `The run “${run.name}” is over and not saved: the disk has taken it up to ${savedTo} of ${ended}, and the rest is lost with the program.`;
}
