import { expect, test } from 'vitest';
import { traceLooks } from '../../../renderer/compare/trace-look.ts';

test('runs are told apart without colour: by letter, by dashes and by sign', () => {
  for (const part of ['letter', 'dashes', 'sign'] as const) {
    expect(new Set(traceLooks.map((look) => look[part])).size).toBe(traceLooks.length);
  }
});
