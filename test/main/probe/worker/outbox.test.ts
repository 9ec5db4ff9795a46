import { describe, expect, test } from 'vitest';
import type { HeardItem } from '../../../../main/probe/worker/messages.ts';
import { createOutbox } from '../../../../main/probe/worker/outbox.ts';

const reading = (channel: string, value: number): HeardItem => ({
  kind: 'reading',
  reading: { atS: value, channel, value, unit: '°C', quality: 'good' },
});
const loss: HeardItem = { kind: 'link', change: { atS: 0, state: 'lost', reason: 'silent' } };
const limits = { mostHead: 100, mostOther: 50, mostInBatch: 10, mostUntaken: 2 };

function drained(outbox: ReturnType<typeof createOutbox>): HeardItem[] {
  const all: HeardItem[] = [];
  for (let items = outbox.next(); items !== null; items = outbox.next()) {
    all.push(...items.filter((item) => item.kind !== 'given-up'));
    outbox.taken();
  }
  return all;
}

const valuesOf = (items: readonly HeardItem[], channel: string) =>
  items.flatMap((item) =>
    item.kind === 'reading' && item.reading.channel === channel ? [item.reading.value] : [],
  );

describe('createOutbox', () => {
  test('gives everything back in order, in batches', () => {
    const outbox = createOutbox(limits);
    const items = [reading('head', 1), loss, reading('pot', 2), reading('head', 3)];
    outbox.put(items);
    expect(drained(outbox)).toEqual(items);
  });

  test('holds back while too many batches are on their way', () => {
    const outbox = createOutbox(limits);
    outbox.put(Array.from({ length: 40 }, (_, index) => reading('head', index)));
    expect([outbox.next()?.length, outbox.next()?.length, outbox.next()]).toEqual([10, 10, null]);
    outbox.taken();
    expect(outbox.next()?.length).toBe(10);
  });

  test('gives up the oldest readings of other channels, counts them, and none of the head', () => {
    const outbox = createOutbox(limits);
    for (let index = 0; index < 90; index += 1) {
      outbox.put([reading('head', index), reading('pot', index)]);
    }
    const items = drained(outbox);
    const pot = valuesOf(items, 'pot');
    expect(valuesOf(items, 'head')).toEqual(Array.from({ length: 90 }, (_, index) => index));
    expect(pot.length).toBeLessThanOrEqual(50);
    expect(pot.length + outbox.dropped()).toBe(90);
    expect(pot.at(-1)).toBe(89);
  });

  test('stays bounded under a flood of the head alone, and keeps its newest and its course', () => {
    const outbox = createOutbox(limits);
    for (let index = 0; index < 10_000; index += 1) outbox.put([reading('head', index)]);
    expect(outbox.waiting()).toBeLessThanOrEqual(100);
    const head = valuesOf(drained(outbox), 'head');
    expect({ last: head.at(-1), total: head.length + outbox.thinned() }).toEqual({
      last: 9999,
      total: 10_000,
    });
    expect([...head].sort((a, b) => a - b)).toEqual(head);
    expect(head[0]).toBeLessThan(1000);
  });

  test('gives up nothing while each has room, and a tenth more than it must when one has not', () => {
    const outbox = createOutbox(limits);
    outbox.put(Array.from({ length: 60 }, (_, index) => reading('head', index)));
    outbox.put(Array.from({ length: 50 }, (_, index) => reading('pot', index)));
    expect([outbox.dropped(), outbox.thinned(), outbox.waiting()]).toEqual([0, 0, 110]);
    outbox.put([reading('pot', 50)]);
    // One too many, and five more: 0 to 5 are gone.
    expect([outbox.dropped(), outbox.waiting()]).toEqual([6, 105]);
    expect(valuesOf(drained(outbox), 'pot')[0]).toBe(6);
  });

  test('thins the older half of the head alone, every second of it, and leaves the others', () => {
    const outbox = createOutbox(limits);
    for (let index = 0; index <= 100; index += 1) {
      outbox.put(
        index < 40 ? [reading('head', index), reading('pot', index)] : [reading('head', index)],
      );
    }
    const items = drained(outbox);
    expect(valuesOf(items, 'pot')).toHaveLength(40);
    // Of 101 the first fifty are the older half; each second of them goes.
    const kept = Array.from({ length: 101 }, (_, index) => index).filter(
      (index) => index >= 50 || index % 2 === 0,
    );
    expect([valuesOf(items, 'head'), outbox.thinned()]).toEqual([kept, 25]);
  });

  test('says since when the oldest waits, be it a reading or a loss', () => {
    const outbox = createOutbox(limits);
    expect(outbox.waitingSinceS()).toBeNull();
    outbox.put([loss, reading('head', 7)]);
    expect(outbox.waitingSinceS()).toBe(0);
    outbox.put([reading('head', 8)]);
    outbox.next();
    expect([outbox.waitingSinceS(), outbox.isBlocked()]).toEqual([null, false]);
    outbox.put([reading('head', 9)]);
    expect(outbox.waitingSinceS()).toBe(9);
    outbox.next();
    expect(outbox.isBlocked()).toBe(true);
    for (let count = 0; count < 5; count += 1) outbox.taken();
    outbox.put([reading('head', 10), reading('head', 11)]);
    expect(outbox.next()).toHaveLength(2);
    expect(outbox.isBlocked()).toBe(false);
  });

  test('tells once, before what is left, how many were given up since the last batch and of when', () => {
    const outbox = createOutbox(limits);
    outbox.put(Array.from({ length: 51 }, (_, index) => reading('pot', 10 + index)));
    outbox.put(Array.from({ length: 101 }, (_, index) => reading('head', index)));
    const [given, ...rest] = outbox.next() ?? [];
    // Of the pot 10 to 15, of the head each second one up to 49.
    expect([given, rest.length]).toEqual([
      { kind: 'given-up', readings: 31, fromS: 1, toS: 49 },
      limits.mostInBatch,
    ]);
    expect(drained(outbox)).not.toContainEqual(given);
  });

  test('never leaves out a link change', () => {
    const outbox = createOutbox(limits);
    outbox.put([loss]);
    for (let index = 0; index < 1000; index += 1) {
      outbox.put([reading('head', index), reading('pot', index)]);
    }
    expect(drained(outbox)).toContainEqual(loss);
  });
});
