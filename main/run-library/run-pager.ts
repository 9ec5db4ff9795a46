import type { LogRecord, RunInput } from '#shared-core';
import { inputsOfRecord } from '#shared-core';
import type { FileLayer } from '../file-layer/index.ts';
import {
  emptyReport,
  type ReadReport,
  type RunPlace,
  readRunLog,
  type Trail,
} from './read-run-log.ts';

/** A place in the log of a run, and how many inputs stand up to it. */
export interface Bookmark {
  readonly inputs: number;
  readonly place: RunPlace;
}

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

/** @param passes told of places that another pager may begin at, as they are passed */
export function createRunPager(
  files: FileLayer,
  folder: string,
  from: Bookmark | null = null,
  passes: (bookmark: Bookmark) => void = () => {},
): RunPager {
  const report = emptyReport();
  const trail: Trail = { place: from?.place ?? null };
  const records = readRunLog(files, folder, report, trail);
  let buffered: RunInput[] = [];
  let taken = 0;
  let position = from?.inputs ?? 0;
  let lastSeq = from?.place.seq ?? -1;

  function buffer(batch: readonly LogRecord[]): void {
    buffered = buffered.slice(taken);
    taken = 0;
    for (const record of batch) {
      // The first record of a later file bears the number of one before it.
      lastSeq = Math.max(lastSeq, record.stamp.seq);
      buffered.push(...inputsOfRecord(record));
    }
    const { place } = trail;
    if (place?.seq === lastSeq) passes({ inputs: position + buffered.length, place });
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
