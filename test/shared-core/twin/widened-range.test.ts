import { expect, test } from 'vitest';
import { widenedRange } from '../../../shared-core/twin/widened-range.ts';

const left = { value: 600, low: 200, high: 1200 };

test('either end goes off by a power of what it is of the value, which stays', () => {
  expect(widenedRange(left, 2)).toEqual({
    value: 600,
    low: expect.closeTo(600 / 3 ** 2, 9),
    high: expect.closeTo(600 * 2 ** 2, 9),
  });
  expect(widenedRange(left, 0.5)).toEqual({
    value: 600,
    low: expect.closeTo(600 / Math.sqrt(3), 9),
    high: expect.closeTo(600 * Math.sqrt(2), 9),
  });
});

test('a range that is left as it is, is; one that ends at once ends a second later at the earliest', () => {
  expect(widenedRange(left, 1).high).toBeCloseTo(1200, 9);
  expect(widenedRange({ value: 100, low: 0, high: 300 }, 1.5).low).toBeCloseTo(
    100 * (1 / 100) ** 1.5,
    9,
  );
});

test('an end that lies within a second of the value does not cross it', () => {
  const { low, value, high } = widenedRange({ value: 0.5, low: 0.2, high: 0.8 }, 2);
  expect([low <= value, value <= high]).toEqual([true, true]);
});
