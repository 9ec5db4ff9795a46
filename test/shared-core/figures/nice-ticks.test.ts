import { expect, test } from 'vitest';
import { OutOfRangeError } from '#shared-core';
import { niceTicks, timeTicks } from '../../../shared-core/figures/nice-ticks.ts';

test('ticks have as many decimals as tell them apart', () => {
  expect(niceTicks(0, 1, 6)).toEqual({ values: [0, 0.2, 0.4, 0.6, 0.8, 1], decimals: 1 });
  expect(niceTicks(0.994, 1.056, 5)).toEqual({ values: [1, 1.02, 1.04], decimals: 2 });
  expect(niceTicks(3.25, 3.25, 6)).toEqual({ values: [3.25], decimals: 2 });
  expect(niceTicks(0, 90_000, 6)).toEqual({
    values: [0, 20_000, 40_000, 60_000, 80_000],
    decimals: 0,
  });
});

test('an axis of one tick takes the coarsest step, and one that runs back is refused', () => {
  expect(niceTicks(0, 1, 1).values).toEqual([0, 1]);
  expect(() => niceTicks(2, 1, 6)).toThrow(OutOfRangeError);
});

test('times of more than half a day go in whole days', () => {
  const dayS = 86_400;
  // 20 days in eight ticks: three days apart.
  expect(timeTicks(0, 20 * dayS, 8)).toEqual([0, 3, 6, 9, 12, 15, 18].map((day) => day * dayS));
  expect(timeTicks(0, 5400, 7)).toEqual([0, 900, 1800, 2700, 3600, 4500, 5400]);
  expect(timeTicks(100, 700, 4)).toEqual([300, 600]);
  expect(timeTicks(0, 60, 1)).toEqual([0, 60]);
});
