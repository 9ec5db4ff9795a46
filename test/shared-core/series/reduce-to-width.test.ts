import { describe, expect, test } from 'vitest';
import {
  appendToSeries,
  createRandom,
  emptySeries,
  OutOfRangeError,
  reduceToWidth,
} from '#shared-core';

const series = (values: readonly number[]) =>
  appendToSeries(
    emptySeries(),
    values.map((value, timeS) => ({ timeS, value })),
  );

describe('reduceToWidth', () => {
  test('keeps a spike of one reading in a hundred thousand', () => {
    const values = Array.from({ length: 100_000 }, () => 78);
    values[54_321] = 91.5;
    const drawn = reduceToWidth(series(values), { fromS: 0, toS: 100_000, columns: 800 });
    expect(drawn.length).toBeLessThanOrEqual(800 * 4 + 2);
    expect(drawn.filter(({ value }) => value !== 78)).toEqual([{ timeS: 54_321, value: 91.5 }]);
  });

  test('breaks the line where the probe was lost, and keeps the readings on both sides', () => {
    expect(
      reduceToWidth(series([1, 2, 3, 4, 5, 6]), { fromS: 0, toS: 6, columns: 1, breaksS: [2.5] }),
    ).toEqual([
      { timeS: 0, value: 1 },
      { timeS: 1, value: 2 },
      { timeS: 2, value: 3 },
      { timeS: 2.5, value: null },
      { timeS: 3, value: 4 },
      { timeS: 4, value: 5 },
      { timeS: 5, value: 6 },
    ]);
  });

  test('draws one point beyond each side, so that the line reaches the edges', () => {
    expect(
      reduceToWidth(series([1, 2, 3, 4, 5]), { fromS: 1.5, toS: 2.5, columns: 10 }).map(
        ({ timeS }) => timeS,
      ),
    ).toEqual([1, 2, 3]);
  });

  test('columns stay where they are when the range moves on by whole columns', () => {
    const random = createRandom(7);
    const noisy = series(Array.from({ length: 5000 }, () => random.normal()));
    const inside = (fromS: number) =>
      reduceToWidth(noisy, { fromS, toS: fromS + 4000, columns: 40 }).filter(
        ({ timeS }) => timeS >= 1000 && timeS < 4000,
      );
    expect(inside(100)).toEqual(inside(0));
  });

  test('a reduced range spans the same values as the readings themselves', () => {
    const random = createRandom(3);
    const values = Array.from({ length: 20_000 }, () => random.normal());
    const drawn = reduceToWidth(series(values), { fromS: 0, toS: 20_000, columns: 300 });
    const heights = drawn.flatMap(({ value }) => (value === null ? [] : [value]));
    expect([Math.min(...heights), Math.max(...heights)]).toEqual([
      Math.min(...values),
      Math.max(...values),
    ]);
  });

  test('draws no reading twice, and all in the order of time, whichever of the extremes comes first', () => {
    const inOneColumn = (values: readonly number[]) =>
      reduceToWidth(series(values), { fromS: 0, toS: values.length, columns: 1 });
    expect(inOneColumn([3, 9, 5, 1, 4, 6])).toEqual([
      { timeS: 0, value: 3 },
      { timeS: 1, value: 9 },
      { timeS: 3, value: 1 },
      { timeS: 5, value: 6 },
    ]);
    expect(inOneColumn([1, 2, 3, 4, 5, 6]).map(({ timeS }) => timeS)).toEqual([0, 5]);
    expect(inOneColumn([6, 5, 4, 3, 2, 1]).map(({ timeS }) => timeS)).toEqual([0, 5]);
    expect(inOneColumn([5, 5, 5, 5, 5, 5]).map(({ timeS }) => timeS)).toEqual([0, 5]);
    expect(inOneColumn([1, 2, 3, 2]).map(({ timeS }) => timeS)).toEqual([0, 1, 2, 3]);
  });

  test('breaks once where several interruptions lie between two readings, and not before the first', () => {
    expect(
      reduceToWidth(series([1, 2, 3]), {
        fromS: 0,
        toS: 3,
        columns: 1,
        breaksS: [-1, 0.25, 0.5, 2],
      }),
    ).toEqual([
      { timeS: 0, value: 1 },
      { timeS: 0.25, value: null },
      { timeS: 1, value: 2 },
      { timeS: 2, value: null },
      { timeS: 2, value: 3 },
    ]);
  });

  test('a range that has no length, or runs back, is refused, and so is none or too fine a plot', () => {
    const drawn = (fromS: number, toS: number, columns: number) => () =>
      reduceToWidth(series([1, 2]), { fromS, toS, columns });
    expect(drawn(5, 5, 10)).toThrow(/^length of the drawn range is 0 s;/);
    expect(drawn(6, 5, 10)).toThrow(/^length of the drawn range is -1 s;/);
    expect(drawn(0, 5, 0)).toThrow(/^columns is 0 pixels;/);
    expect(drawn(0, 5, 20_001)).toThrow(OutOfRangeError);
    expect(drawn(0, 5, 20_000)()).toHaveLength(2);
  });

  test('a series without readings gives nothing to draw', () => {
    expect(reduceToWidth(emptySeries(), { fromS: 0, toS: 10, columns: 100 })).toEqual([]);
  });
});
