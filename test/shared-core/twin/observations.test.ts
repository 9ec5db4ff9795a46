import { describe, expect, it } from 'vitest';
import { createRandom, defaultRunSettings } from '#shared-core';
import {
  beginCourse,
  courseAt,
  emptyCourse,
  runCourse,
} from '../../../shared-core/twin/batch-course.ts';
import { createClock } from '../../../shared-core/twin/course-clock.ts';
import {
  logLikelihood,
  mostFrom,
  type Observation,
} from '../../../shared-core/twin/observations.ts';
import { drawWalk, guessPrior, toGuess } from '../../../shared-core/twin/still-guess.ts';

const settings = {
  ...defaultRunSettings,
  charge: { volumeMl: 330, strengthAbv: 10, standardUncertaintyAbv: 1 },
};
const prior = guessPrior(settings, { tookS: null, eased: null }, 0.5);
const truth = emptyCourse();
runCourse(toGuess(prior.mean), 330, 7, truth);

/** What the stills of the prior's middle would show, one of each kind every other minute. */
const observations: Observation[] = Array.from({ length: 12 }, (_, index) => {
  const boiledS = 240 + 120 * index;
  const kind = (['head', 'volume', 'pot', 'head', 'flow', 'eased'] as const)[index % 6] ?? 'head';
  if (kind === 'eased') return { kind, boiledS };
  const volumeMl = courseAt(truth, truth.distillateMl, boiledS);
  if (kind === 'volume') return { kind, boiledS, value: volumeMl, sd: 1 };
  if (kind === 'flow') return { kind, boiledS, value: volumeMl / boiledS, sd: 0.3 };
  const heightOf = (heights: Float64Array) => courseAt(truth, heights, boiledS);
  return kind === 'head'
    ? { kind, boiledS, value: heightOf(truth.headHeightK), sd: 0.1 }
    : { kind, boiledS, value: heightOf(truth.potHeightK), sd: 0.1, offsetShare: 0.4 };
});

/** Guesses of the prior, each with its whole course and a run of it that has only begun. */
const guesses = Array.from({ length: 300 }, (_, index) => {
  const guess = toGuess(drawWalk(prior, createRandom(`guess ${index}`)));
  const whole = emptyCourse();
  runCourse(guess, 330, 7, whole);
  const likelihood = logLikelihood(observations, 0, 12, guess, whole, createClock());
  return { guess, whole, likelihood };
});

describe('logLikelihood', () => {
  it('says the same to the bit of a course that is run only as far as it is read, and leaves the rest of it unrun', () => {
    let run = 0;
    let all = 0;
    for (const { guess, whole, likelihood } of guesses) {
      const course = emptyCourse();
      const trial = {
        run: beginCourse(guess, 330, 7, course),
        bound: { least: Number.NEGATIVE_INFINITY, mostFrom: mostFrom(observations) },
      };
      const sum = logLikelihood(observations, 0, 12, guess, course, createClock(), trial);
      expect(sum).toBe(likelihood);
      expect(course.headHeightK.subarray(0, course.count)).toEqual(
        whole.headHeightK.subarray(0, course.count),
      );
      run += course.count;
      all += whole.count;
    }
    expect(run).toBeLessThan(all);
  });

  it('gives a guess up only where the whole sum stays below the bound, and mostly does so', () => {
    const wronged: number[] = [];
    let below = 0;
    let givenUp = 0;
    for (const { guess, likelihood } of guesses) {
      for (const least of [-40, -20, 0, likelihood - 1e-3, likelihood + 1e-3]) {
        const course = emptyCourse();
        const run = beginCourse(guess, 330, 7, course);
        const trial = { run, bound: { least, mostFrom: mostFrom(observations) } };
        const sum = logLikelihood(observations, 0, 12, guess, course, createClock(), trial);
        if (likelihood >= least && sum !== likelihood) wronged.push(likelihood);
        if (likelihood < least) below += 1;
        if (sum === Number.NEGATIVE_INFINITY) givenUp += 1;
      }
    }
    expect(wronged).toEqual([]);
    expect(givenUp).toBeGreaterThan(0.9 * below);
  });
});

describe('mostFrom', () => {
  it('bounds what any guess makes of what is still to come', () => {
    const most = mostFrom(observations);
    for (const { guess, whole } of guesses) {
      for (let from = 0; from < 12; from += 3) {
        const clock = createClock();
        const before = logLikelihood(observations, 0, from, guess, whole, clock);
        expect(Number.isFinite(before)).toBe(true);
        expect(logLikelihood(observations, from, 12, guess, whole, clock)).toBeLessThanOrEqual(
          (most[from] as number) + 1e-9,
        );
      }
    }
  });
});
