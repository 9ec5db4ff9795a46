import { encodeRecord, firstPreviousChecksum, type LogBody } from '#shared-core';

/** A log file of these records, each made at the second of its number. */
export function logText(bodies: readonly LogBody[]): string {
  let previous = firstPreviousChecksum;
  return bodies
    .map((body, seq) => {
      const { line, checksum } = encodeRecord(body, { seq, monoS: seq, wallMs: seq }, previous);
      previous = checksum;
      return line;
    })
    .join('');
}
