import { type DecodedRecord, decodeRecord } from './decode-record.ts';
import { firstPreviousChecksum } from './encode-record.ts';
import type { LogRecord } from './log-record.ts';

/** Longest line the recorder writes, with room to spare; anything longer is damage. */
export const longestRecordBytes = 1_048_576;

/** How every record begins; inside a record's texts the quotes would be escaped. */
const recordStart = '{"seq":';

/** A stretch of bytes that holds no valid record. */
export interface DamagedStretch {
  readonly offset: number;
  readonly bytes: number;
}

/** Where a record begins in its file [bytes], and the checksum of the one before it there: whoever knows both can read on from it. */
export interface LogPlace {
  readonly offset: number;
  readonly previousChecksum: string;
}

export type ScannedItem =
  | ({ readonly kind: 'record'; readonly record: LogRecord; readonly checksum: string } & LogPlace)
  | ({ readonly kind: 'damage' } & DamagedStretch);

/** Reads one log file piece by piece, in bounded memory. */
export interface LogScanner {
  /** The next bytes of the file, one character a byte. */
  push(bytesAsText: string): readonly ScannedItem[];
  /** What follows the last valid record: a torn tail, or null when the file ends cleanly. */
  end(): DamagedStretch | null;
}

const beginningOfFile: LogPlace = { offset: 0, previousChecksum: firstPreviousChecksum };

/**
 * A scanner for one log file. Every record verifies by itself, so those after a damaged stretch
 * are still read; the chain shows that nothing was lost, added or moved between two of them.
 *
 * @param from the record at which the bytes begin; the first of the file if left out
 */
export function createLogScanner(from: LogPlace = beginningOfFile): LogScanner {
  let partial = '';
  let partialOffset = from.offset;
  let damageOffset: number | null = null;
  let previous = { checksum: from.previousChecksum, seq: -1 };

  function takeLine(line: string, offset: number, items: ScannedItem[]): void {
    const decoded = decodeRecord(line);
    if (decoded !== undefined) {
      takeRecord(decoded, offset, items);
      return;
    }
    damageOffset ??= offset;
    // Where a line feed was lost with the damage, a whole record may stand behind it.
    const start = line.lastIndexOf(recordStart);
    const behind = start > 0 ? decodeRecord(line.slice(start)) : undefined;
    if (behind !== undefined) takeRecord(behind, offset + start, items);
  }

  function takeRecord(decoded: DecodedRecord, offset: number, items: ScannedItem[]): void {
    const { record, checksum, previousChecksum } = decoded;
    const { seq } = record.stamp;
    // A lost line leaves no bytes behind; the broken chain is all that shows it.
    if (seq <= previous.seq || previousChecksum !== previous.checksum) damageOffset ??= offset;
    if (seq <= previous.seq) return;
    if (damageOffset !== null) {
      items.push({ kind: 'damage', offset: damageOffset, bytes: offset - damageOffset });
      damageOffset = null;
    }
    previous = { checksum, seq };
    items.push({ kind: 'record', record, checksum, offset, previousChecksum });
  }

  return {
    push(bytesAsText) {
      const items: ScannedItem[] = [];
      let start = 0;
      let lineFeed = bytesAsText.indexOf('\n');
      while (lineFeed !== -1) {
        const line = partial + bytesAsText.slice(start, lineFeed);
        const offset = partialOffset;
        partialOffset += line.length + 1;
        partial = '';
        takeLine(line, offset, items);
        start = lineFeed + 1;
        lineFeed = bytesAsText.indexOf('\n', start);
      }
      partial += bytesAsText.slice(start);
      // What comes after it in the same line is no record, or one whose line feed before it was lost.
      if (partial.length > longestRecordBytes) {
        damageOffset ??= partialOffset;
        partialOffset += partial.length;
        partial = '';
      }
      return items;
    },
    end() {
      const offset = damageOffset ?? partialOffset;
      const endOffset = partialOffset + partial.length;
      return endOffset > offset ? { offset, bytes: endOffset - offset } : null;
    },
  };
}
