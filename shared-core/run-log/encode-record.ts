import { crc32c } from './crc-32c.ts';
import type { LogBody, LogStamp } from './log-record.ts';

/** The checksum that the first record of a file is chained to. */
export const firstPreviousChecksum = '00000000';

/** How a line ends: `,"crc":"` + eight hexadecimal digits + `"}`, then a line feed. */
export const checksumLabel = ',"crc":"';
export const checksumLength = 8;
export const lineEnd = '"}';

export interface EncodedRecord {
  /** ASCII, one character a byte, with its line feed. */
  readonly line: string;
  readonly checksum: string;
}

/**
 * One line of the run log: stamp, the previous record's checksum, the body, and a CRC-32C over
 * every byte before it. Characters outside ASCII are escaped, so any byte above 0x7f is damage.
 *
 * @example
 * const body = { kind: 'label', name: 'Gärung', notes: '' } as const;
 * encodeRecord(body, { seq: 1, monoS: 2.5, wallMs: 0 }, '00000000').line.slice(0, 84) // => "{\"seq\":1,\"prev\":\"00000000\",\"monoS\":2.5,\"wallMs\":0,\"kind\":\"label\",\"name\":\"G\\u00e4rung"
 */
export function encodeRecord(
  body: LogBody,
  stamp: LogStamp,
  previousChecksum: string,
): EncodedRecord {
  const { seq, monoS, wallMs } = stamp;
  const whole = JSON.stringify({ seq, prev: previousChecksum, monoS, wallMs, ...body });
  const covered = escapeBeyondAscii(whole.slice(0, -1));
  const checksum = checksumText(crc32c(covered));
  return { line: `${covered}${checksumLabel}${checksum}${lineEnd}\n`, checksum };
}

/** A checksum as it stands in the log: eight lower-case hexadecimal digits. */
export function checksumText(checksum: number): string {
  return checksum.toString(16).padStart(checksumLength, '0');
}

function escapeBeyondAscii(text: string): string {
  return text.replace(/[\x7f-\uffff]/g, (character) => {
    return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
  });
}
