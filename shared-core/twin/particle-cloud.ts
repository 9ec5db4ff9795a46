import { type Random, systematicPicks } from '../random/index.ts';
import { type BatchCourse, copyCourse, emptyCourse, runCourse } from './batch-course.ts';
import { type CourseClock, createClock, setClock } from './course-clock.ts';
import { logLikelihood, type Observation } from './observations.ts';
import {
  drawWalk,
  type GuessPrior,
  logPrior,
  type StillGuess,
  toGuess,
  type Walk,
} from './still-guess.ts';

/** One guess with its course and how well it explains what was seen. */
export interface Particle {
  walk: Walk;
  guess: StillGuess;
  course: BatchCourse;
  /** Log-likelihood of what was assimilated before, and how far the run has come by it. */
  oldLogLikelihood: number;
  readonly oldClock: CourseClock;
  /** The same of what is being let in now, and by it. */
  newLogLikelihood: number;
  readonly newClock: CourseClock;
  weight: number;
}

/** What a cloud of guesses is held against. */
export interface CloudEvidence {
  readonly prior: GuessPrior;
  readonly chargeMl: number;
  readonly untilHeadHeightK: number;
  readonly observations: readonly Observation[];
}

export const particleCount = 320;
const sweeps = 3;
/** After so many rounds the rest is let in at once: bounds the work of one update. */
const mostRounds = 8;
/** Scale of differential-evolution steps in seven dimensions, 2.38/√(2 d). */
const stepScale = 0.6;

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
    const start = cloud.map(({ weight }) => weight);
    let step = 1 - admitted;
    reweight(cloud, start, step);
    while (round < mostRounds && effectiveSize(cloud) < cloud.length / 2 && step > 0.004) {
      step /= 2;
      reweight(cloud, start, step);
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

function reweight(cloud: readonly Particle[], start: readonly number[], power: number): void {
  let largest = Number.NEGATIVE_INFINITY;
  const logs = cloud.map((particle, index) => {
    const log = Math.log(start[index] as number) + power * particle.newLogLikelihood;
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

/**
 * Resample-move: draws the cloud anew in proportion to the weights (systematic resampling), then lets every
 * particle walk by Metropolis steps whose direction is the difference of two others, so that steps follow the
 * ridges along which parameters trade off.
 *
 * Source: W. R. Gilks, C. Berzuini, J. R. Stat. Soc. B 63 (2001) 127; C. J. F. ter Braak, Stat. Comput. 16 (2006) 239;
 * from memory.
 */
function resampleAndMove(
  cloud: Particle[],
  evidence: CloudEvidence,
  from: number,
  power: number,
  random: Random,
): void {
  const walks = cloud.map(({ walk }) => walk);
  resample(cloud, random);
  const unstarted = createClock();
  const oldClock = createClock();
  const newClock = createClock();
  let free = emptyCourse();
  for (let sweep = 0; sweep < sweeps; sweep += 1) {
    for (const particle of cloud) {
      const a = walks[random.integer(0, walks.length - 1)] as Walk;
      const b = walks[random.integer(0, walks.length - 1)] as Walk;
      const scale = random.uniform() < 0.1 ? 1 : stepScale;
      const walk = particle.walk.map(
        (value, index) =>
          value +
          scale * ((a[index] as number) - (b[index] as number)) +
          0.02 * (evidence.prior.sd[index] as number) * random.normal(),
      );
      const guess = toGuess(walk);
      runCourse(guess, evidence.chargeMl, evidence.untilHeadHeightK, free);
      setClock(oldClock, unstarted);
      const past = logLikelihood(evidence.observations, 0, from, guess, free, oldClock);
      setClock(newClock, oldClock);
      const end = evidence.observations.length;
      const now = logLikelihood(evidence.observations, from, end, guess, free, newClock);
      const gain =
        past +
        power * now -
        particle.oldLogLikelihood -
        power * particle.newLogLikelihood +
        logPrior(evidence.prior, walk) -
        logPrior(evidence.prior, particle.walk);
      if (Math.log(Math.max(1e-300, random.uniform())) >= gain) continue;
      const replaced = particle.course;
      particle.walk = walk;
      particle.guess = guess;
      particle.oldLogLikelihood = past;
      particle.newLogLikelihood = now;
      particle.course = free;
      setClock(particle.oldClock, oldClock);
      setClock(particle.newClock, newClock);
      free = replaced;
    }
  }
}

/**
 * Every particle that is drawn stays, once; those that are not become copies of those drawn more often. Copying a course
 * is far cheaper than running it again.
 */
function resample(cloud: readonly Particle[], random: Random): void {
  const copies = new Uint32Array(cloud.length);
  const weights = cloud.map(({ weight }) => weight);
  for (const pick of systematicPicks(weights, random)) copies[pick] = (copies[pick] as number) + 1;
  let target = 0;
  cloud.forEach((source, index) => {
    for (let copy = 1; copy < (copies[index] as number); copy += 1) {
      while (copies[target] !== 0) target += 1;
      becomeCopy(cloud[target] as Particle, source);
      target += 1;
    }
  });
  for (const particle of cloud) particle.weight = 1 / cloud.length;
}

function becomeCopy(particle: Particle, source: Particle): void {
  particle.walk = source.walk;
  particle.guess = source.guess;
  particle.oldLogLikelihood = source.oldLogLikelihood;
  particle.newLogLikelihood = source.newLogLikelihood;
  copyCourse(source.course, particle.course);
  setClock(particle.oldClock, source.oldClock);
  setClock(particle.newClock, source.newClock);
}
