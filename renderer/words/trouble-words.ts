import { assertNever, clockWords, say } from '#shared-core';
import type { Trouble } from '../stores/index.ts';
import { problemWords } from './problem-words.ts';

/** What is wrong with the run under way, and what to do at the still and at the computer. */
export function troubleWords(trouble: Trouble): string {
  switch (trouble.kind) {
    case 'advice-stopped':
      return say(
        'Advice has stopped: no prompt will come in this run. Read the thermometer in the still head and go by it. Readings are still recorded. ({message})',
        { message: trouble.message },
      );
    case 'record-in-danger':
      return trouble.problem.kind === 'disk-full'
        ? say(
            'Little room is left at {path}. Free some space soon; everything is still being saved.',
            { path: trouble.problem.path },
          )
        : problemWords(trouble.problem);
    case 'folder-gone':
      return folderGoneWords(trouble);
    case 'run-not-saved':
      return notSavedWords(trouble.run);
    case 'not-saved':
      return say('Not being saved. {what}', {
        what: trouble.problem ? problemWords(trouble.problem) : '',
      }).trim();
    case 'readings-lost':
      return say(
        'The record of this run has a gap: for a while the disk took nothing, and not all readings found room in memory. Note by hand what you read meanwhile; Look back says how many are missing.',
      );
    default:
      return assertNever(trouble);
  }
}

function folderGoneWords({ path, waits }: Extract<Trouble, { kind: 'folder-gone' }>): string {
  switch (waits) {
    case 'run-under-way':
      return say(
        'Not being saved. The folder of the runs is gone: {path}. Put it back, or plug its drive in again: what was heard meanwhile is then saved. If it will not come back, make it anew: this run is then written whole, from its beginning.',
        { path },
      );
    case 'ended-run':
      return say(
        'The folder of the runs is gone: {path}. Put it back, or plug its drive in again. If it will not come back, make it anew: what is not saved yet is then written there, whole, and nothing else is in it.',
        { path },
      );
    case 'nothing':
      return say(
        'The folder of the runs is gone: {path}. Put it back, or plug its drive in again. If it will not come back, make it anew: it is empty then.',
        { path },
      );
    default:
      return assertNever(waits);
  }
}

/** That the folder is gone, and what to do then, is said above it. */
function notSavedWords({
  name,
  endedS,
  savedToS,
  problem,
}: Extract<Trouble, { kind: 'run-not-saved' }>['run']): string {
  const run = { name, ended: clockWords(endedS), savedTo: clockWords(savedToS) };
  return problem.kind === 'folder-gone'
    ? say(
        'Not saved: the run “{name}” is over after {ended}, and the disk took only {savedTo} of it before the folder was gone. It is in memory whole: leave the program open, and it is saved by itself once the folder is there.',
        run,
      )
    : say(
        'Not saved: the run “{name}” is over after {ended}, and the disk took only {savedTo} of it. It is in memory whole: leave the program open, and it is saved by itself as soon as the disk takes it. {what}',
        { ...run, what: problemWords(problem) },
      );
}
