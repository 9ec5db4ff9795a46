import { expect, test } from 'vitest';
import type { LogBody } from '#shared-core';
import { createRecordMemory } from '../../../main/recorder/record-memory.ts';
import { logHeader } from '../support/log-header.ts';

const stamp = (seq: number) => ({ seq, monoS: 1000 + seq / 8, wallMs: 1_741_947_300_000 + seq });
const reading = (timeS: number): LogBody => ({
  kind: 'readings',
  readings: [[timeS, 'head', 22 + (timeS % 640) / 16]],
});
const note: LogBody = {
  kind: 'mark',
  timeS: 3,
  markId: 1,
  mark: { type: 'note', text: 'Gärung „läuft“' },
};

test('every record is remembered as it was, over many pieces, also one that is added while they are gone through', () => {
  const memory = createRecordMemory();
  const bodies = [
    { kind: 'header', header: logHeader() } as const,
    note,
    ...Array.from({ length: 3000 }, (_, at) => reading(at)),
  ];
  const all = bodies.map((body, seq) => ({ stamp: stamp(seq), body }));
  for (const record of all) memory.add(record);
  const late = { stamp: stamp(all.length), body: note };
  let pieces = 0;
  const found = [];
  for (const piece of memory.pieces()) {
    if (pieces === 0) memory.add(late);
    pieces += 1;
    found.push(...piece);
  }
  expect(found).toEqual([...all, late]);
  expect(pieces).toBeGreaterThan(3);
});

test('the opening of a later file stands for no record, and what a newer version wrote can’t be written again', () => {
  const memory = createRecordMemory();
  const header = logHeader();
  memory.add({
    stamp: stamp(0),
    body: { kind: 'segment', segment: 2, because: 'A cable.', header },
  });
  memory.add({ stamp: stamp(1), body: { kind: 'unknown' } });
  memory.add({ stamp: stamp(2), body: note });
  expect([...memory.pieces()].flat()).toEqual([{ stamp: stamp(2), body: note }]);
});
