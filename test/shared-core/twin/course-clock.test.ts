import { describe, expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import {
  courseAt,
  distillateAt,
  emptyCourse,
  runCourse,
} from '../../../shared-core/twin/batch-course.ts';
import {
  advanceClock,
  type CourseClock,
  createClock,
  easeClock,
  seeFlow,
  seeHead,
  seeVolume,
} from '../../../shared-core/twin/course-clock.ts';

const course = emptyCourse();
runCourse(
  {
    plates: 5.5,
    refluxRatio: 3,
    lossShare: 0.7,
    vapourMolPerS: 0.0013,
    strengthAbv: 9,
    holdUpMol: 0.02,
    biasK: 0,
  },
  350,
  8,
  course,
);

const easedAtS = 900;
/** Where a run truly stands whose heat is eased at 900 s. */
const trulyAt = (boiledS: number, heat: number): number =>
  Math.min(boiledS, easedAtS) + heat * Math.max(0, boiledS - easedAtS);

/** A clock that sees the receiver every five minutes of a run whose heat was eased without a mark. */
function readEveryFiveMinutes(untilS: number, heat: number): CourseClock {
  const clock = createClock();
  for (let boiledS = 300; boiledS <= untilS; boiledS += 300) {
    advanceClock(clock, boiledS);
    seeVolume(clock, course, distillateAt(course, trulyAt(boiledS, heat)), 0.7);
  }
  return clock;
}

describe('the run clock', () => {
  test('goes with the boiling while the heat is steady, and knows less and less how far', () => {
    const clock = createClock();
    advanceClock(clock, 600);
    const early = clock.timeVariance;
    advanceClock(clock, 3000);
    expect(clock.courseS).toBe(3000);
    expect(clock.heat).toBe(1);
    expect(Math.sqrt(clock.timeVariance)).toBeGreaterThan(200);
    expect(clock.timeVariance).toBeGreaterThan(5 * early);
  });

  test.each([0.5, 0.75, 1.3])(
    'finds by the receiver that the heat is %f times what it was, though nobody marked it',
    (heat) => {
      const clock = readEveryFiveMinutes(3000, heat);
      expect(Math.abs(clock.courseS - trulyAt(3000, heat))).toBeLessThan(60);
      expect(Math.abs(clock.heat / heat - 1)).toBeLessThan(0.1);
      expect(Math.sqrt(clock.heatVariance)).toBeLessThan(0.15);
    },
  );

  test('is carried away by no more than three standard deviations when a volume is booked wrong', () => {
    const clock = readEveryFiveMinutes(1500, 1);
    advanceClock(clock, 1800);
    const sdS = Math.sqrt(clock.timeVariance);
    const before = clock.courseS;
    seeVolume(clock, course, 10 * distillateAt(course, 1800), 0.7);
    expect(clock.courseS - before).toBeLessThan(3 * sdS);
    expect(clock.courseS).toBeGreaterThan(before);
  });

  test('takes a marked easing for one by a quarter, more or less, and counted drops for the flow', () => {
    const clock = createClock();
    advanceClock(clock, easedAtS);
    easeClock(clock);
    expect(clock.heat).toBeGreaterThan(0.6);
    expect(clock.heat).toBeLessThan(0.9);
    const before = clock.heatVariance;
    const flow = (distillateAt(course, easedAtS + 30) - distillateAt(course, easedAtS - 30)) / 60;
    seeFlow(clock, course, 0.4 * flow, 0.1);
    expect(clock.heat).toBeGreaterThan(0.38);
    expect(clock.heat).toBeLessThan(0.5);
    expect(clock.heatVariance).toBeLessThan(0.3 * before);
  });

  test('is set forward by most of what a head that rises is early, and by a small part of what one that rests would be', () => {
    const risesS = course.stepS * course.headHeightK.findIndex((height) => height > 2);
    const slope = (atS: number): number =>
      (courseAt(course, course.headHeightK, atS + 60) - courseAt(course, course.headHeightK, atS)) /
      60;
    const shareOfMiss = (atS: number): number => {
      const clock = createClock();
      advanceClock(clock, atS);
      seeHead(clock, slope(atS), 0.5, 0.1 ** 2);
      return (clock.courseS - atS) / (0.5 / slope(atS));
    };
    expect(shareOfMiss(risesS)).toBeGreaterThan(0.9);
    expect(shareOfMiss(600)).toBeLessThan(0.25);
  });

  test('keeps a sound covariance through anything it is shown', () => {
    const random = createRandom('clock');
    const clock = createClock();
    let boiledS = 0;
    for (let step = 0; step < 2000; step += 1) {
      boiledS += 90 * random.uniform();
      advanceClock(clock, boiledS);
      const kind = random.integer(0, 3);
      if (kind === 0) seeVolume(clock, course, 120 * random.uniform(), 0.1 + random.uniform());
      if (kind === 1) seeFlow(clock, course, 1e-4 + 0.1 * random.uniform(), 0.1 + random.uniform());
      if (kind === 2) seeHead(clock, 0.01 * random.uniform(), 3 * random.normal(), 0.01);
      if (kind === 3 && random.uniform() < 0.05) easeClock(clock);
      const { timeVariance, heatVariance, covariance } = clock;
      expect(timeVariance).toBeGreaterThan(0);
      expect(heatVariance).toBeGreaterThanOrEqual(0);
      expect(covariance ** 2).toBeLessThanOrEqual(timeVariance * heatVariance * (1 + 1e-9) + 1e-9);
      expect(Number.isFinite(clock.courseS + clock.heat)).toBe(true);
    }
  });
});
