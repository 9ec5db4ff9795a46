import type { HeadNoise } from '../sense/head-noise.ts';
import {
  begin,
  correctBy,
  type HeadGaussian,
  innovationOf,
  innovationVariance,
  loosen,
  newGaussian,
  passSecond,
  place,
  transitionOf,
  varianceAt,
} from './head-gaussian.ts';
import { createModelMixing } from './model-mixing.ts';
import { logDryPossible, logWetPossible } from './one-sided-bulb.ts';
import type { SparseMatrix } from './small-matrix.ts';
import { type Model, models } from './vapour-models.ts';

/** What is known of the head at one second, on the probe's own scale. */
export interface HeadState {
  /** Temperature of the vapour at the head [°C]; where none comes just now, of what came last. */
  readonly vapourC: number;
  readonly vapourSdK: number;
  readonly rateKPerS: number;
  readonly rateSdKPerS: number;
  /** The bulb itself, freed of noise [°C], and how fast it moves [K/s]. */
  readonly bulbC: number;
  readonly bulbRateKPerS: number;
  /** Probability that vapour bathes the bulb. */
  readonly wet: number;
}

/** One joint belief over the vapour, the bulb and whether the one bathes the other. */
export interface VapourFilter {
  /** Begins anew with a dry bulb at a reading; of the vapour only a guess is known. */
  restart(valueC: number, guessC: number, guessSdK: number): void;
  /** Lets one second pass. */
  predict(): void;
  /** How far an observation lies from what the best of the models expects, in its standard deviations. */
  surprise(valueC: number): number;
  correct(valueC: number): void;
  /**
   * Holds the probability of vapour at the bulb down to what is possible at all: `possible` is that of vapour as cool as the
   * wet models take it for.
   */
  bound(possible: (vapourC: number) => number): void;
  /** Forgets how sure it was of bulb and vapour, after a confirmed jump of this size [K]. */
  loosen(jumpK: number): void;
  setNoise(noise: HeadNoise): void;
  state(): HeadState;
}

const count = models.length;
/** No model is ever given up for good: readings that speak for it can always bring it back; chosen here. */
const leastProbability = 1e-5;
/** A head that begins is dry, all but surely. */
const atFirst = [0.01, 0.01, 0.98];

/**
 * An interacting-multiple-model filter: three linear Gaussian models side by side, mixed after each reading by the
 * probabilities of change and weighed by how well each foretold the next. In the wet models the bulb follows the vapour with its
 * lag; in the dry one it goes its own way and can only be cooler, so no dip moves what is known of the vapour.
 *
 * Source: H. A. P. Blom, Y. Bar-Shalom, IEEE Trans. Automat. Contr. 33 (1988) 780, equations (3)–(9); from memory.
 *
 * @param lagTimeConstantS time in which a bathed bulb follows to 63 % [s]
 */
export function createVapourFilter(lagTimeConstantS: number, initial: HeadNoise): VapourFilter {
  const follow = lagTimeConstantS > 0.2 ? -Math.expm1(-1 / lagTimeConstantS) : 1;
  const beliefs = models.map(newGaussian);
  const transitions = models.map((model) => transitionOf(model, follow));
  const probabilities = new Float64Array(count);
  const logLikelihoods = new Float64Array(count);
  const mixing = createModelMixing();
  let noise = initial;
  let hasRead = true;

  return {
    restart: (valueC, guessC, guessSdK) => {
      for (const belief of beliefs) begin(belief, valueC, { valueC: guessC, sdK: guessSdK }, noise);
      probabilities.set(atFirst);
      hasRead = true;
    },
    predict: () => {
      if (hasRead) mixing.mix(beliefs, probabilities);
      else mixing.wait(probabilities);
      hasRead = false;
      for (let index = 0; index < count; index += 1) {
        passSecond(
          beliefs[index] as HeadGaussian,
          models[index] as Model,
          transitions[index] as SparseMatrix,
          noise,
        );
      }
    },
    surprise: (valueC) => leastSurprise(beliefs, valueC, noise),
    correct: (valueC) => {
      hasRead = true;
      for (let index = 0; index < count; index += 1) {
        const belief = beliefs[index] as HeadGaussian;
        const foretold = correctBy(belief, valueC, noise);
        logLikelihoods[index] =
          foretold + (models[index]?.isWet ? logWetPossible(belief) : logDryPossible(belief));
      }
      weigh(probabilities, logLikelihoods);
    },
    bound: (possible) => boundWet(beliefs, probabilities, possible),
    loosen: (jumpK) => {
      for (const belief of beliefs) loosen(belief, jumpK);
    },
    setNoise: (next) => {
      noise = next;
    },
    state: () => stateOf(beliefs, probabilities),
  };
}

/** By the best of the models. */
function leastSurprise(beliefs: readonly HeadGaussian[], valueC: number, noise: HeadNoise): number {
  let least = Number.POSITIVE_INFINITY;
  for (const belief of beliefs) {
    const sds = innovationOf(belief, valueC) / Math.sqrt(innovationVariance(belief, noise));
    if (Math.abs(sds) < Math.abs(least)) least = sds;
  }
  return least;
}

/** Bayes' rule over the models; none is ever given up for good. */
function weigh(probabilities: Float64Array, logLikelihoods: Float64Array): void {
  let most = Number.NEGATIVE_INFINITY;
  for (let index = 0; index < count; index += 1) {
    most = Math.max(most, logLikelihoods[index] as number);
  }
  let total = 0;
  for (let index = 0; index < count; index += 1) {
    const likelihood = Math.exp((logLikelihoods[index] as number) - most);
    const mass = (probabilities[index] as number) * likelihood;
    probabilities[index] = mass;
    total += mass;
  }
  for (let index = 0; index < count; index += 1) {
    probabilities[index] = Math.max(leastProbability, (probabilities[index] as number) / total);
  }
}

function boundWet(
  beliefs: readonly HeadGaussian[],
  probabilities: Float64Array,
  possible: (vapourC: number) => number,
): void {
  const course = probabilities[0] as number;
  const change = probabilities[1] as number;
  const dry = probabilities[2] as number;
  const wet = course + change;
  const vapourC =
    (course * meanAt(beliefs[0], place.vapour) + change * meanAt(beliefs[1], place.vapour)) / wet;
  const most = Math.max(2 * leastProbability, possible(vapourC));
  if (wet <= most) return;
  probabilities[0] = (course * most) / wet;
  probabilities[1] = (change * most) / wet;
  probabilities[2] = dry + wet - most;
}

function stateOf(beliefs: readonly HeadGaussian[], probabilities: Float64Array): HeadState {
  const vapourC = meanOfAll(beliefs, probabilities, place.vapour);
  const rateKPerS = meanOfAll(beliefs, probabilities, place.rate);
  return {
    vapourC,
    vapourSdK: sdOfAll(beliefs, probabilities, place.vapour, vapourC),
    rateKPerS,
    rateSdKPerS: sdOfAll(beliefs, probabilities, place.rate, rateKPerS),
    bulbC: meanOfAll(beliefs, probabilities, place.bulb),
    bulbRateKPerS: meanOfAll(beliefs, probabilities, place.drift),
    wet: (probabilities[0] as number) + (probabilities[1] as number),
  };
}

function meanOfAll(
  beliefs: readonly HeadGaussian[],
  probabilities: Float64Array,
  at: number,
): number {
  let sum = 0;
  for (let index = 0; index < count; index += 1) {
    sum += (probabilities[index] as number) * meanAt(beliefs[index], at);
  }
  return sum;
}

function sdOfAll(
  beliefs: readonly HeadGaussian[],
  probabilities: Float64Array,
  at: number,
  mean: number,
): number {
  let sum = 0;
  for (let index = 0; index < count; index += 1) {
    const belief = beliefs[index] as HeadGaussian;
    const off = meanAt(belief, at) - mean;
    sum += (probabilities[index] as number) * (Math.max(0, varianceAt(belief, at)) + off * off);
  }
  return Math.sqrt(sum);
}

function meanAt(belief: HeadGaussian | undefined, at: number): number {
  return belief?.mean[at] as number;
}
