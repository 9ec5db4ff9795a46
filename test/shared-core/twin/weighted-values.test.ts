import { expect, test } from 'vitest';
import { weightedEstimate, weightedMoments } from '../../../shared-core/twin/weighted-values.ts';

test('mean and standard deviation count each value by its weight, whatever the weights sum to', () => {
  // Mean (1·2 + 3·6)/4 = 5, variance (1·9 + 3·1)/4 = 3.
  expect(weightedMoments([2, 6], [1, 3])).toEqual({ mean: 5, sd: Math.sqrt(3) });
  expect(weightedMoments([2, 6], [0.1, 0.3])).toEqual({
    mean: expect.closeTo(5, 12),
    sd: expect.closeTo(Math.sqrt(3), 12),
  });
  expect(weightedMoments([7, 7, 7], [1, 2, 3])).toEqual({ mean: 7, sd: 0 });
});

test('an estimate is the median with the ends of the middle 90 %', () => {
  const values = Array.from({ length: 2001 }, (_, index) => index / 2000);
  const { low, value, high } = weightedEstimate(
    values,
    values.map(() => 1),
  );
  expect([low, value, high]).toEqual([
    expect.closeTo(0.05, 2),
    expect.closeTo(0.5, 2),
    expect.closeTo(0.95, 2),
  ]);
});
