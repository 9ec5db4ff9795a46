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
  // The forecast of 40 min ago: the end has moved by ln(60/20). ln 2/1.645 was its sd, ln(80/60)/1.645 of the same end is left now: what
  // was to be learned in between, with a tenth for the ensemble, is 0.394, and the miss 2.79 sd. Eight forecasts are of age, of which the
  // worst misses by 1 + 0.27 ln 8 = 1.561 sd: 8 checks that spread 3.19 times as much as they should, beside 4 that do not.
  const toLearn = Math.hypot(
    Math.sqrt((Math.log(2) / 1.645) ** 2 - (Math.log(4 / 3) / 1.645) ** 2),
    0.1,
  );
  const spread = (Math.log(3) / toLearn / (1 + 0.27 * Math.log(8))) ** 2;
  const factor = Math.sqrt((4 + 8 * spread) / (4 + 8));
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

test('what was to be learned is no misfit: an end that moves by it is told as surely as the model says', () => {
  const check = createForecastCheck();
  // Told to a factor of 2, then known to 1.1, a standard deviation of the first later.
  check.see(0, minutes(60, 2));
  const now = minutes(50, 1.1);
  const later = { ...now, value: now.value * 1.3, low: now.low * 1.3, high: now.high * 1.3 };
  for (const boiledS of [300, 600]) check.see(boiledS, later);
  expect(check.widened(later, steady)).toEqual(later);
});

test('the same miss is believed the more, the more forecasts have come of age', () => {
  const factorAfter = (minutesOfBoiling: number): number => {
    const check = createForecastCheck();
    for (let minute = 0; minute < minutesOfBoiling; minute += 1) {
      check.see(60 * minute, minutes(60 - minute, 1.3));
    }
    const now = minutes(1.6 * (60 - minutesOfBoiling), 1.3);
    check.see(60 * minutesOfBoiling, now);
    return Math.log((check.widened(now, steady)?.high ?? 0) / now.value) / Math.log(1.3);
  };
  const [early, late] = [factorAfter(6), factorAfter(30)];
  expect(early).toBeGreaterThan(1);
  expect(late).toBeGreaterThan(early);
});

test('a range that would say nothing is not told', () => {
  const check = createForecastCheck();
  for (let minute = 0; minute <= 60; minute += 1) check.see(60 * minute, minutes(20, 2.5));
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
  expect(doubtWords({ sds: 2.6, checks: 8, sinceS: 2400, movedS: 1500 }, true)).toBe(
    'This still does not behave as the model expects: after 40 min of boiling the end lies 25 min later than was expected then; the range is wider for it. Go by the head.',
  );
});
