import { expect, test } from 'vitest';
import { keptWhereSame } from '../../../../main/probe/link/kept-where-same.ts';

test('what was shown stays the same object until a part of it differs, be it by a copy or by a sign of nought', () => {
  const lines = ['20.5'];
  const before = { lines, rate: 0, problem: null };
  const now = (changes: object) => ({ lines, rate: 0, problem: null, ...changes });
  expect(keptWhereSame(before, now({}))).toBe(before);
  for (const changes of [{ lines: [...lines] }, { rate: -0 }, { rate: 1 }, { problem: lines }]) {
    const changed = now(changes);
    expect(keptWhereSame<object>(before, changed)).toBe(changed);
  }
  expect(keptWhereSame(null, before)).toBe(before);
});
