import { assertNever, type Unreadable } from '#shared-core';

/** Why a run can't be opened and what to do about it. */
export function unreadableWords({ why, message }: Unreadable, runId: string): string {
  switch (why) {
    case 'header-lost':
      return 'This run can’t be opened: its beginning is damaged, or a newer version of this program wrote it. Open it with the newest version, or save its files and show them to whoever looks after this computer.';
    case 'log-missing':
      return `This run can’t be opened: its record is not in its folder “${runId}” any more. If “run.jsonl” was moved, put it back.`;
    case 'not-permitted':
      return `This account may not read this run. Ask who looks after this computer to let it read the folder “${runId}”.`;
    case 'read-failed':
      return `The disk does not give this run (${message}). Check the drive; what can be read of its files can be saved now.`;
    default:
      return assertNever(why);
  }
}
