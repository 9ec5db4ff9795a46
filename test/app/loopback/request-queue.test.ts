import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createRequestQueue } from '../../../app/loopback/request-queue.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function setUp(
  given: { inFlight?: number; perS?: number; burst?: number; waitingCharacters?: number } = {},
) {
  const limits = { inFlight: 2, perS: 10, burst: 5, waitingCharacters: 0, ...given };
  const worked: string[] = [];
  const told: string[] = [];
  const finish: (() => void)[] = [];
  let nowMs = 0;
  const queue = createRequestQueue({
    limits,
    nowMs: () => nowMs,
    pause: () => told.push('pause'),
    resume: () => told.push('resume'),
  });
  const add = (text: string, lane: 'acts' | 'reads' = 'reads') =>
    queue.add({
      lane,
      characters: text.length,
      work: () =>
        new Promise((resolve) => {
          worked.push(text);
          finish.push(resolve);
        }),
    });
  const pass = async (ms: number) => {
    for (let passed = 0; passed < ms; passed += 50) {
      nowMs += 50;
      await vi.advanceTimersByTimeAsync(50);
    }
  };
  return { queue, add, worked, told, finish, pass };
}

test('works on no more at once than is allowed, and stops the reading until there is room', async () => {
  const { add, worked, told, finish, pass } = setUp();
  for (const text of ['a', 'b', 'c']) add(text);
  expect({ worked, last: told.at(-1) }).toEqual({ worked: ['a', 'b'], last: 'pause' });
  finish[0]?.();
  await pass(0);
  await Promise.resolve();
  await pass(50);
  expect({ worked, last: told.at(-1) }).toEqual({ worked: ['a', 'b', 'c'], last: 'resume' });
});

test('lets a burst through, then so many a second', async () => {
  const { add, worked, finish, pass } = setUp({ inFlight: 100, perS: 10, burst: 5 });
  for (let index = 0; index < 40; index += 1) add(String(index));
  for (const done of finish) done();
  expect(worked).toHaveLength(5);
  await pass(1000);
  expect(worked.length).toBeGreaterThanOrEqual(14);
  expect(worked.length).toBeLessThanOrEqual(15);
});

test('a closed queue works on nothing more', async () => {
  const { queue, add, worked, pass } = setUp({ inFlight: 1, perS: 1000, burst: 1 });
  add('a');
  add('b');
  queue.close();
  await pass(500);
  expect(worked).toEqual(['a']);
});

test('lets an act pass reads that wait for a disk, and no reads pass the acts before them', async () => {
  const { add, worked, finish, pass } = setUp({ inFlight: 1, perS: 100, burst: 100 });
  for (const text of ['list', 'read']) add(text);
  for (const text of ['mark 1', 'mark 2']) add(text, 'acts');
  expect(worked).toEqual(['list', 'mark 1']);
  finish[1]?.();
  await pass(50);
  expect(worked).toEqual(['list', 'mark 1', 'mark 2']);
});

test('reads the socket on while what waits is little, and stops once it is more than may wait', () => {
  const { add, told } = setUp({ inFlight: 0, waitingCharacters: 10 });
  add('12345');
  add('67890');
  expect(told).not.toContain('pause');
  add('1');
  expect(told.at(-1)).toBe('pause');
});
