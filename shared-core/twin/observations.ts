import { type BatchCourse, courseAt, distillateAt } from './batch-course.ts';
import type { StillGuess } from './still-guess.ts';

/** Something seen of the still, at a time of boiling since vapour arrived. */
export interface Observation {
  readonly kind: 'head' | 'pot' | 'volume' | 'flow';
  readonly boiledS: number;
  /** Height above the azeotrope [K], volume [mL] or flow [mL/s]. */
  readonly value: number;
  /** Standard deviation of the observation itself. */
  readonly sd: number;
}

/** What the reduced model gets wrong by itself, over and above the parameters it is given. */
const headModelSdK = 0.1;
/** Sugar, yeast and stones let a pot boil off the mixture's own temperature; order of magnitude, from memory. */
const potModelSdK = 1.5;
const timingS = 40;
const volumeModelShare = 0.015;
/** Minutes are not independent: the model errs for five minutes in a row. */
const headWeight = 0.6;
/** Degrees of freedom of the t distribution that keeps one odd stretch from deciding everything. */
const freedom = 4;

/** Seconds of steady boiling that a stretch with eased heat is worth. */
export function effectiveBoiledS(
  boiledS: number,
  easedAtS: number | null,
  guess: StillGuess,
): number {
  if (easedAtS === null || boiledS <= easedAtS) return boiledS;
  return easedAtS + guess.easedFactor * (boiledS - easedAtS);
}

/** Log-likelihood of observations (from an index up to, not including, another) under one guess and its course. */
export function logLikelihood(
  observations: readonly Observation[],
  from: number,
  to: number,
  guess: StillGuess,
  course: BatchCourse,
  easedAtS: number | null,
): number {
  let sum = 0;
  for (let index = from; index < to; index += 1) {
    const { kind, boiledS, value, sd } = observations[index] as Observation;
    const at = effectiveBoiledS(boiledS, easedAtS, guess);
    if (kind === 'head') {
      const height = courseAt(course, course.headHeightK, at);
      const later = courseAt(course, course.headHeightK, at + timingS);
      const scale = sd * sd + headModelSdK ** 2 + (later - height) ** 2;
      const miss = value - height - guess.biasK;
      sum -= headWeight * ((freedom + 1) / 2) * Math.log1p((miss * miss) / (freedom * scale));
      sum -= (headWeight / 2) * Math.log(scale);
    } else if (kind === 'pot') {
      const miss = value - courseAt(course, course.potHeightK, at);
      sum -= (headWeight / 2) * ((miss * miss) / (sd * sd + potModelSdK ** 2));
    } else if (kind === 'volume') {
      const miss = value - distillateAt(course, at);
      sum -= (miss * miss) / (2 * (sd + volumeModelShare * value) ** 2);
    } else {
      const before = distillateAt(course, at - 30);
      const flow = (distillateAt(course, at + 30) - before) / 60;
      const miss = Math.log(value / Math.max(1e-6, flow));
      sum -= (miss * miss) / (2 * sd * sd);
    }
  }
  return sum;
}
