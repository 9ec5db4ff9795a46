import type { BatchCourse } from './batch-course.ts';
import type { CourseClock } from './course-clock.ts';
import type { Observation } from './observations.ts';
import type { GuessPrior, StillGuess, Walk } from './still-guess.ts';

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
