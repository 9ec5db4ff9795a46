import { describe, expect, test } from 'vitest';
import {
  advanceClock,
  createClock,
  easeClock,
  logStudent,
  seeFlow,
  seeHead,
  seeVolume,
  setClock,
} from '../../../shared-core/twin/course-clock.ts';
import { plainCourse } from './support/plain-course.ts';

/** Of the logarithm of the heat, in a second. */
const walkPerS = 0.25 ** 2 / 3600;

describe('a clock that nobody corrects', () => {
  test('knows as much as a random walk of the heat leaves: q t in the heat, q t³/3 in the time, q t²/2 in both', () => {
    const clock = createClock();
    advanceClock(clock, 600);
    expect(clock).toEqual({
      boiledS: 600,
      courseS: 600,
      logHeat: 0,
      heat: 1,
      timeVariance: expect.closeTo(120 ** 2 + (walkPerS * 600 ** 3) / 3, 6),
      heatVariance: expect.closeTo(walkPerS * 600, 12),
      covariance: expect.closeTo((walkPerS * 600 ** 2) / 2, 9),
      unbookedMl: 0,
    });
  });

  test('comes to the same in one step or in many, and does not run back', () => {
    const [once, often] = [createClock(), createClock()];
    advanceClock(once, 900);
    for (let boiledS = 1; boiledS <= 900; boiledS += 1) advanceClock(often, boiledS);
    expect(often.timeVariance).toBeCloseTo(once.timeVariance, 5);
    expect(often.covariance).toBeCloseTo(once.covariance, 8);
    const before = { ...once };
    advanceClock(once, 800);
    advanceClock(once, 900);
    expect(once).toEqual(before);
  });

  test('goes slower after an easing, by e^−0.3 each, and no slower than by a factor of e^1.5', () => {
    const clock = createClock();
    easeClock(clock);
    expect(clock).toMatchObject({ heat: expect.closeTo(Math.exp(-0.3), 12) });
    expect(clock.heatVariance).toBeCloseTo(0.3 ** 2, 12);
    advanceClock(clock, 100);
    expect(clock.courseS).toBeCloseTo(100 * Math.exp(-0.3), 9);
    expect(clock.timeVariance).toBeCloseTo(
      120 ** 2 + (100 * Math.exp(-0.3)) ** 2 * (0.09 + (walkPerS * 100) / 3),
      6,
    );
    for (let again = 0; again < 9; again += 1) easeClock(clock);
    expect(clock.heat).toBeCloseTo(Math.exp(-1.5), 12);
  });

  test('is the same in a copy', () => {
    const [from, into] = [createClock(), createClock()];
    advanceClock(from, 500);
    easeClock(from);
    seeHead(from, 0.01, 0.3, 0.04);
    setClock(into, from);
    expect(into).toEqual(from);
  });
});

describe('a correction', () => {
  test('by the head is that of a Kalman filter, shared with the heat by what both have in common', () => {
    const clock = createClock();
    advanceClock(clock, 600);
    const { timeVariance: p, covariance: c, heatVariance: h } = clock;
    const [slope, miss, own] = [0.01, 0.2, 0.05];
    seeHead(clock, slope, miss, own);
    const variance = slope ** 2 * p + own;
    expect(clock).toMatchObject({
      courseS: expect.closeTo(600 + (slope * p * miss) / variance, 9),
      logHeat: expect.closeTo((slope * c * miss) / variance, 12),
      heat: expect.closeTo(Math.exp((slope * c * miss) / variance), 12),
      timeVariance: expect.closeTo((p * own) / variance, 6),
      covariance: expect.closeTo((c * own) / variance, 9),
      heatVariance: expect.closeTo(h - (slope * c) ** 2 / variance, 12),
    });
  });

  test('by the receiver goes by the flow, and tells how likely that volume was', () => {
    const course = plainCourse({ distillateMl: (courseS) => courseS / 20 });
    const clock = createClock();
    const told = seeVolume(clock, course, 3, 1.5);
    // Nothing is expected at 0 s; the time is known to 120 s, which are 6 mL: 6² + 1.5² = 38.25.
    expect(clock.courseS).toBeCloseTo((0.05 * 14400 * 3) / 38.25, 9);
    expect(clock.timeVariance).toBeCloseTo((14400 * 2.25) / 38.25, 9);
    expect(told).toBeCloseTo(logStudent(3, 38.25), 12);
  });

  test('by counted drops goes by the heat alone, in proportion', () => {
    const course = plainCourse({ distillateMl: (courseS) => courseS / 20 });
    const clock = createClock();
    clock.heatVariance = 0.04;
    const told = seeFlow(clock, course, 0.06, 0.1);
    const miss = Math.log(0.06 / 0.05);
    expect(clock.logHeat).toBeCloseTo((0.04 * miss) / 0.05, 9);
    expect(clock.heatVariance).toBeCloseTo((0.04 * 0.01) / 0.05, 12);
    expect(clock.timeVariance).toBe(14400);
    expect(told).toBeCloseTo(logStudent(miss, 0.05), 12);
  });

  test('never sets the clock before the beginning, nor by more than three standard deviations', () => {
    const early = createClock();
    seeHead(early, 1, -1e6, 1);
    expect(early.courseS).toBe(0);
    const late = createClock();
    seeHead(late, 1, 1e6, 0);
    expect(late.courseS).toBeCloseTo(3 * 120, 9);
  });
});

test('an odd miss is judged by a t distribution of four degrees of freedom', () => {
  // Density up to a constant: (1 + x²/(4 s²))^(−5/2) / s.
  const density = (miss: number, scale: number) => (1 + (miss / scale) ** 2 / 4) ** -2.5 / scale;
  for (const [miss, scale] of [
    [0, 1],
    [1, 1],
    [-5, 2],
    [30, 0.5],
  ] as const) {
    expect(Math.exp(logStudent(miss, scale ** 2))).toBeCloseTo(density(miss, scale), 12);
  }
});
