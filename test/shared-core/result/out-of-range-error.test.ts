import { expect, test } from 'vitest';
import { OutOfRangeError, requireInRange } from '../../../shared-core/result/out-of-range-error.ts';

const refusal = (value: number): unknown => {
  try {
    requireInRange('pressure', value, 60, 110, 'kPa');
    return null;
  } catch (error) {
    return error;
  }
};

test('both ends of a range belong to it', () => {
  expect([60, 87.5, 110].map(refusal)).toEqual([null, null, null]);
});

test('what lies outside, and what is no number, is refused with what was asked for and what can be', () => {
  for (const value of [59.999, 110.001, Number.NaN, Number.NEGATIVE_INFINITY]) {
    const error = refusal(value);
    expect(error).toBeInstanceOf(OutOfRangeError);
    expect(error).toMatchObject({
      name: 'OutOfRangeError',
      kind: 'out-of-range',
      detail: { quantity: 'pressure', value, low: 60, high: 110, unit: 'kPa' },
      message: `pressure is ${value} kPa; it must lie between 60 and 110 kPa.`,
    });
  }
});

test('what has no unit is refused without a gap where it would stand', () => {
  expect(() => requireInRange('gravity', 0.9, 0.97, 1.2, '')).toThrow(
    /^gravity is 0\.9; it must lie between 0\.97 and 1\.2\.$/,
  );
});
