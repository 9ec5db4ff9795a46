import { describe, expect, test } from 'vitest';
import { createRandom, OutOfRangeError } from '#shared-core';
import { combineContributions } from '../../../shared-core/uncertainty/combine-contributions.ts';
import type { Contribution } from '../../../shared-core/uncertainty/contribution.ts';
import { standardFromHalfWidth } from '../../../shared-core/uncertainty/standard-from-half-width.ts';

const doubt = (
  name: string,
  inputStandardUncertainty: number,
  sensitivity: number,
): Contribution => ({
  name,
  distribution: 'normal',
  inputStandardUncertainty,
  sensitivity,
  reason: 'test',
});

describe('combineContributions', () => {
  test('adds variances, sorts by size and gives shares that add up to one', () => {
    const combined = combineContributions([doubt('small', 3, 1), doubt('large', 2, -2)]);
    expect(combined).toEqual({
      combinedStandardUncertainty: 5,
      lines: [
        { ...doubt('large', 2, -2), standardUncertainty: 4, share: 0.64 },
        { ...doubt('small', 3, 1), standardUncertainty: 3, share: 0.36 },
      ],
    });
  });

  test('no doubt at all gives zero, not NaN', () => {
    expect(combineContributions([doubt('none', 0, 1)])).toEqual({
      combinedStandardUncertainty: 0,
      lines: [{ ...doubt('none', 0, 1), standardUncertainty: 0, share: 0 }],
    });
  });

  test.each([
    [-1, 1],
    [Number.NaN, 1],
    [1, Number.NaN],
    [Number.POSITIVE_INFINITY, 1],
  ])('refuses uncertainty %d with sensitivity %d', (uncertainty, sensitivity) => {
    expect(() => combineContributions([doubt('bad', uncertainty, sensitivity)])).toThrow(
      OutOfRangeError,
    );
  });
});

describe('standardFromHalfWidth', () => {
  test('is the standard deviation of draws between the limits', () => {
    const random = createRandom('half width');
    const spreadOf = (draw: () => number) =>
      Math.sqrt(Array.from({ length: 100_000 }, draw).reduce((sum, x) => sum + x * x, 0) / 100_000);
    const side = () => 2 * random.uniform() - 1;
    expect(standardFromHalfWidth('rectangular', 1)).toBeCloseTo(spreadOf(side), 2);
    expect(standardFromHalfWidth('triangular', 1)).toBeCloseTo(
      spreadOf(() => (side() + side()) / 2),
      2,
    );
  });
});
