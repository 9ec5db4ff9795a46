import { expect, test } from 'vitest';
import { createBacklog } from '#main';
import type { LogBody } from '#shared-core';

const readings = (count: number, atS = 1): LogBody => ({
  kind: 'readings',
  readings: Array.from({ length: count }, () => [atS, 'head', 20]),
});
const note: LogBody = { kind: 'mark', timeS: 1, markId: 1, mark: { type: 'note', text: 'seen' } };
const record = (seq: number, body: LogBody) => ({
  stamp: { seq, monoS: seq, wallMs: seq },
  body,
  timeS: seq,
  fromS: seq,
});

test('a backlog has room for as many readings as it may hold, and for any mark', () => {
  const backlog = createBacklog(5);
  backlog.add(record(1, readings(3)));
  backlog.add(record(2, note));
  expect([2, 3].map((count) => backlog.hasRoomFor(readings(count)))).toEqual([true, false]);
  backlog.add(record(3, readings(2)));
  expect([backlog.hasRoomFor(readings(1)), backlog.hasRoomFor(note)]).toEqual([false, true]);
});

test('what is settled is forgotten up to its number, oldest first, and gives its room back', () => {
  const backlog = createBacklog(5);
  const numbers = () => backlog.records.map(({ stamp }) => stamp.seq);
  for (const seq of [4, 5, 6]) backlog.add(record(seq, seq === 5 ? note : readings(2)));
  backlog.settle(3);
  expect([numbers(), backlog.hasRoomFor(readings(2))]).toEqual([[4, 5, 6], false]);
  backlog.settle(4);
  expect([numbers(), backlog.hasRoomFor(readings(3)), backlog.hasRoomFor(readings(4))]).toEqual([
    [5, 6],
    true,
    false,
  ]);
  backlog.settle(9);
  expect([numbers(), backlog.hasRoomFor(readings(5)), backlog.hasRoomFor(readings(6))]).toEqual([
    [],
    true,
    false,
  ]);
});

test('what found no room is counted from its first moment to its last, and told once', () => {
  const backlog = createBacklog(0);
  expect(backlog.takeDropped()).toBeNull();
  backlog.drop(readings(2), 10);
  backlog.drop(readings(3), 12);
  expect([backlog.takeDropped(), backlog.takeDropped()]).toEqual([
    { readings: 5, fromS: 10, toS: 12 },
    null,
  ]);
  backlog.drop(readings(1), 20);
  expect(backlog.takeDropped()).toEqual({ readings: 1, fromS: 20, toS: 20 });
});

test('left to itself it holds a day of four channels, one reading a second', () => {
  const backlog = createBacklog();
  const hour = readings(4 * 3600);
  for (let seq = 1; seq <= 24; seq += 1) {
    expect(backlog.hasRoomFor(hour)).toBe(true);
    backlog.add(record(seq, hour));
  }
  expect([backlog.hasRoomFor(readings(1)), backlog.hasRoomFor(note)]).toEqual([false, true]);
});

test('the oldest thing in it is told, also where it came late, and no more once it is settled', () => {
  const backlog = createBacklog(5);
  expect(backlog.fromS()).toBe(Infinity);
  backlog.add({ ...record(4, readings(1)), fromS: 3.5 });
  backlog.add({ ...record(5, readings(1)), fromS: 2.5 });
  backlog.add(record(6, note));
  expect(backlog.fromS()).toBe(2.5);
  backlog.settle(5);
  expect(backlog.fromS()).toBe(6);
  backlog.settle(6);
  expect(backlog.fromS()).toBe(Infinity);
});
