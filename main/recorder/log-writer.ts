import {
  encodeRecord,
  fail,
  firstPreviousChecksum,
  type LogBody,
  type LogRecord,
  type Result,
  succeed,
} from '#shared-core';
import type { Clock } from '../clock/index.ts';
import type { AppendFile, FileLayer, FileProblem } from '../file-layer/index.ts';

/** One log file being written: each record is chained to the one before and goes out in one write. */
export interface LogWriter {
  write(body: LogBody, stamp: LogRecord['stamp']): Result<void, FileProblem>;
  sync(): Promise<Result<void, FileProblem>>;
  /** How long the file is once all that was written has arrived. */
  bytes(): number;
  close(): Promise<void>;
}

/** Starts a new log file at `path`; there must be none yet. */
export async function createLogWriter(
  files: FileLayer,
  path: string,
): Promise<Result<LogWriter, FileProblem>> {
  const opened = await files.createAppend(path);
  return opened.ok ? succeed(logWriter(opened.value, path)) : opened;
}

function logWriter(file: AppendFile, path: string): LogWriter {
  let previousChecksum = firstPreviousChecksum;
  let length = 0;
  return {
    write(body, stamp) {
      const { line, checksum } = encodeRecord(body, stamp, previousChecksum);
      const bytes = Buffer.from(line, 'latin1');
      const written = file.write(bytes);
      if (!written.ok) return written;
      if (written.value !== bytes.length) {
        const message = `Only ${written.value} of ${bytes.length} bytes were taken.`;
        return fail({ kind: 'full', path, message });
      }
      previousChecksum = checksum;
      length += bytes.length;
      return succeed(undefined);
    },
    sync: () => file.sync(),
    bytes: () => length,
    close: () => file.close(),
  };
}

/** When a record is written. */
export function stamp(clock: Clock, seq: number): LogRecord['stamp'] {
  return {
    seq,
    monoS: Math.round(clock.monotonicS() * 1000) / 1000,
    wallMs: Math.round(clock.wallMs()),
  };
}
