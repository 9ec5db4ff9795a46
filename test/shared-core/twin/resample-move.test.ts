import { expect, test } from 'vitest';
import { createRandom, defaultRunSettings } from '#shared-core';
import { courseAt, emptyCourse, runCourse } from '../../../shared-core/twin/batch-course.ts';
import { setClock } from '../../../shared-core/twin/course-clock.ts';
import { logLikelihood, type Observation } from '../../../shared-core/twin/observations.ts';
import type { CloudEvidence, Particle } from '../../../shared-core/twin/particle.ts';
import { createCloud, runCourses } from '../../../shared-core/twin/particle-cloud.ts';
import { drawAnew, moveOn } from '../../../shared-core/twin/resample-move.ts';
import { guessPrior, toGuess } from '../../../shared-core/twin/still-guess.ts';
import { weightedMoments } from '../../../shared-core/twin/weighted-values.ts';

const prior = guessPrior(defaultRunSettings, { tookS: null, eased: null }, 0.3);
const chargeMl = 350;
const untilHeadHeightK = 7;
/** Of what is new so much is in. */
const power = 0.4;

/** A volume that was booked, and a head that was seen, in a still that gives twice as much vapour as is usual. */
const observations: readonly Observation[] = (() => {
  const course = emptyCourse();
  const vapour = (prior.mean[3] as number) + Math.log(2);
  runCourse(toGuess(prior.mean.with(3, vapour)), chargeMl, untilHeadHeightK, course);
  const boiledS = 900;
  const value = courseAt(course, course.distillateMl, boiledS);
  const heightK = courseAt(course, course.headHeightK, boiledS);
  return [
    { kind: 'volume', boiledS, value, sd: 4 },
    { kind: 'head', boiledS, value: heightK, sd: 0.1 },
  ];
})();
const evidence: CloudEvidence = { prior, chargeMl, untilHeadHeightK, observations };

/** Guesses of the prior, each with the weight that the two observations give it. */
function weighed(seed: string): Particle[] {
  const cloud = createCloud(prior, createRandom(seed));
  runCourses(cloud, evidence, Number.POSITIVE_INFINITY);
  for (const particle of cloud) {
    const { guess, course, oldClock, newClock } = particle;
    particle.oldLogLikelihood = logLikelihood(observations, 0, 1, guess, course, oldClock);
    setClock(newClock, oldClock);
    particle.newLogLikelihood = logLikelihood(observations, 1, 2, guess, course, newClock);
    particle.weight = Math.exp(particle.oldLogLikelihood + power * particle.newLogLikelihood);
  }
  const sum = cloud.reduce((total, { weight }) => total + weight, 0);
  for (const particle of cloud) particle.weight /= sum;
  return cloud;
}

/** What is believed of the vapour that rises, as a logarithm. */
const vapourOf = (cloud: readonly Particle[]) =>
  weightedMoments(
    cloud.map(({ walk }) => walk[3] as number),
    cloud.map(({ weight }) => weight),
  );

test('moves bring a cloud from the prior to what is believed by exact weights of many guesses, and leave it there', () => {
  const many = Array.from({ length: 8 }, (_, index) => weighed(`exact ${index}`)).flat();
  const exact = vapourOf(many);
  const cloud = weighed('moved');
  // Drawn as the prior has it, not by what was seen.
  for (const particle of cloud) particle.weight = 1 / cloud.length;
  // The prior is one and a half standard deviations off.
  expect(exact.mean - vapourOf(cloud).mean).toBeGreaterThan(1.5 * exact.sd);
  const random = createRandom('moves');
  for (let round = 0; round < 12; round += 1) {
    const under = drawAnew(cloud, power, random);
    moveOn(cloud, evidence, { from: 1, to: 2 }, under, Number.POSITIVE_INFINITY, random);
  }
  const moved = vapourOf(cloud);
  // Three standard errors of a mean, and of a spread, of 160 independent guesses of 0.3.
  expect(Math.abs(moved.mean - exact.mean)).toBeLessThan(0.07);
  expect(Math.abs(moved.sd - exact.sd)).toBeLessThan(0.05);
});
