import { expect, test } from 'vitest';
import { appendToSeries } from '../../../shared-core/series/append-to-series.ts';
import { pointsGoingOn } from '../../../shared-core/series/points-going-on.ts';
import { emptySeries } from '../../../shared-core/series/series.ts';

const at = (...timesS: readonly number[]) => timesS.map((timeS) => ({ timeS, value: 20 }));

test('what runs back behind the last of the series, or behind a point that is kept, is left out', () => {
  const series = appendToSeries(emptySeries(), at(0, 1, 5));
  const kept = pointsGoingOn(series, at(4, 5, 7, 6, 7, 9));
  expect(kept.map(({ timeS }) => timeS)).toEqual([5, 7, 7, 9]);
  expect(appendToSeries(series, kept).length).toBe(7);
});

test('a series without points goes on with any, one before the start included', () => {
  expect(pointsGoingOn(emptySeries(), at(-3, -4, 0))).toEqual(at(-3, 0));
});
