import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { appendToSeries, emptySeries, OutOfRangeError, pointAt } from '#shared-core';
import { extremesBetween } from '../../../shared-core/series/extremes-between.ts';

const pointsOf = (values: readonly number[]) => values.map((value, timeS) => ({ timeS, value }));
const valuesOf = (series: Parameters<typeof pointAt>[0]) =>
  Array.from({ length: series.length }, (_, index) => pointAt(series, index)?.value);

describe('appendToSeries', () => {
  test('two series grown from the same start do not see each other’s points', () => {
    const start = appendToSeries(emptySeries(), pointsOf([1, 2, 3]));
    const left = appendToSeries(start, [{ timeS: 3, value: 40 }]);
    const right = appendToSeries(start, [{ timeS: 3, value: 50 }]);
    expect([valuesOf(start), valuesOf(left), valuesOf(right)]).toEqual([
      [1, 2, 3],
      [1, 2, 3, 40],
      [1, 2, 3, 50],
    ]);
  });

  test('a value that is not a number, or time running back, is refused', () => {
    const series = appendToSeries(emptySeries(), [{ timeS: 5, value: 1 }]);
    expect(() => appendToSeries(series, [{ timeS: 6, value: Number.NaN }])).toThrow(
      OutOfRangeError,
    );
    expect(() => appendToSeries(series, [{ timeS: 4, value: 1 }])).toThrow(OutOfRangeError);
  });
});

describe('extremesBetween', () => {
  test('finds the same least and greatest value as looking at every point, in a series that grew further since', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1, maxLength: 900 }),
        fc.nat(),
        fc.nat(),
        fc.nat(200),
        (values, a, b, extra) => {
          const series = appendToSeries(emptySeries(), pointsOf(values));
          const more = Array.from({ length: extra }, (_, i) => ({
            timeS: values.length + i,
            value: i % 2 === 0 ? 999 : -999,
          }));
          appendToSeries(series, more);
          const from = a % values.length;
          const to = from + 1 + (b % (values.length - from));
          const found = extremesBetween(series, from, to);
          const range = values.slice(from, to);
          expect(found && [values[found.least], values[found.greatest]]).toEqual([
            Math.min(...range),
            Math.max(...range),
          ]);
        },
      ),
      { numRuns: 60 },
    );
  });
});
