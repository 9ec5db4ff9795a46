import { describe, expect, test } from 'vitest';
import { appendToSeries, createRandom, emptySeries, reduceToWidth } from '#shared-core';

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

  test('a series without readings gives nothing to draw', () => {
    expect(reduceToWidth(emptySeries(), { fromS: 0, toS: 10, columns: 100 })).toEqual([]);
  });
});
