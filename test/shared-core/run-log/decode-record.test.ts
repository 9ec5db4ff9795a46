import process from 'node:process';
import { expect, test } from 'vitest';
import { createRandom, encodeRecord, firstPreviousChecksum } from '#shared-core';
import { decodeRecord } from '../../../shared-core/run-log/decode-record.ts';

/** The full figure, an hour at 1 Hz, is measured with FLIPPED_RECORDS=3600. */
const records = Number(process.env.FLIPPED_RECORDS ?? 60);

/** A log of that many readings, one a second, as the recorder writes it. */
function lines(): readonly string[] {
  const random = createRandom('flips');
  let previous = firstPreviousChecksum;
  return Array.from({ length: records }, (_, seq) => {
    const value = Math.round((78 + random.normal() * 0.1) * 16) / 16;
    const stamp = { seq, monoS: 1000 + seq + 0.123, wallMs: 1_741_947_300_123 + seq * 1000 };
    const body = { kind: 'readings', readings: [[seq + 0.125, 'head', value]] } as const;
    const { line, checksum } = encodeRecord(
      { ...body, readings: [[...body.readings[0]]] },
      stamp,
      previous,
    );
    previous = checksum;
    return line;
  });
}

const isWhole = (line: string) => decodeRecord(line) !== undefined;

test(`no record with a single flipped bit is taken for whole (${records} records, every bit)`, {
  timeout: 600_000,
}, () => {
  const log = lines();
  expect(log.every((line) => isWhole(line.slice(0, -1)))).toBe(true);
  let flips = 0;
  for (const [index, line] of log.entries()) {
    for (let position = 0; position < line.length; position += 1) {
      for (let bit = 0; bit < 8; bit += 1) {
        const code = line.charCodeAt(position) ^ (1 << bit);
        const flipped =
          line.slice(0, position) + String.fromCharCode(code) + line.slice(position + 1);
        // A line feed made by the flip cuts the line; one that it unmade glues the next one on.
        const followed = flipped.endsWith('\n') ? flipped : flipped + (log[index + 1] ?? '');
        const pieces = followed.split('\n').slice(0, -1);
        flips += 1;
        if (pieces.some(isWhole)) expect.fail(`bit ${bit} of byte ${position} in line ${index}`);
      }
    }
  }
  expect(flips).toBe(log.join('').length * 8);
});
