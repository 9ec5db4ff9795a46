import { expect, test } from 'vitest';
import { type DropTaps, dropsMark, tapped } from '../../../renderer/watch/drops-counter.ts';

const tapsAt = (...times: number[]) =>
  times.reduce<DropTaps | null>((taps, ms) => tapped(taps, ms), null)!;

test('four taps a second apart are three drops in three seconds', () => {
  expect(dropsMark(tapsAt(0, 1000, 2000, 3000))).toEqual({
    type: 'drops-counted',
    count: 3,
    overS: 3,
  });
});

test('fewer than three drops say nothing', () => {
  expect(dropsMark(tapsAt(0, 1000, 2000))).toBeNull();
});

test('a long pause begins a new count', () => {
  expect(tapsAt(0, 1000, 2000, 9000)).toEqual({ firstMs: 9000, lastMs: 9000, count: 0 });
});
