import { expect, test } from 'vitest';
import { createAttempts } from '../../../app/class-view/attempts.ts';

const limits = { perCaller: 2, together: 3, withinMs: 1000 };

test('after too many wrong codes a caller is not listened to until the minute is over, and others are', () => {
  let nowMs = 0;
  const attempts = createAttempts(() => nowMs, limits);
  attempts.wrong('a');
  attempts.wrong('a');
  expect([attempts.mayTry('a'), attempts.mayTry('b')]).toEqual([false, true]);
  nowMs = 1000;
  expect(attempts.mayTry('a')).toBe(true);
});

test('many callers together are held up as one would be', () => {
  const attempts = createAttempts(() => 0, limits);
  for (const caller of ['a', 'b', 'c']) attempts.wrong(caller);
  expect(attempts.mayTry('d')).toBe(false);
});
