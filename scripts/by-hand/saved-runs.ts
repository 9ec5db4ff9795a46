import { readFileSync, writeFileSync } from 'node:fs';
import type { ByHandRun } from './by-hand-run.ts';

/** Runs are kept one a line, so that a file of any size can be written and read. */
export function saveRuns(file: string, runs: readonly ByHandRun[]): void {
  writeFileSync(file, `${runs.map((run) => JSON.stringify(run)).join('\n')}\n`);
}

/** Runs that this script has written; any other file is a mistake of whoever called. */
export function loadRuns(file: string): readonly ByHandRun[] {
  return readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as ByHandRun);
}
