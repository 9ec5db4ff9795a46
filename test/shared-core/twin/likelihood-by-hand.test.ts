import { describe, expect, test } from 'vitest';
import { createClock, logStudent } from '../../../shared-core/twin/course-clock.ts';
import {
  isBelow,
  logLikelihood,
  mostFrom,
  type Observation,
} from '../../../shared-core/twin/observations.ts';
import { plainCourse } from './support/plain-course.ts';

const guess = {
  plates: 4,
  refluxRatio: 3,
  lossShare: 0.5,
  vapourMolPerS: 0.001,
  strengthAbv: 10,
  holdUpMol: 0.02,
  biasK: 0.2,
};
const level = () =>
  plainCourse({ headHeightK: () => 1, potHeightK: () => 14, distillateMl: (atS) => atS / 20 });
const potAt = (boiledS: number, value: number, offsetShare: number): Observation => ({
  kind: 'pot',
  boiledS,
  value,
  sd: 0.4,
  offsetShare,
});
const told = (course: ReturnType<typeof level>, ...observations: readonly Observation[]) => {
  const clock = createClock();
  const sum = logLikelihood(observations, 0, observations.length, guess, course, clock);
  return { sum, clock };
};

describe('how likely a guess makes what was seen', () => {
  test('of a head that rests: by its own doubt and a tenth of a kelvin of the model, with a weight of 0.6', () => {
    const { sum, clock } = told(level(), { kind: 'head', boiledS: 0, value: 1.5, sd: 0.05 });
    // 1.5 K seen, less a bias of 0.2 K, against 1 K.
    expect(sum).toBeCloseTo(0.6 * logStudent(0.3, 0.05 ** 2 + 0.1 ** 2), 12);
    expect(clock.courseS).toBe(0);
  });

  test('of a head that rises: besides by how far it rises while the clock may be off, which is then set by it', () => {
    const course = plainCourse({ headHeightK: (courseS) => courseS / 100 });
    const { sum, clock } = told(course, { kind: 'head', boiledS: 0, value: 0.5, sd: 0 });
    // The clock is known to 120 s and the model errs by 40 s: together 126 s, a rise of 1.26 K.
    const riseK = Math.hypot(120, 40) / 100;
    expect(sum).toBeCloseTo(0.6 * logStudent(0.3, 0.1 ** 2 + riseK ** 2), 12);
    // A slope of 0.01 K/s: 1.2² of the clock against 0.1²/0.6 of the head.
    expect(clock.courseS).toBeCloseTo((0.01 * 14400 * 0.3) / (1.2 ** 2 + 0.1 ** 2 / 0.6), 9);
  });

  test('of the pot: by a kelvin and a half of the model beside its own doubt, and the clock stays', () => {
    const { sum, clock } = told(level(), potAt(0, 16, 0));
    expect(sum).toBeCloseTo((-0.3 * 2 ** 2) / (0.4 ** 2 + 1.5 ** 2), 12);
    expect(clock).toEqual(createClock());
  });

  test('of the pot, where the air pressure may be wrong: less its share of the guess’s offset', () => {
    // 16 K, less half of 0.2 K, against 14 K.
    const { sum } = told(level(), potAt(0, 16, 0.5));
    expect(sum).toBeCloseTo((-0.3 * 1.9 ** 2) / (0.4 ** 2 + 1.5 ** 2), 12);
  });

  test('of a volume: by its own doubt and a part in seventy of it; of a flow in proportion', () => {
    const volume = told(level(), { kind: 'volume', boiledS: 0, value: 4, sd: 0.5 });
    expect(volume.sum).toBeCloseTo(logStudent(4, 6 ** 2 + (0.5 + 0.015 * 4) ** 2), 12);
    const flow = told(level(), { kind: 'flow', boiledS: 0, value: 0.06, sd: 0.2 });
    expect(flow.sum).toBeCloseTo(logStudent(Math.log(1.2), 0.2 ** 2), 12);
  });

  test('of what was booked after a receiver went away unmeasured: with what had come over by then by the guess itself', () => {
    // 50 mL by 1000 s, of which 20 were booked: 30 are missing in all that is booked later, and in nothing that a balance shows.
    const away: Observation = { kind: 'taken-away', boiledS: 1000, bookedMl: 20 };
    const later = { boiledS: 1000, value: 24, sd: 0.5 };
    const known = told(level(), { kind: 'volume', ...later, value: 54 });
    // Doubted as much: a part in seventy of what was booked is less by that of the 30 mL.
    const booked = told(level(), away, { kind: 'booked', ...later, sd: 0.5 + 0.015 * 30 });
    expect(booked.clock.unbookedMl).toBeCloseTo(30, 9);
    expect([booked.sum, booked.clock.courseS]).toEqual([
      expect.closeTo(known.sum, 9),
      expect.closeTo(known.clock.courseS, 9),
    ]);
    expect(told(level(), { kind: 'booked', ...later }).sum).toBe(
      told(level(), { kind: 'volume', ...later }).sum,
    );
    expect(told(level(), away, { kind: 'volume', ...later }).sum).toBe(
      told(level(), { kind: 'volume', ...later }).sum,
    );
    // Who has booked more than came over by a guess has missed nothing by it.
    expect(told(level(), { ...away, bookedMl: 60 }).clock.unbookedMl).toBe(0);
  });

  test('of an easing: not at all, but the clock goes slower from there', () => {
    const { sum, clock } = told(level(), { kind: 'eased', boiledS: 100 });
    expect(sum).toBe(0);
    expect([clock.courseS, clock.heat]).toEqual([100, expect.closeTo(Math.exp(-0.3), 12)]);
  });

  test('is the sum of those from one index up to another', () => {
    const observations: Observation[] = [1, 1.2, 1.5].map((value, index) => ({
      kind: 'head',
      boiledS: 60 * index,
      value,
      sd: 0.1,
    }));
    const between = (from: number, to: number) =>
      logLikelihood(observations, from, to, guess, level(), createClock());
    expect(between(0, 3)).toBeCloseTo(between(0, 1) + between(1, 2) + between(2, 3), 9);
    expect(between(1, 1)).toBe(0);
  });
});

describe('what can still come', () => {
  const observations: readonly Observation[] = [
    { kind: 'head', boiledS: 0, value: 1, sd: 0.05 },
    { kind: 'eased', boiledS: 60 },
    potAt(60, 14, 0),
    { kind: 'volume', boiledS: 120, value: 6, sd: 0.5 },
    { kind: 'flow', boiledS: 180, value: 0.05, sd: 0.2 },
  ];

  test('is at most what no miss at all would add, from each on', () => {
    const flow = logStudent(0, 0.2 ** 2);
    const volume = logStudent(0, (0.5 + 0.015 * 6) ** 2);
    const head = 0.6 * logStudent(0, 0.05 ** 2 + 0.1 ** 2);
    expect(Array.from(mostFrom(observations))).toEqual(
      [head + volume + flow, volume + flow, volume + flow, volume + flow, flow, 0].map((most) =>
        expect.closeTo(most, 12),
      ),
    );
  });

  test('is out of reach only beyond what rounding could make of it', () => {
    const most = Float64Array.from([5, 3, 0]);
    const bound = (least: number) => ({ least, mostFrom: most });
    expect(isBelow(bound(10), 4.9, 0, 2)).toBe(true);
    expect(isBelow(bound(10), 5, 0, 2)).toBe(false);
    expect(isBelow(bound(10), 5 - 1e-7, 0, 2)).toBe(false);
    // Of what lies between two indices only: 2 more.
    expect(isBelow(bound(10), 7.9, 0, 1)).toBe(true);
    expect(isBelow(bound(10), 8, 0, 1)).toBe(false);
    expect(isBelow(bound(Number.NEGATIVE_INFINITY), -1e9, 0, 2)).toBe(false);
  });
});
