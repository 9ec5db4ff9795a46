import { deflateRawSync, inflateRawSync } from 'node:zlib';
import {
  createLogScanner,
  encodeRecord,
  firstPreviousChecksum,
  type LogRecord,
} from '#shared-core';
import type { PendingRecord } from './backlog.ts';

/** A record as it stands in a log, whatever file it stands in. */
export type WrittenRecord = Pick<PendingRecord, 'stamp' | 'body'>;

/** So much text is packed together [characters]: a minute of a fast probe, and far less than a millisecond's work to find. */
const pieceLength = 65_536;

/**
 * All records of a run from its beginning, also those that are saved: a folder may be deleted with what is in it, and then it can be written
 * again as it was. Packed, since a run of a week goes on for a million of them.
 */
export interface RecordMemory {
  /** A record that stands for itself; the opening of a later file stands for none. */
  add(record: Pick<LogRecord, 'stamp' | 'body'>): void;
  /** From the first, in pieces; what is added while they are gone through comes too. */
  pieces(): Iterable<readonly WrittenRecord[]>;
}

export function createRecordMemory(): RecordMemory {
  const packed: Uint8Array[] = [];
  /** A log of its own: each record is chained to the one before in its piece. */
  let lines: string[] = [];
  let length = 0;
  let previousChecksum = firstPreviousChecksum;

  function pack(): void {
    packed.push(deflateRawSync(lines.join(''), { level: 1 }));
    lines = [];
    length = 0;
    previousChecksum = firstPreviousChecksum;
  }

  return {
    add({ stamp, body }) {
      if (body.kind === 'segment' || body.kind === 'unknown') return;
      const { line, checksum } = encodeRecord(body, stamp, previousChecksum);
      lines.push(line);
      length += line.length;
      previousChecksum = checksum;
      if (length >= pieceLength) pack();
    },
    *pieces() {
      for (let at = 0; at < packed.length; at += 1) {
        const piece = packed[at];
        if (piece !== undefined) yield recordsOf(inflateRawSync(piece).toString('latin1'));
      }
      yield recordsOf(lines.join(''));
    },
  };
}

function recordsOf(text: string): readonly WrittenRecord[] {
  return createLogScanner()
    .push(text)
    .flatMap((item) => {
      if (item.kind === 'damage' || item.record.body.kind === 'unknown') return [];
      const { stamp, body } = item.record;
      return [{ stamp, body }];
    });
}
