import { type BatchCourse, distillateAt, flowAt } from './batch-course.ts';
import { type CourseStart, unseenStart } from './course-start.ts';

/**
 * How far a run has come along one guess's course. The heat is seldom steady for an hour and its changes are not
 * always marked, so the time along the course and the logarithm of the heat, relative to that of the first vapour,
 * are followed by an extended Kalman filter: the heat walks at random, a volume tells how far the run has come, counted
 * drops how fast it goes, and the head, where it rises, both.
 *
 * Source: A. H. Jazwinski, Stochastic Processes and Filtering Theory (1970), ch. 8; from memory.
 */
export interface CourseClock {
  /** Time of boiling that the clock has run to [s]. */
  boiledS: number;
  /** Time along the course, which is one of steady boiling [s]. */
  courseS: number;
  logHeat: number;
  /** The heat itself: course seconds a second of boiling is worth. */
  heat: number;
  /** Variance of the course time [s²], of the logarithm of the heat, and what they share [s]. */
  timeVariance: number;
  heatVariance: number;
  covariance: number;
  /** What had come over by this guess in receivers that nobody measured [mL]. */
  unbookedMl: number;
}

/** Unmarked, the heat changes by a quarter in an hour, up or down; common practice, no source. */
export const heatWalkPerS = 0.25 ** 2 / 3600;
/** A marked easing is one by a quarter, more or less; common practice, no source. */
const easedLogMean = -0.3;
const easedLogSd = 0.3;
/** One wrong booking must not carry the clock away: it moves it by no more than this many standard deviations. */
const farthestMiss = 3;
/** Where heat and flow have gone beyond a factor of 4.5 the guess is wrong, not the heat. */
const mostLogHeat = 1.5;

/** A clock at the beginning of a run. */
export function createClock({ courseS, sdS }: CourseStart = unseenStart): CourseClock {
  return {
    boiledS: 0,
    courseS,
    logHeat: 0,
    heat: 1,
    timeVariance: sdS ** 2,
    heatVariance: 0,
    covariance: 0,
    unbookedMl: 0,
  };
}

/** Makes one clock the same as another. */
export function setClock(clock: CourseClock, from: CourseClock): void {
  clock.boiledS = from.boiledS;
  clock.courseS = from.courseS;
  clock.logHeat = from.logHeat;
  clock.heat = from.heat;
  clock.timeVariance = from.timeVariance;
  clock.heatVariance = from.heatVariance;
  clock.covariance = from.covariance;
  clock.unbookedMl = from.unbookedMl;
}

/** Lets the clock run to a later time of boiling. */
export function advanceClock(clock: CourseClock, boiledS: number): void {
  const passedS = boiledS - clock.boiledS;
  if (passedS <= 0) return;
  const moved = clock.heat * passedS;
  const walked = heatWalkPerS * passedS;
  clock.boiledS = boiledS;
  clock.courseS += moved;
  clock.timeVariance +=
    2 * moved * clock.covariance + moved * moved * (clock.heatVariance + walked / 3);
  clock.covariance += moved * (clock.heatVariance + walked / 2);
  clock.heatVariance += walked;
}

/** The heat was eased now, by nobody knows how much. */
export function easeClock(clock: CourseClock): void {
  setHeat(clock, clock.logHeat + easedLogMean);
  clock.heatVariance += easedLogSd ** 2;
}

/** Corrects the clock by the volume collected [mL] with its standard deviation. Answers the log-likelihood. */
export function seeVolume(
  clock: CourseClock,
  course: BatchCourse,
  volumeMl: number,
  sdMl: number,
): number {
  const miss = volumeMl - distillateAt(course, clock.courseS);
  return correct(clock, flowAt(course, clock.courseS), 0, miss, sdMl ** 2);
}

/** Corrects the clock by the flow [mL/s] with its relative standard deviation. Answers the log-likelihood. */
export function seeFlow(
  clock: CourseClock,
  course: BatchCourse,
  flowMlPerS: number,
  relativeSd: number,
): number {
  const expected = Math.max(1e-6, clock.heat * flowAt(course, clock.courseS));
  return correct(clock, 0, 1, Math.log(flowMlPerS / expected), relativeSd ** 2);
}

/** Corrects the clock by the head, which misses its course by so much [K] where it rises at a slope [K/s]. */
export function seeHead(
  clock: CourseClock,
  slopeKPerS: number,
  missK: number,
  varianceK2: number,
): void {
  correct(clock, slopeKPerS, 0, missK, varianceK2);
}

/**
 * One scalar correction: what was seen depends on course time and heat by the slopes given. Answers the
 * log-likelihood, up to a constant, under a t distribution, which lets one odd reading pass.
 */
function correct(
  clock: CourseClock,
  timeSlope: number,
  heatSlope: number,
  miss: number,
  ownVariance: number,
): number {
  const withTime = timeSlope * clock.timeVariance + heatSlope * clock.covariance;
  const withHeat = timeSlope * clock.covariance + heatSlope * clock.heatVariance;
  const variance = timeSlope * withTime + heatSlope * withHeat + ownVariance;
  const farthest = farthestMiss * Math.sqrt(variance);
  const share = Math.max(-farthest, Math.min(farthest, miss)) / variance;
  clock.courseS = Math.max(0, clock.courseS + withTime * share);
  if (withHeat !== 0) setHeat(clock, clock.logHeat + withHeat * share);
  clock.timeVariance -= (withTime * withTime) / variance;
  clock.heatVariance -= (withHeat * withHeat) / variance;
  clock.covariance -= (withTime * withHeat) / variance;
  return logStudent(miss, variance);
}

function setHeat(clock: CourseClock, logHeat: number): void {
  clock.logHeat = Math.max(-mostLogHeat, Math.min(mostLogHeat, logHeat));
  clock.heat = Math.exp(clock.logHeat);
}

/** Degrees of freedom of the t distribution that keeps one odd stretch from deciding everything. */
const freedom = 4;

/** Logarithm of the t density at a miss whose scale squared is given, up to a constant. */
export function logStudent(miss: number, variance: number): number {
  const tail = ((freedom + 1) / 2) * Math.log1p((miss * miss) / (freedom * variance));
  return -tail - Math.log(variance) / 2;
}
