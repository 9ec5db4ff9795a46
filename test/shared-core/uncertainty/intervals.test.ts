import { describe, expect, test } from 'vitest';
import { combineContributions } from '../../../shared-core/uncertainty/combine-contributions.ts';
import { mapEstimate } from '../../../shared-core/uncertainty/estimate.ts';
import { median } from '../../../shared-core/uncertainty/median.ts';
import { standardFromHalfWidth } from '../../../shared-core/uncertainty/standard-from-half-width.ts';
import { standardFromNinety } from '../../../shared-core/uncertainty/standard-from-ninety.ts';
import { weightedQuantiles } from '../../../shared-core/uncertainty/weighted-quantiles.ts';

test('the middle of some values is the one in the middle, or the mean of the two, whatever their order', () => {
  expect([median([10, 9, 100]), median([4, 1, 10, 3]), median([7]), median([])]).toEqual([
    10,
    3.5,
    7,
    null,
  ]);
});

test('an estimate in another quantity is taken there with both its ends', () => {
  expect(mapEstimate({ value: 2, low: 1, high: 3 }, (value) => 10 * value)).toEqual({
    value: 20,
    low: 10,
    high: 30,
  });
});

test('a normal value lies in an interval of 90 % as wide as 3.29 of its standard uncertainties', () => {
  // JCGM 100, table G.1: 1.645 on either side.
  expect(standardFromNinety({ low: 7.355, high: 10.645 })).toBeCloseTo(1, 12);
});

describe('quantiles of weighted values', () => {
  test('are the first value at which so much of the weight is reached, in the order of the values', () => {
    const values = [30, 10, 20, 100];
    const weights = [2, 1, 4, 1];
    // Reached: 10 → 1/8, 20 → 5/8, 30 → 7/8, 100 → 1.
    expect(
      weightedQuantiles(values, weights, [0, 0.125, 0.126, 0.625, 0.7, 0.875, 0.9, 1]),
    ).toEqual([10, 10, 20, 20, 30, 30, 100, 100]);
  });

  test('leave out what is no number, with its weight', () => {
    expect(weightedQuantiles([Number.NaN, 5, 6], [98, 1, 1], [0.5, 0.9])).toEqual([5, 6]);
    expect(weightedQuantiles(new Float64Array([3, 1]), new Float64Array([1, 3]), [0.7])).toEqual([
      1,
    ]);
  });

  test('are the greatest value where rounding leaves the whole just out of reach, and no number of nothing', () => {
    const tenths = Array.from({ length: 10 }, (_, index) => index);
    expect(
      weightedQuantiles(
        tenths,
        tenths.map(() => 0.1),
        [1, 1.1],
      ),
    ).toEqual([9, 9]);
    expect(weightedQuantiles([], [], [0.5])).toEqual([Number.NaN]);
    expect(weightedQuantiles([Number.NaN], [1], [0.5])).toEqual([Number.NaN]);
  });
});

test('a half width below nothing is refused by name', () => {
  expect(() => standardFromHalfWidth('normal', -1)).toThrow(
    expect.objectContaining({
      detail: { quantity: 'half width', value: -1, low: 0, high: Number.MAX_VALUE, unit: 'units' },
    }),
  );
});

test('a doubt is refused by its name, as is what it does', () => {
  const combine = (inputStandardUncertainty: number, sensitivity: number) => () =>
    combineContributions([
      { name: 'lag', distribution: 'normal', inputStandardUncertainty, sensitivity, reason: '' },
    ]);
  expect(combine(-1, 1)).toThrow(
    expect.objectContaining({
      detail: {
        quantity: 'uncertainty of lag',
        value: -1,
        low: 0,
        high: Number.MAX_VALUE,
        unit: '',
      },
    }),
  );
  expect(combine(1, Number.NaN)).toThrow(
    expect.objectContaining({
      detail: expect.objectContaining({ quantity: 'sensitivity of lag', unit: '' }),
    }),
  );
});
