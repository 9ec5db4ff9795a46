import type { Random } from '../random/index.ts';
import { emptyCourse, runCourse } from './batch-course.ts';
import { createClock, setClock } from './course-clock.ts';
import { logLikelihood } from './observations.ts';
import type { CloudEvidence, Particle } from './particle.ts';
import { resampleAndMove } from './resample-move.ts';
import { drawWalk, toGuess } from './still-guess.ts';

export const particleCount = 320;
/** After so many rounds the rest is let in at once: bounds the work of one update. */
const mostRounds = 8;

export function createCloud(evidence: CloudEvidence, random: Random): Particle[] {
  return Array.from({ length: particleCount }, () => {
    const walk = drawWalk(evidence.prior, random);
    const guess = toGuess(walk);
    const course = emptyCourse();
    runCourse(guess, evidence.chargeMl, evidence.untilHeadHeightK, course);
    return {
      walk,
      guess,
      course,
      oldLogLikelihood: 0,
      oldClock: createClock(),
      newLogLikelihood: 0,
      newClock: createClock(),
      weight: 1 / particleCount,
    };
  });
}

/**
 * Holds the cloud against observations from an index on. Where they say much at once, their likelihood is let in
 * by degrees, with a move after each, so that the cloud can walk to where it belongs instead of collapsing.
 */
export function assimilate(
  cloud: Particle[],
  evidence: CloudEvidence,
  from: number,
  random: Random,
): void {
  const end = evidence.observations.length;
  for (const particle of cloud) {
    const { guess, course, newClock } = particle;
    setClock(newClock, particle.oldClock);
    particle.newLogLikelihood = logLikelihood(
      evidence.observations,
      from,
      end,
      guess,
      course,
      newClock,
    );
  }
  let admitted = 0;
  for (let round = 0; admitted < 1; round += 1) {
    const logStart = cloud.map(({ weight }) => Math.log(weight));
    let step = 1 - admitted;
    reweight(cloud, logStart, step);
    while (round < mostRounds && effectiveSize(cloud) < cloud.length / 2 && step > 0.004) {
      step /= 2;
      reweight(cloud, logStart, step);
    }
    admitted += step;
    if (effectiveSize(cloud) < 0.6 * cloud.length) {
      resampleAndMove(cloud, evidence, from, admitted, random);
    }
  }
  for (const particle of cloud) {
    particle.oldLogLikelihood += particle.newLogLikelihood;
    particle.newLogLikelihood = 0;
    setClock(particle.oldClock, particle.newClock);
  }
}

function reweight(cloud: readonly Particle[], logStart: readonly number[], power: number): void {
  let largest = Number.NEGATIVE_INFINITY;
  const logs = cloud.map((particle, index) => {
    const log = (logStart[index] as number) + power * particle.newLogLikelihood;
    if (log > largest) largest = log;
    return log;
  });
  let sum = 0;
  cloud.forEach((particle, index) => {
    particle.weight = Math.exp((logs[index] as number) - largest);
    sum += particle.weight;
  });
  for (const particle of cloud) particle.weight = Math.max(1e-12, particle.weight / sum);
}

/** Number of equally weighted particles the cloud is worth. */
export function effectiveSize(cloud: readonly Particle[]): number {
  let sum = 0;
  for (const { weight } of cloud) sum += weight * weight;
  return 1 / sum;
}
