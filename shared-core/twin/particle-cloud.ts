import type { Random } from '../random/index.ts';
import { emptyCourse, runCourse } from './batch-course.ts';
import { createClock, setClock } from './course-clock.ts';
import { startOf } from './course-start.ts';
import { logLikelihood } from './observations.ts';
import type { CloudEvidence, Particle } from './particle.ts';
import { drawAnew, isMoved, moveOn, type ResampleMove } from './resample-move.ts';
import { drawWalk, type GuessPrior, toGuess } from './still-guess.ts';

export const particleCount = 320;
/** After so many rounds the rest is let in at once: bounds the work of one update. */
const mostRounds = 8;
/** A course from end to end takes as long as so many moves, most of which are turned down half-way; measured. */
const movesPerCourse = 2;

/** A cloud drawn from what is believed before anything is seen; its courses are still to be run. */
export function createCloud(prior: GuessPrior, random: Random): Particle[] {
  return Array.from({ length: particleCount }, () => {
    const walk = drawWalk(prior, random);
    const guess = toGuess(walk);
    return {
      walk,
      guess,
      course: emptyCourse(),
      oldLogLikelihood: 0,
      oldClock: createClock(startOf(guess, prior)),
      newLogLikelihood: 0,
      newClock: createClock(),
      weight: 1 / particleCount,
    };
  });
}

/** Runs courses that are still to be run, at the cost of so many moves at most. Answers how many moves are left; 0 where courses are. */
export function runCourses(
  cloud: readonly Particle[],
  { chargeMl, untilHeadHeightK }: CloudEvidence,
  moves: number,
): number {
  let left = moves;
  for (const { guess, course } of cloud) {
    if (course.count > 0) continue;
    if (left <= 0) return 0;
    runCourse(guess, chargeMl, untilHeadHeightK, course);
    left -= movesPerCourse;
  }
  return Math.max(0, left);
}

/** Observations that are being let into a cloud: values alone, so that the work can be put down after any move and taken up again. */
export interface Assimilation {
  /** The observations: from an index up to, not including, another. */
  readonly from: number;
  readonly to: number;
  /** Share of their log-likelihood that is in, 0 … 1, and in how many rounds it came. */
  admitted: number;
  rounds: number;
  /** The move that is on its way. */
  move: ResampleMove | null;
}

/** Holds the cloud against what has been observed from an index on; nothing of it is let in yet. */
export function beginAssimilation(
  cloud: readonly Particle[],
  { observations }: CloudEvidence,
  from: number,
): Assimilation {
  const to = observations.length;
  for (const particle of cloud) {
    const { guess, course, newClock } = particle;
    setClock(newClock, particle.oldClock);
    particle.newLogLikelihood = logLikelihood(observations, from, to, guess, course, newClock);
  }
  return { from, to, admitted: 0, rounds: 0, move: null };
}

/**
 * Lets in what is being let in, by so many moves at most; answers whether all of it is in. Where observations say much at once, their
 * likelihood is let in by degrees, with a move after each, so that the cloud can walk to where it belongs instead of collapsing.
 */
export function assimilate(
  cloud: Particle[],
  evidence: CloudEvidence,
  under: Assimilation,
  moves: number,
  random: Random,
): boolean {
  let left = moves;
  while (under.move !== null || under.admitted < 1) {
    under.move ??= letInMore(cloud, under, random);
    if (under.move === null) continue;
    left -= moveOn(cloud, evidence, under, under.move, left, random);
    if (!isMoved(cloud, under.move)) return false;
    under.move = null;
  }
  for (const particle of cloud) {
    particle.oldLogLikelihood += particle.newLogLikelihood;
    particle.newLogLikelihood = 0;
    setClock(particle.oldClock, particle.newClock);
  }
  return true;
}

/** Lets in as much as leaves the cloud some variety; where that is little, it is drawn anew, and must move. */
function letInMore(cloud: Particle[], under: Assimilation, random: Random): ResampleMove | null {
  const logStart = cloud.map(({ weight }) => Math.log(weight));
  let step = 1 - under.admitted;
  reweight(cloud, logStart, step);
  while (under.rounds < mostRounds && effectiveSize(cloud) < cloud.length / 2 && step > 0.004) {
    step /= 2;
    reweight(cloud, logStart, step);
  }
  under.admitted += step;
  under.rounds += 1;
  return effectiveSize(cloud) < 0.6 * cloud.length ? drawAnew(cloud, under.admitted, random) : null;
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
