import path from 'node:path';
import { type LogHeader, type Result, succeed } from '#shared-core';
import type { Clock } from '../clock/index.ts';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { type LogWriter, stamp } from './log-writer.ts';
import { openSegment } from './open-segment.ts';
import type { WrittenRecord } from './record-memory.ts';
import { segmentFile } from './run-files.ts';

/** Where a log that was cut off goes on. */
export interface LogEnd {
  /** The highest number of any file. */
  readonly lastSegment: number;
  /** The highest number of a record in any file, and run time of the newest thing recorded [s]. */
  readonly seq: number;
  readonly timeS: number;
  /** Records that the process before may have known to be on the disk or not, oldest first; of those before them it did know it. */
  readonly unsure: readonly WrittenRecord[];
}

export interface LogPlace {
  readonly files: FileLayer;
  readonly clock: Clock;
  /** The run's own folder. */
  readonly folder: string;
  readonly header: LogHeader;
}

type LogTail = Omit<LogEnd, 'timeS'>;

/**
 * Saves what is not surely saved of a log that nobody goes on with: it stands in a next file again, and one more file, begun
 * once that is on the disk, tells so. Where the disk takes them not, neither stays.
 */
export async function makeLogSure(
  setup: LogPlace,
  end: LogTail,
): Promise<Result<void, FileProblem>> {
  const repeated = await nextFile(
    setup,
    end,
    'Whether what the program before had written was on the disk, nobody knew.',
  );
  if (!repeated.ok) return repeated;
  await repeated.value.close();
  const lastSegment = end.lastSegment + 1;
  const told = await nextFile(
    setup,
    { ...end, lastSegment, unsure: [] },
    'All before it is on the disk.',
  );
  if (!told.ok) {
    await setup.files.remove(path.join(setup.folder, segmentFile(lastSegment)));
    return told;
  }
  await told.value.close();
  return succeed(undefined);
}

/** The next file of a log, with what is not surely saved, once it is on the disk. */
export async function nextFile(
  { files, clock, folder, header }: LogPlace,
  end: LogTail,
  because: string,
): Promise<Result<LogWriter, FileProblem>> {
  const segment = end.lastSegment + 1;
  const opening = { kind: 'segment', segment, because, header } as const;
  const made = await openSegment({ files, folder, opening });
  const openingStamp = stamp(clock, (end.unsure[0]?.stamp.seq ?? end.seq + 1) - 1);
  const opened = made.ok ? made.value.begin({ openingStamp, pending: end.unsure }) : made;
  if (!opened.ok) return opened;
  const synced = await opened.value.sync();
  if (synced.ok) return opened;
  await opened.value.close();
  await files.remove(path.join(folder, segmentFile(segment)));
  return synced;
}
