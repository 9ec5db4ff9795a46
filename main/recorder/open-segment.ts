import path from 'node:path';
import { type LogBody, type LogRecord, type Result, succeed } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { createLogWriter, type LogWriter } from './log-writer.ts';
import type { WrittenRecord } from './record-memory.ts';
import { segmentFile } from './run-files.ts';

export interface SegmentStart {
  readonly files: FileLayer;
  readonly folder: string;
  readonly opening: Extract<LogBody, { kind: 'header' | 'segment' }>;
}

/** What a new file begins with. */
export interface SegmentBeginning {
  readonly openingStamp: LogRecord['stamp'];
  /** Records that may not be on the disk yet: they stand in the new file again. */
  readonly pending: readonly WrittenRecord[];
}

/** A log file that is there, with nothing in it. */
export interface EmptySegment {
  /**
   * Sends its opening record and what is pending on their way, and answers in the same turn: whatever comes next is written behind them. A file that
   * can't be begun is taken away again.
   */
  begin(beginning: SegmentBeginning): Result<LogWriter, FileProblem>;
}

/** Makes the next log file; the disk may hold this as long as it likes. */
export async function openSegment(start: SegmentStart): Promise<Result<EmptySegment, FileProblem>> {
  const { files, folder, opening } = start;
  const file = path.join(folder, segmentFile(opening.kind === 'header' ? 1 : opening.segment));
  const opened = await createLogWriter(files, file);
  if (!opened.ok) return opened;
  const writer = opened.value;

  return succeed({
    begin({ openingStamp, pending }) {
      let written = writer.write(opening, openingStamp);
      for (const { body, stamp } of pending) {
        if (written.ok) written = writer.write(body, stamp);
      }
      if (written.ok) return succeed(syncingFolderOnce(writer, files, file));
      void writer.close().then(() => files.remove(file));
      return written;
    },
  });
}

/** The first sync of a new file also makes its name survive; a file that nothing has arrived in goes when it is closed. */
function syncingFolderOnce(writer: LogWriter, files: FileLayer, file: string): LogWriter {
  let isNamed = false;
  return {
    write: writer.write,
    bytes: writer.bytes,
    async close() {
      await writer.close();
      if (isNamed) return;
      const arrived = await files.sizeBytes(file);
      if (arrived.ok && arrived.value === 0) await files.remove(file);
    },
    async sync() {
      const synced = await writer.sync();
      if (!synced.ok || isNamed) return synced;
      const named = await files.syncFolder(path.dirname(file));
      isNamed = named.ok;
      return named;
    },
  };
}
