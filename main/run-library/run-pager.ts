import type { LogRecord, RunInput } from '#shared-core';
import { inputsOfRecord } from '#shared-core';
import type { FileLayer } from '../file-layer/index.ts';
import { emptyReport, type ReadReport, readRunLog } from './read-run-log.ts';

/** Reads the inputs of one run forwards in pages; going on where the last page ended costs nothing. */
export interface RunPager {
  /** Index of the next input. */
  position(): number;
  /** At most `count` inputs; fewer only at the end. */
  next(count: number): Promise<readonly RunInput[]>;
  /** Number of the last record read so far; −1 before the first. */
  lastSeq(): number;
  report(): ReadReport;
  close(): Promise<void>;
}

export function createRunPager(files: FileLayer, folder: string): RunPager {
  const report = emptyReport();
  const records = readRunLog(files, folder, report);
  let buffered: RunInput[] = [];
  let taken = 0;
  let position = 0;
  let lastSeq = -1;

  function buffer(batch: readonly LogRecord[]): void {
    buffered = buffered.slice(taken);
    taken = 0;
    for (const record of batch) {
      lastSeq = record.stamp.seq;
      buffered.push(...inputsOfRecord(record));
    }
  }

  return {
    position: () => position,
    lastSeq: () => lastSeq,
    report: () => report,
    async next(count) {
      while (buffered.length - taken < count) {
        const step = await records.next();
        if (step.done === true) break;
        buffer(step.value);
      }
      const page = buffered.slice(taken, taken + count);
      taken += page.length;
      position += page.length;
      return page;
    },
    async close() {
      await records.return();
    },
  };
}
