import { expect, test } from 'vitest';
import {
  createForecastCheck,
  type ForecastCheck,
} from '../../../../shared-core/monitor/conclude/forecast-check.ts';
import type { TwinOutlook } from '../../../../shared-core/twin/index.ts';
import type { Estimate } from '../../../../shared-core/uncertainty/index.ts';
import { outlookOf, secondAt } from './forecast-seconds.ts';

const minutes = (value: number, factor: number): Estimate => ({
  value: 60 * value,
  low: (60 * value) / factor,
  high: 60 * value * factor,
});
/** What the twin is believed to be wrong by where nothing surprises. */
const own = 1.25;

/** A check after so many minutes, of an end that comes as told and a head that is so far off each time [K]. */
function watched(
  minutesSeen: number,
  { headOffK = 0, biasK = 0, leftMin = (minute: number) => 200 - minute } = {},
): ForecastCheck {
  const check = createForecastCheck();
  for (let minute = 0; minute <= minutesSeen; minute += 1) {
    const second = secondAt(60 * minute);
    const heightK = second.head.vapourC - second.scale.azeotropeC;
    const changes: Partial<TwinOutlook> = {
      limitInS: minutes(leftMin(minute), 2),
      bias: { mean: biasK, sd: 0.1 },
      headSoonK: { mean: heightK - headOffK, sd: 0.2 },
    };
    check.see(second, 60 * minute, outlookOf(changes));
  }
  return check;
}

/** By what power the upper end of a range has been made wider. */
const powerOf = (check: ForecastCheck): number =>
  Math.log((check.widened(minutes(20, 2))?.high ?? 0) / 1200) / Math.log(2);

test('before anything is seen a range is wider than the twin’s own, since no still is its model', () => {
  const wide = createForecastCheck().widened(minutes(20, 2));
  expect(wide?.value).toBe(1200);
  expect(wide?.low).toBeCloseTo(1200 / 2 ** own, 6);
  expect(wide?.high).toBeCloseTo(1200 * 2 ** own, 6);
});

test('a head that does exactly what was expected makes it narrower by and by, by hand calculation', () => {
  // n checks that held beside 4 that are trusted: √(4/(4 + n)), to the power of two thirds.
  expect(powerOf(watched(12))).toBeCloseTo(own * Math.sqrt(4 / 16) ** (2 / 3), 6);
  expect(watched(12).doubt()).toBeNull();
});

test('a head that is far off what was expected a minute before makes it wider, and is the reason', () => {
  const { head } = secondAt(60);
  const sds = 1 / Math.hypot(0.2, head.vapourSdK, 0.1);
  const check = watched(8, { headOffK: 1 });
  const usual = Math.sqrt((4 + 8 * sds ** 2) / (4 + 8));
  expect(powerOf(check)).toBeCloseTo(Math.min(3, own * usual ** (2 / 3)), 6);
  expect(check.doubt()).toEqual({ kind: 'head', usualK: expect.closeTo(1, 9) });
});

test('an end that moves away from forecast to forecast makes it wider, both ways, and is the reason', () => {
  // The head is off by what it may be.
  const headOffK = Math.hypot(0.2, secondAt(60).head.vapourSdK, 0.1);
  const check = watched(60, { headOffK, leftMin: () => 10 });
  const wide = check.widened(minutes(20, 2));
  expect(powerOf(check)).toBeGreaterThan(powerOf(watched(60, { headOffK })));
  expect(Math.log(1200 / (wide?.low ?? 0))).toBeCloseTo(Math.log((wide?.high ?? 0) / 1200), 9);
  expect(check.doubt()).toMatchObject({ kind: 'end', sinceS: 3600, movedS: 3600 });
});

test('an offset beyond what was stated makes it wider, and is the reason', () => {
  const { statedSdK } = secondAt(0);
  const biasK = -3 * Math.hypot(statedSdK, 0.5);
  const check = watched(0, { biasK });
  expect(powerOf(check)).toBeCloseTo(own * Math.sqrt(1 + 3 ** 2) ** (2 / 3), 6);
  expect(check.doubt()).toEqual({ kind: 'offset', offsetK: biasK });
});

test('a reason is given once the range is half as wide again for it, and not before', () => {
  const sdK = Math.hypot(secondAt(0).statedSdK, 0.5);
  // √(1 + n²) to the power of two thirds is 1.44 at 1.41 standard deviations, and 1.55 at 1.65.
  expect(watched(0, { biasK: 1.41 * sdK }).doubt()).toBeNull();
  expect(watched(0, { biasK: 1.65 * sdK }).doubt()).toEqual({
    kind: 'offset',
    offsetK: 1.65 * sdK,
  });
});

test('no range is made wider than three times its own, and none is told that would say nothing', () => {
  const check = watched(20, { headOffK: 30 });
  expect(powerOf(check)).toBe(3);
  expect(check.widened(minutes(20, 5))).toBeNull();
  expect(check.doubt()).toMatchObject({ kind: 'head' });
});

test('a range that says nothing is told all the same where there is no reason to doubt it', () => {
  const check = createForecastCheck();
  const wide = check.widened(minutes(20, 12));
  expect((wide?.high ?? 0) / (wide?.low ?? 1)).toBeGreaterThan(100);
  expect(check.doubt()).toBeNull();
});

test('a limit that the twin holds for passed has no time left to tell', () => {
  const check = createForecastCheck();
  expect(check.widened({ value: 0, low: 0, high: 300 })).toBeNull();
  expect(check.widened({ value: 1, low: 0, high: 300 })).not.toBeNull();
});
