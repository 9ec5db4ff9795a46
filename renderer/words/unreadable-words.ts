import { assertNever, type RunSummary, say } from '#shared-core';

/** Why a run can't be opened and what to do about it. */
export function unreadableWords(
  { why, message }: NonNullable<RunSummary['unreadable']>,
  runId: string,
): string {
  switch (why) {
    case 'header-lost':
      return say(
        'This run can’t be opened: its beginning is damaged, or a newer version of this program wrote it. Open it with the newest version, or save its files and show them to whoever looks after this computer.',
      );
    case 'nothing-recorded':
      return say(
        'Nothing was recorded of this run: it ended while it was being started. No reading is missing; it can be removed.',
      );
    case 'log-missing':
      return say(
        'This run can’t be opened: its record is not in its folder “{runId}” any more. If “run.jsonl” was moved, put it back.',
        { runId },
      );
    case 'not-permitted':
      return say(
        'This account may not read this run. Ask who looks after this computer to let it read the folder “{runId}”.',
        { runId },
      );
    case 'read-failed':
      return say(
        'The disk does not give this run ({message}). Check the drive; what can be read of its files can be saved now.',
        { message },
      );
    default:
      return assertNever(why);
  }
}
