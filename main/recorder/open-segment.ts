import path from 'node:path';
import { type LogBody, type LogRecord, type Result, succeed } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import type { PendingRecord } from './backlog.ts';
import { createLogWriter, type LogWriter } from './log-writer.ts';
import { segmentFile } from './run-files.ts';

export interface SegmentStart {
  readonly files: FileLayer;
  readonly folder: string;
  readonly opening: Extract<LogBody, { kind: 'header' | 'segment' }>;
  readonly openingStamp: LogRecord['stamp'];
  /** Records that may not be on the disk yet: they stand in the new file again. */
  readonly pending: readonly Pick<PendingRecord, 'stamp' | 'body'>[];
}

/** Starts a log file with its opening record; one that can't be begun, as its first sync tells at the latest, is taken away again. */
export function openSegment(start: SegmentStart): Result<LogWriter, FileProblem> {
  const { files, folder, opening, openingStamp, pending } = start;
  const file = path.join(folder, segmentFile(opening.kind === 'header' ? 1 : opening.segment));
  const opened = createLogWriter(files, file);
  if (!opened.ok) return opened;
  const writer = opened.value;
  let written = writer.write(opening, openingStamp);
  for (const { body, stamp } of pending) {
    if (written.ok) written = writer.write(body, stamp);
  }
  if (written.ok) return succeed(syncingFolderOnce(writer, files, file));
  void writer.close().then(() => files.remove(file));
  return written;
}

/** The first sync of a new file also makes its name survive; a file that nothing has arrived in goes when it is closed. */
function syncingFolderOnce(writer: LogWriter, files: FileLayer, file: string): LogWriter {
  let isNamed = false;
  return {
    write: writer.write,
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
