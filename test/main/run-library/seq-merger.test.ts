import { expect, test } from 'vitest';
import type { LogRecord } from '#shared-core';
import { createSeqMerger } from '../../../main/run-library/seq-merger.ts';
import { logHeader } from '../support/log-header.ts';

const record = (seq: number, timeS = seq): LogRecord => ({
  stamp: { seq, monoS: seq, wallMs: seq },
  body: { kind: 'readings', readings: [[timeS, 'head', 20]] },
});
const opening = (seq: number): LogRecord => ({
  stamp: { seq, monoS: seq, wallMs: seq },
  body: { kind: 'segment', header: logHeader('run') } as LogRecord['body'],
});
const seqs = (records: readonly LogRecord[]) =>
  records
    .map(({ stamp, body }) => (body.kind === 'segment' ? `[${stamp.seq}` : `${stamp.seq}`))
    .join(' ');

test('what may stand in the next file too waits for it, and comes once, in its place', () => {
  const merger = createSeqMerger();
  // The next file opens behind record 2.
  merger.startFile(2);
  expect(seqs(merger.take([record(0), record(1), record(2), record(3), record(4)]))).toBe('0 1 2');
  merger.startFile(Number.POSITIVE_INFINITY);
  // It repeats 4 and has not got 3: that one comes from where it waited.
  expect(seqs(merger.take([opening(2), record(4), record(5)]))).toBe('[2 3 4 5');
  expect([seqs(merger.end()), merger.missingRecords()]).toEqual(['', 0]);
});

test('of a record that stands in two files the first is kept', () => {
  const merger = createSeqMerger();
  merger.startFile(0);
  merger.take([record(0), record(1, 10), record(1, 11)]);
  const [kept] = merger.end();
  expect(kept).toEqual(record(1, 10));
  const after = createSeqMerger();
  after.startFile(5);
  expect(after.take([record(0), record(1, 10), record(1, 11)])).toEqual([record(0), record(1, 10)]);
});

test('what waited and came in no other file comes at the end, in order', () => {
  const merger = createSeqMerger();
  merger.startFile(0);
  expect(seqs(merger.take([record(0), record(3), record(2), record(1)]))).toBe('0');
  expect(seqs(merger.end())).toBe('1 2 3');
  expect(seqs(merger.end())).toBe('');
});

test('records that are nowhere are counted', () => {
  const merger = createSeqMerger();
  merger.startFile(Number.POSITIVE_INFINITY);
  merger.take([record(1), record(2), record(6)]);
  // 0, 3, 4 and 5.
  expect(merger.missingRecords()).toBe(4);
  merger.take([record(7)]);
  expect(merger.missingRecords()).toBe(4);
});
