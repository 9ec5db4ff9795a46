import { type CheckedLine, checkedLine } from './checked-line.ts';
import type { LogBody, LogStamp } from './log-record.ts';

/** The checksum that the first record of a file is chained to. */
export const firstPreviousChecksum = '00000000';

/**
 * One line of the run log: stamp, the previous record's checksum and the body, as a checked line.
 *
 * @example
 * const body = { kind: 'label', name: 'Gärung', notes: '' } as const;
 * encodeRecord(body, { seq: 1, monoS: 2.5, wallMs: 0 }, '00000000').line.slice(0, 84) // => "{\"seq\":1,\"prev\":\"00000000\",\"monoS\":2.5,\"wallMs\":0,\"kind\":\"label\",\"name\":\"G\\u00e4rung"
 */
export function encodeRecord(
  body: LogBody,
  stamp: LogStamp,
  previousChecksum: string,
): CheckedLine {
  const { seq, monoS, wallMs } = stamp;
  return checkedLine({ seq, prev: previousChecksum, monoS, wallMs, ...body });
}
