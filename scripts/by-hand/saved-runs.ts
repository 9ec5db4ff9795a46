import { appendFileSync, closeSync, openSync, readSync, writeFileSync } from 'node:fs';
import { StringDecoder } from 'node:string_decoder';
import type { ByHandRun } from './by-hand-run.ts';

const chunkBytes = 1 << 22;

/** Runs are kept one a line, so that a file of any size can be written and read. */
export function saveRuns(file: string, runs: Iterable<ByHandRun>): number {
  let count = 0;
  writeFileSync(file, '');
  for (const run of runs) {
    appendFileSync(file, `${JSON.stringify(run)}\n`);
    count += 1;
  }
  return count;
}

/** Runs as this script has written them, one at a time; any other file is a mistake of whoever called. */
export function* loadRuns(file: string): Generator<ByHandRun> {
  const handle = openSync(file, 'r');
  const chunk = Buffer.alloc(chunkBytes);
  try {
    const decoder = new StringDecoder('utf8');
    let rest = '';
    for (;;) {
      const length = readSync(handle, chunk, 0, chunkBytes, null);
      if (length === 0) return;
      const lines = (rest + decoder.write(chunk.subarray(0, length))).split('\n');
      rest = lines.pop() ?? '';
      for (const line of lines) yield JSON.parse(line) as ByHandRun;
    }
  } finally {
    closeSync(handle);
  }
}
