import { expect, test } from 'vitest';
import { appendToSeries } from '../../../shared-core/series/append-to-series.ts';
import { indexAtTime } from '../../../shared-core/series/index-at-time.ts';
import { emptySeries } from '../../../shared-core/series/series.ts';

test('as many points lie before a time as are counted one by one, of several at one time none', () => {
  const timesS = [0, 0, 1, 3, 3, 3, 8];
  const series = appendToSeries(
    emptySeries(),
    timesS.map((timeS) => ({ timeS, value: 20 })),
  );
  for (const timeS of [Number.NEGATIVE_INFINITY, -1, 0, 0.5, 1, 2, 3, 5, 8, 9, Infinity]) {
    expect([timeS, indexAtTime(series, timeS)]).toEqual([
      timeS,
      timesS.filter((before) => before < timeS).length,
    ]);
  }
});
