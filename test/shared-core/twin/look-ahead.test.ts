import { describe, expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import type { BatchCourse } from '../../../shared-core/twin/batch-course.ts';
import { createClock } from '../../../shared-core/twin/course-clock.ts';
import { drawScatter, lookAhead } from '../../../shared-core/twin/look-ahead.ts';
import type { Particle } from '../../../shared-core/twin/particle.ts';
import { plainCourse } from './support/plain-course.ts';

const none = { model: 0, time: 0, heat: 0 };

/** One guess whose reflux is condensed by the wall to one half: three parts of four go down, so 0.375 of the vapour is lost. */
function particle(course: BatchCourse, weight = 1, biasK = 0.2): Particle {
  const guess = {
    plates: 4,
    refluxRatio: 3,
    lossShare: 0.5,
    vapourMolPerS: 0.001,
    strengthAbv: 10,
    holdUpMol: 0.02,
    biasK,
  };
  return {
    walk: [],
    guess,
    course,
    oldLogLikelihood: 0,
    oldClock: createClock(),
    newLogLikelihood: 0,
    newClock: createClock(),
    weight,
  };
}

/** The head rises by 1 K in 100 s; 0.05 mL/s come over, and the pot loses as much. */
const straight = () =>
  plainCourse(
    {
      headHeightK: (courseS) => courseS / 100,
      distillateMl: (courseS) => courseS / 20,
      potMl: (courseS) => 300 - courseS / 20,
      potMoleFraction: (courseS) => 0.03 - courseS / 50_000,
    },
    0.05,
  );
const same = (value: number) => ({
  low: expect.closeTo(value, 9),
  value: expect.closeTo(value, 9),
  high: expect.closeTo(value, 9),
});

describe('what one guess expects', () => {
  test('is read from its course, where nothing is left open', () => {
    const outlook = lookAhead([particle(straight())], [none], 400, 6.5);
    expect(outlook).toEqual({
      limitInS: same(250),
      // (0.75 − 0.375)/(1 − 0.375) = 0.6 of the flow.
      limitInIfEasedS: same(250 / 0.6),
      distillateMlAtLimit: same(32.5),
      collectedMl: same(20),
      potMl: same(280),
      potMoleFraction: same(0.022),
      flowMlPerS: expect.closeTo(0.05, 9),
      bias: { mean: 0.2, sd: 0 },
      headSoonK: { mean: expect.closeTo(4.8, 9), sd: 0 },
      volumeWouldNarrow: 0,
    });
  });

  test('is nothing more to wait for once the limit is passed', () => {
    const outlook = lookAhead([particle(straight())], [none], 800, 6.5);
    expect([outlook.limitInS, outlook.distillateMlAtLimit]).toEqual([same(0), same(40)]);
  });

  test('is the last time that the head crosses the limit: what rose as the column filled does not count', () => {
    const course = straight();
    course.headHeightK[1] = 9;
    expect(lookAhead([particle(course)], [none], 0, 6.5).limitInS).toEqual(same(650));
    course.headHeightK.fill(9);
    expect(lookAhead([particle(course)], [none], 0, 6.5).limitInS).toEqual(same(0));
    // A course that never gets there is read at its end.
    expect(lookAhead([particle(straight())], [none], 0, 99).limitInS).toEqual(same(1000));
  });

  test('of the pot beyond the end of the course is what the tail has taken', () => {
    const beyond = (model: number) =>
      lookAhead([particle(straight())], [{ ...none, model }], 1400, 6.5).potMl.value;
    expect(beyond(0)).toBeCloseTo(250 - 20, 9);
    expect(beyond(1)).toBeCloseTo(250 - 20 * Math.exp(0.4), 9);
    expect(lookAhead([particle(straight())], [none], 99_999, 6.5).potMl.value).toBe(0);
  });

  test('is scattered by what the guess leaves open: 7 % of the time that is left, the clock and the heat', () => {
    const inS = (scatter: typeof none) =>
      lookAhead([particle(straight())], [scatter], 0, 6.5).limitInS.value;
    expect(inS({ ...none, model: 1 })).toBeCloseTo(650 * Math.exp(0.07), 9);
    expect(inS({ ...none, time: 1 })).toBeCloseTo(650 - 120, 9);
    expect(inS({ ...none, time: -1 })).toBeCloseTo(650, 9);
    const heated = particle(straight());
    heated.oldClock.heatVariance = 0.04;
    expect(lookAhead([heated], [{ ...none, heat: 1 }], 0, 6.5).limitInS.value).toBeCloseTo(
      650 / Math.exp(0.2),
      9,
    );
    const shared = particle(straight());
    shared.oldClock.heatVariance = 0.04;
    shared.oldClock.covariance = 120 * 0.12;
    const both = lookAhead([shared], [{ model: 0, time: 1, heat: 1 }], 0, 6.5).limitInS.value;
    // Of 0.2 in the heat 0.12 go with the time, and 0.16 are its own.
    expect(both).toBeCloseTo((650 - 120) / Math.exp(0.12 + 0.16), 9);
  });

  test('leaves a tenth of the flow where the wall would condense nearly all', () => {
    const lossy = particle(straight());
    const guess = { ...lossy.guess, refluxRatio: 20, lossShare: 0.95 };
    const { limitInS, limitInIfEasedS } = lookAhead([{ ...lossy, guess }], [none], 0, 6.5);
    expect(limitInIfEasedS.value).toBeCloseTo(10 * limitInS.value, 6);
  });
});

describe('what a reading of the receiver would tell', () => {
  /** Two guesses, of which the quicker has more in the receiver and less time left. */
  const cloud = (quicker: number) =>
    [1, quicker].map((speed) =>
      particle(
        plainCourse({
          headHeightK: (courseS) => (speed * courseS) / 100,
          distillateMl: (courseS) => (speed * courseS) / 20,
        }),
        0.5,
      ),
    );

  test('is all but everything where the two volumes lie far apart, and nothing where they are one', () => {
    const far = lookAhead(cloud(2), [none, none], 300, 9).volumeWouldNarrow;
    // 15 and 30 mL: a standard deviation of 7.5 mL against the 0.5 mL of a cylinder.
    expect(far).toBeCloseTo(1 - Math.sqrt(1 - 7.5 ** 2 / (7.5 ** 2 + 0.5 ** 2)), 9);
    expect(lookAhead(cloud(1), [none, none], 300, 9).volumeWouldNarrow).toBe(0);
  });
});

test('the scatter is one normal number each of model, time and heat, the same for the same seed', () => {
  const drawn = drawScatter(4000, createRandom('scatter'));
  expect(drawScatter(4000, createRandom('scatter'))).toEqual(drawn);
  for (const of of ['model', 'time', 'heat'] as const) {
    const mean = drawn.reduce((sum, one) => sum + one[of], 0) / 4000;
    const square = drawn.reduce((sum, one) => sum + one[of] ** 2, 0) / 4000;
    expect(Math.abs(mean)).toBeLessThan(0.08);
    expect(Math.abs(square - 1)).toBeLessThan(0.12);
  }
});
