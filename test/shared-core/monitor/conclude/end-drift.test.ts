import { expect, test } from 'vitest';
import {
  createEndDriftWatch,
  squaredMisses,
} from '../../../../shared-core/monitor/conclude/end-drift.ts';

const minutes = (value: number, factor: number) => ({
  value: 60 * value,
  low: (60 * value) / factor,
  high: 60 * value * factor,
});

test('an end that comes as it was told has not moved', () => {
  const watch = createEndDriftWatch();
  for (let minute = 0; minute <= 30; minute += 1) {
    watch.see(60 * minute, minutes(60 - minute, 2));
  }
  expect(watch.drift()).toMatchObject({ sds: 0, movedS: 0 });
  expect(squaredMisses(watch.drift())).toBe(0);
});

test('an end that moves away minute for minute is missed by so many standard deviations, by hand calculation', () => {
  const watch = createEndDriftWatch();
  for (let minute = 0; minute <= 40; minute += 1) watch.see(60 * minute, minutes(20, 2));
  // The forecast of 40 min ago: the end has moved by ln(60/20). ln 2/1.645 was its sd, ln(80/60)/1.645 of the same end is left now: what
  // was to be learned in between, with a tenth for the ensemble, is 0.394, and the miss 2.79 sd. Eight forecasts are of age, of which the
  // worst misses by 1 + 0.27 ln 8 = 1.561 sd.
  const toLearn = Math.hypot(
    Math.sqrt((Math.log(2) / 1.645) ** 2 - (Math.log(4 / 3) / 1.645) ** 2),
    0.1,
  );
  const drift = watch.drift();
  expect(drift).toMatchObject({ checks: 8, sinceS: 2400, movedS: 2400 });
  expect(drift.sds).toBeCloseTo(Math.log(3) / toLearn, 3);
  expect(squaredMisses(drift)).toBeCloseTo(8 * (Math.log(3) / toLearn / 1.56145) ** 2, 2);
});

test('an end that comes nearer than was told has moved the other way', () => {
  const watch = createEndDriftWatch();
  for (let minute = 0; minute <= 20; minute += 1) {
    watch.see(60 * minute, minutes(Math.max(5, 90 - 5 * minute), 1.3));
  }
  const { sds, movedS } = watch.drift();
  expect(sds).toBeLessThan(-1);
  expect(movedS).toBeLessThan(0);
});

test('what was to be learned is no miss', () => {
  const watch = createEndDriftWatch();
  // Told to a factor of 2, then known to 1.1, a standard deviation of the first later.
  watch.see(0, minutes(60, 2));
  const now = minutes(50, 1.1);
  const later = { ...now, value: now.value * 1.3, low: now.low * 1.3, high: now.high * 1.3 };
  for (const boiledS of [300, 600]) watch.see(boiledS, later);
  const { sds, checks } = watch.drift();
  expect(Math.abs(sds)).toBeLessThan(1);
  expect(squaredMisses(watch.drift())).toBeLessThan(checks);
});

test('a forecast is held to account after five minutes of boiling, and forgotten after an hour', () => {
  const watch = createEndDriftWatch();
  watch.see(0, minutes(60, 1.1));
  watch.see(299, minutes(20, 1.1));
  expect(watch.drift().checks).toBe(0);
  watch.see(300, minutes(20, 1.1));
  expect(watch.drift()).toMatchObject({ checks: 1, sinceS: 300, movedS: -2100 });
  watch.see(3601, minutes(20, 1.1));
  expect(watch.drift().sinceS).toBe(3301);
});

test('below a minute everything is soon: no end has moved that was told and turned out below it', () => {
  const watch = createEndDriftWatch();
  watch.see(0, { value: 50, low: 1, high: 55 });
  watch.see(400, { value: -395, low: -399, high: -390 });
  expect(watch.drift()).toMatchObject({ sds: 0, movedS: 0, checks: 1 });
});

test('forecasts that a withdrawn mark had moved are held to account no more, those before it are', () => {
  const watch = createEndDriftWatch();
  watch.see(0, minutes(60, 1.5));
  watch.see(600, minutes(5, 1.1));
  watch.see(1200, minutes(5, 1.1));
  watch.forgetFrom(600);
  expect(watch.drift()).toMatchObject({ sds: 0, checks: 0 });
  watch.see(1260, minutes(39, 1.5));
  expect(watch.drift()).toMatchObject({ sds: 0, checks: 1 });
});
