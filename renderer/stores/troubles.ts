import type { EventBody, ServiceProblem } from '#shared-core';

type NotSavedRun = NonNullable<EventBody<'recording'>['notSaved']>[number];

/** What is wrong with the run under way while it is still being recorded, or is not. */
export type Trouble =
  | { readonly kind: 'advice-stopped'; readonly message: string }
  /** Recording goes on, but may not for long. */
  | { readonly kind: 'record-in-danger'; readonly problem: ServiceProblem }
  /** There is nothing to record into, whether a run is under way or not. */
  | {
      readonly kind: 'folder-gone';
      readonly path: string;
      /** What is written where the folder is made anew: the run under way, one that has ended and is not saved, or nothing. */
      readonly waits: 'run-under-way' | 'ended-run' | 'nothing';
    }
  /** A run that has ended is whole only in memory. */
  | { readonly kind: 'run-not-saved'; readonly run: NotSavedRun }
  | { readonly kind: 'not-saved'; readonly problem: ServiceProblem | null }
  /** Measured and shown, but kept nowhere. */
  | { readonly kind: 'readings-lost' };

/** The advice first: whoever trusts it has to act at the still. */
export function troublesOf(recording: EventBody<'recording'> | null): readonly Trouble[] {
  if (recording === null) return [];
  const { state, problem, adviceStopped, lostReadings, notSaved = [] } = recording;
  const troubles: Trouble[] = [];
  if (adviceStopped !== undefined) {
    troubles.push({ kind: 'advice-stopped', message: adviceStopped });
  }
  if (problem?.kind === 'folder-gone') {
    const over = notSaved.length > 0 ? 'ended-run' : 'nothing';
    const waits = state === 'idle' ? over : 'run-under-way';
    troubles.push({ kind: 'folder-gone', path: problem.path, waits });
  } else if (state === 'failed') troubles.push({ kind: 'not-saved', problem });
  else if (problem !== null) troubles.push({ kind: 'record-in-danger', problem });
  for (const run of notSaved) troubles.push({ kind: 'run-not-saved', run });
  if (lostReadings !== undefined) troubles.push({ kind: 'readings-lost' });
  return troubles;
}
