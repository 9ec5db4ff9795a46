import { type BatchCourse, type CourseRun, courseAt, distillateAt, runTo } from './batch-course.ts';
import {
  advanceClock,
  type CourseClock,
  easeClock,
  logStudent,
  seeFlow,
  seeHead,
  seeVolume,
} from './course-clock.ts';
import type { PotReading } from './pot-reading.ts';
import type { StillGuess } from './still-guess.ts';

/** Something measured of the still, at a time of boiling since vapour arrived. */
export interface Measurement {
  /** A volume is all that has come over; what was booked lacks what nobody measured. */
  readonly kind: 'head' | 'volume' | 'booked' | 'flow';
  readonly boiledS: number;
  /** Height above the azeotrope [K], volume [mL] or flow [mL/s]. */
  readonly value: number;
  /** Standard deviation of the observation itself; that of a flow is relative. */
  readonly sd: number;
}

/** The heat was eased. */
export interface Easing {
  readonly kind: 'eased';
  readonly boiledS: number;
}

/** A receiver went away unmeasured; so much had been booked until then [mL]. */
export interface TakenAway {
  readonly kind: 'taken-away';
  readonly boiledS: number;
  readonly bookedMl: number;
}

export type Observation = Measurement | PotReading | Easing | TakenAway;

/** What the reduced model gets wrong by itself, over and above the parameters it is given. */
export const headModelSdK = 0.1;
/** Sugar, yeast and stones let a pot boil off the mixture's own temperature; order of magnitude, from memory. */
const potModelSdK = 1.5;
const timingS = 40;
const volumeModelShare = 0.015;
/** Minutes are not independent: the model errs for five minutes in a row [s]. */
export const headModelErrsForS = 300;
const headWeight = 0.6;

/**
 * Log-likelihood of observations (from an index up to, not including, another) under one guess and its course. The
 * clock runs along and is corrected on its way; it must stand where the first of them begins.
 *
 * @param trial for a course on its way: it is run only as far as it is read, and the answer is −∞ once the bound is out of reach
 */
export function logLikelihood(
  observations: readonly Observation[],
  from: number,
  to: number,
  guess: StillGuess,
  course: BatchCourse,
  clock: CourseClock,
  trial: Trial | null = null,
): number {
  let sum = 0;
  for (let index = from; index < to; index += 1) {
    const observation = observations[index] as Observation;
    advanceClock(clock, observation.boiledS);
    if (trial !== null) runTo(trial.run, readUpToS(observation, clock));
    sum += see(observation, guess, course, clock);
    if (trial !== null && isBelow(trial.bound, sum, index + 1, to)) return Number.NEGATIVE_INFINITY;
  }
  return sum;
}

/** Sets the clock by one observation and answers its log-likelihood. */
function see(
  observation: Observation,
  guess: StillGuess,
  course: BatchCourse,
  clock: CourseClock,
): number {
  switch (observation.kind) {
    case 'eased':
      easeClock(clock);
      return 0;
    case 'taken-away':
      clock.unbookedMl = Math.max(0, distillateAt(course, clock.courseS) - observation.bookedMl);
      return 0;
    case 'pot':
      return potLikelihood(observation, guess, course, clock);
    case 'head':
      return headLikelihood(observation.value - guess.biasK, observation.sd, course, clock);
    case 'flow':
      return seeFlow(clock, course, observation.value, observation.sd);
    case 'booked':
    case 'volume': {
      const { kind, value, sd } = observation;
      const allMl = value + (kind === 'booked' ? clock.unbookedMl : 0);
      return seeVolume(clock, course, allMl, volumeSdMl(value, sd));
    }
  }
}

function headLikelihood(
  heightK: number,
  sdK: number,
  course: BatchCourse,
  clock: CourseClock,
): number {
  const expected = courseAt(course, course.headHeightK, clock.courseS);
  const spanS = timingSpanS(clock);
  const riseK = courseAt(course, course.headHeightK, clock.courseS + spanS) - expected;
  const missK = heightK - expected;
  const ownVariance = headVariance(sdK);
  seeHead(clock, riseK / spanS, missK, ownVariance / headWeight);
  return headWeight * logStudent(missK, ownVariance + riseK * riseK);
}

function potLikelihood(
  { value, sd, offsetShare }: PotReading,
  { biasK }: StillGuess,
  course: BatchCourse,
  clock: CourseClock,
): number {
  const miss = value - offsetShare * biasK - courseAt(course, course.potHeightK, clock.courseS);
  return (-headWeight / 2) * ((miss * miss) / (sd * sd + potModelSdK ** 2));
}

/** How far along its course a guess is read for an observation [s]. */
function readUpToS({ kind }: Observation, clock: CourseClock): number {
  return kind === 'head' ? clock.courseS + timingSpanS(clock) : clock.courseS;
}

function timingSpanS({ timeVariance }: CourseClock): number {
  return Math.sqrt(timingS ** 2 + timeVariance);
}

function headVariance(sdK: number): number {
  return sdK * sdK + headModelSdK ** 2;
}

function volumeSdMl(valueMl: number, sdMl: number): number {
  return sdMl + volumeModelShare * valueMl;
}

/** A guess on trial: nothing is worked out for it that cannot bring it to its bound any more. */
export interface Trial {
  readonly run: CourseRun;
  readonly bound: LikelihoodBound;
}

/** A sum of log-likelihoods that must be reached, and what can still be added to it. */
export interface LikelihoodBound {
  readonly least: number;
  /** What the observations from each index on can add at most: by {@link mostFrom}. */
  readonly mostFrom: Float64Array;
}

/** Sums may differ by rounding, never by as much as this. */
const roundingShare = 1e-7;

/** Whether a sum that observations from an index up to another are still to be added to stays below the bound, whatever they add. */
export function isBelow(
  { least, mostFrom }: LikelihoodBound,
  sum: number,
  from: number,
  to: number,
): boolean {
  const most = sum + ((mostFrom[from] as number) - (mostFrom[to] as number));
  return most < least - roundingShare * (1 + Math.abs(least) + Math.abs(sum));
}

/** The most that observations from each index on can add to a log-likelihood, whatever the guess: that of no miss at all. */
export function mostFrom(observations: readonly Observation[]): Float64Array {
  const most = new Float64Array(observations.length + 1);
  for (let index = observations.length - 1; index >= 0; index -= 1) {
    most[index] = (most[index + 1] as number) + mostOf(observations[index] as Observation);
  }
  return most;
}

function mostOf(observation: Observation): number {
  switch (observation.kind) {
    case 'eased':
    case 'taken-away':
    case 'pot':
      return 0;
    case 'head':
      return headWeight * logStudent(0, headVariance(observation.sd));
    case 'flow':
      return logStudent(0, observation.sd ** 2);
    case 'booked':
    case 'volume':
      return logStudent(0, volumeSdMl(observation.value, observation.sd) ** 2);
  }
}
