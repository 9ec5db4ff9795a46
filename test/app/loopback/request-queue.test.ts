import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createRequestQueue } from '../../../app/loopback/request-queue.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function setUp(limits = { inFlight: 2, perS: 10, burst: 5 }) {
  const worked: string[] = [];
  const told: string[] = [];
  const finish: (() => void)[] = [];
  let nowMs = 0;
  const queue = createRequestQueue({
    limits,
    nowMs: () => nowMs,
    work: (text) =>
      new Promise((resolve) => {
        worked.push(text);
        finish.push(resolve);
      }),
    pause: () => told.push('pause'),
    resume: () => told.push('resume'),
  });
  const pass = async (ms: number) => {
    for (let passed = 0; passed < ms; passed += 50) {
      nowMs += 50;
      await vi.advanceTimersByTimeAsync(50);
    }
  };
  return { queue, worked, told, finish, pass };
}

test('works on no more at once than is allowed, and stops the reading until there is room', async () => {
  const { queue, worked, told, finish, pass } = setUp();
  for (const text of ['a', 'b', 'c']) queue.add(text);
  expect({ worked, last: told.at(-1) }).toEqual({ worked: ['a', 'b'], last: 'pause' });
  finish[0]?.();
  await pass(0);
  await Promise.resolve();
  await pass(50);
  expect({ worked, last: told.at(-1) }).toEqual({ worked: ['a', 'b', 'c'], last: 'resume' });
});

test('lets a burst through, then so many a second', async () => {
  const { queue, worked, finish, pass } = setUp({ inFlight: 100, perS: 10, burst: 5 });
  for (let index = 0; index < 40; index += 1) queue.add(String(index));
  for (const done of finish) done();
  expect(worked).toHaveLength(5);
  await pass(1000);
  expect(worked.length).toBeGreaterThanOrEqual(14);
  expect(worked.length).toBeLessThanOrEqual(15);
});

test('a closed queue works on nothing more', async () => {
  const { queue, worked, pass } = setUp({ inFlight: 1, perS: 1000, burst: 1 });
  queue.add('a');
  queue.add('b');
  queue.close();
  await pass(500);
  expect(worked).toEqual(['a']);
});
