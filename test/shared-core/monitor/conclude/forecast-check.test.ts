import { expect, test } from 'vitest';
import { createForecastCheck } from '../../../../shared-core/monitor/conclude/forecast-check.ts';
import { doubtWords } from '../../../../shared-core/monitor/words/forecast-words.ts';

const minutes = (value: number, factor: number) => ({
  value: 60 * value,
  low: (60 * value) / factor,
  high: 60 * value * factor,
});
/** No heat was away. */
const steady = 0;

test('forecasts that come true are left as they are', () => {
  const check = createForecastCheck();
  for (let minute = 0; minute <= 30; minute += 1) {
    check.see(60 * minute, minutes(60 - minute, 2));
  }
  const now = minutes(30, 2);
  expect(check.widened(now, steady)).toEqual(now);
  expect(check.misfit()).toBeNull();
});

test('an end that moves away minute for minute is told later and less surely, by hand calculation', () => {
  const check = createForecastCheck();
  for (let minute = 0; minute <= 40; minute += 1) check.see(60 * minute, minutes(20, 2));
  // The forecast of 40 min ago: ln(60/20) is 1.585 of its ln 2, which are 1.645 sd: 2.607 sd, 1.2 of them are usual.
  const factor = (Math.log(3) / Math.log(2)) * (1.645 / 1.2);
  const wide = check.widened(minutes(20, 2), steady);
  expect(wide?.value).toBe(1200);
  expect(wide?.low).toBe(600);
  expect(wide?.high).toBeCloseTo(1200 * 2 ** factor, 6);
  expect(check.misfit()).toMatchObject({ sinceS: 2400, movedS: 2400 });
});

test('an end that comes nearer than was told widens the range downward only', () => {
  const check = createForecastCheck();
  for (let minute = 0; minute <= 20; minute += 1) {
    check.see(60 * minute, minutes(Math.max(5, 90 - 5 * minute), 1.3));
  }
  const wide = check.widened(minutes(10, 1.3), steady);
  expect(wide?.high).toBeCloseTo(780, 6);
  expect(wide?.low).toBeLessThan(600 / 1.3);
  expect(check.misfit()?.movedS).toBeLessThan(0);
});

test('a range that would say nothing is not told', () => {
  const check = createForecastCheck();
  for (let minute = 0; minute <= 60; minute += 1) check.see(60 * minute, minutes(20, 4));
  expect(check.widened(minutes(20, 6), 0.5)).toBeNull();
});

test('heat that a hand takes away widens the range by the share of time it was away', () => {
  const check = createForecastCheck();
  check.see(0, minutes(20, 2));
  const wide = check.widened(minutes(20, 2), 0.35);
  expect(wide?.low).toBeCloseTo(1200 / 2 ** 2, 6);
  expect(wide?.high).toBeCloseTo(1200 * 2 ** 2, 6);
});

test('the reason says in minutes how far the end has moved, and what to go by', () => {
  expect(doubtWords({ sds: 2.6, sinceS: 2400, movedS: 1500 }, true)).toBe(
    'This still does not behave as the model expects: after 40 min of boiling the end lies 25 min later than was expected then; the range is wider for it. Go by the head.',
  );
});
