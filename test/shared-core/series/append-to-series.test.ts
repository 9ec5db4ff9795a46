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

  test('a series keeps all it was given while its room grows, and so does one that parted from it', () => {
    const values = Array.from({ length: 1500 }, (_, index) => (index * 7919) % 1009);
    let series = emptySeries();
    for (const point of pointsOf(values)) series = appendToSeries(series, [point]);
    expect(valuesOf(series)).toEqual(values);
    const early = appendToSeries(emptySeries(), pointsOf(values.slice(0, 700)));
    appendToSeries(early, [{ timeS: 700, value: -1 }]);
    const parted = appendToSeries(early, pointsOf(values).slice(700));
    expect(valuesOf(parted)).toEqual(values);
    expect(pointAt(parted, 1499)).toEqual({ timeS: 1499, value: values[1499] });
    expect(appendToSeries(parted, [])).toBe(parted);
  });

  test('a value that is not a number, or time running back, is refused', () => {
    const series = appendToSeries(emptySeries(), [{ timeS: 5, value: 1 }]);
    expect(() => appendToSeries(series, [{ timeS: 6, value: Number.NaN }])).toThrow(
      OutOfRangeError,
    );
    expect(() => appendToSeries(series, [{ timeS: 4, value: 1 }])).toThrow(OutOfRangeError);
    expect(() => appendToSeries(series, [{ timeS: 4, value: 1 }])).toThrow(
      /^time of a point is 4 s; it must lie between 5 and/,
    );
    expect(() => appendToSeries(emptySeries(), [{ timeS: 0, value: Infinity }])).toThrow(
      /^value of a point is Infinity 1;/,
    );
    expect(appendToSeries(series, [{ timeS: 5, value: 2 }]).length).toBe(2);
    expect(appendToSeries(emptySeries(), [{ timeS: -3, value: 1 }]).length).toBe(1);
  });
});

describe('extremesBetween', () => {
  test('finds the first of equal values, and nothing in a range without points', () => {
    const series = appendToSeries(emptySeries(), pointsOf([3, 1, 4, 1, 4]));
    expect(extremesBetween(series, 0, 5)).toEqual({ least: 1, greatest: 2 });
    expect(extremesBetween(series, 2, 99)).toEqual({ least: 3, greatest: 2 });
    expect([
      extremesBetween(series, 2, 2),
      extremesBetween(series, 5, 9),
      extremesBetween(series, -1, 3),
      extremesBetween(series, Number.NaN, 3),
      extremesBetween(emptySeries(), 0, 1),
    ]).toEqual([null, null, null, null, null]);
  });

  test('finds them in a hundred thousand points, whatever blocks they lie in', () => {
    const values = Array.from({ length: 100_000 }, (_, index) =>
      Math.abs(((index * 7919) % 99_991) - 50_000),
    );
    const series = appendToSeries(emptySeries(), pointsOf(values));
    for (const [from, to] of [
      [0, 100_000],
      [16, 65_536],
      [255, 70_001],
      [4096, 8192],
      [65_536, 65_553],
    ] as const) {
      const range = values.slice(from, to);
      const found = extremesBetween(series, from, to);
      expect(found && [values[found.least], values[found.greatest]]).toEqual([
        range.reduce((least, value) => Math.min(least, value)),
        range.reduce((most, value) => Math.max(most, value)),
      ]);
    }
  });

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
