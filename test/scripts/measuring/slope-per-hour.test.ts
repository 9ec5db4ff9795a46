import { expect, test } from 'vitest';
import { slopePerHour } from '../../../scripts/measuring/slope-per-hour.ts';

test('the slope of a straight line is found, evenly scattered values have none, one value tells none', () => {
  const at = (values: readonly number[]) => values.map((value, hour) => ({ hour, value }));
  expect([at([3, 5, 7, 9]), at([1, 2, 2, 1]), at([4])].map(slopePerHour)).toEqual([
    2,
    0,
    Number.NaN,
  ]);
});
