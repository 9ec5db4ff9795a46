import { expect, test } from 'vitest';
import { appendToSeries } from '../../../shared-core/series/append-to-series.ts';
import { pointAt } from '../../../shared-core/series/point-at.ts';
import { emptySeries } from '../../../shared-core/series/series.ts';

test('a point is found from either end, and none outside, though other series of the same start go on there', () => {
  const points = [20, 21, 22].map((value, index) => ({ timeS: 2 * index, value }));
  const series = appendToSeries(emptySeries(), points);
  appendToSeries(series, [{ timeS: 6, value: 99 }]);
  expect([0, 1, 2, -1, -2, -3].map((index) => pointAt(series, index)?.value)).toEqual([
    20, 21, 22, 22, 21, 20,
  ]);
  expect([3, -4, Number.NaN].map((index) => pointAt(series, index))).toEqual([null, null, null]);
  expect(pointAt(emptySeries(), -1)).toBeNull();
  expect(pointAt(series, 1)).toEqual({ timeS: 2, value: 21 });
});
