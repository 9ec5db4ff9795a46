import { type BatchCourse, courseAt } from './batch-course.ts';
import {
  advanceClock,
  type CourseClock,
  easeClock,
  logStudent,
  seeFlow,
  seeHead,
  seeVolume,
} from './course-clock.ts';
import type { StillGuess } from './still-guess.ts';

/** Something measured of the still, at a time of boiling since vapour arrived. */
export interface Measurement {
  readonly kind: 'head' | 'pot' | 'volume' | 'flow';
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

export type Observation = Measurement | Easing;

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
 */
export function logLikelihood(
  observations: readonly Observation[],
  from: number,
  to: number,
  guess: StillGuess,
  course: BatchCourse,
  clock: CourseClock,
): number {
  let sum = 0;
  for (let index = from; index < to; index += 1) {
    const observation = observations[index] as Observation;
    advanceClock(clock, observation.boiledS);
    if (observation.kind === 'eased') {
      easeClock(clock);
      continue;
    }
    const { kind, value, sd } = observation;
    if (kind === 'head') sum += headLikelihood(value - guess.biasK, sd, course, clock);
    else if (kind === 'volume')
      sum += seeVolume(clock, course, value, sd + volumeModelShare * value);
    else if (kind === 'flow') sum += seeFlow(clock, course, value, sd);
    else {
      const miss = value - courseAt(course, course.potHeightK, clock.courseS);
      sum -= (headWeight / 2) * ((miss * miss) / (sd * sd + potModelSdK ** 2));
    }
  }
  return sum;
}

function headLikelihood(
  heightK: number,
  sdK: number,
  course: BatchCourse,
  clock: CourseClock,
): number {
  const expected = courseAt(course, course.headHeightK, clock.courseS);
  const spanS = Math.sqrt(timingS ** 2 + clock.timeVariance);
  const riseK = courseAt(course, course.headHeightK, clock.courseS + spanS) - expected;
  const missK = heightK - expected;
  const ownVariance = sdK * sdK + headModelSdK ** 2;
  seeHead(clock, riseK / spanS, missK, ownVariance / headWeight);
  return headWeight * logStudent(missK, ownVariance + riseK * riseK);
}
