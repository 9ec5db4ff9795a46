import type { HeadNoise } from '../sense/head-noise.ts';
import { logNormalCumulative } from './normal.ts';
import {
  add,
  addScaled,
  addSpread,
  applyTo,
  multiply,
  multiplyTransposed,
} from './small-matrix.ts';
import { changes, changesCourse, leaves, type Model, models } from './vapour-models.ts';

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

/** The vapour's temperature, its rate, the bulb, the probe's slow noise, and the rate of a bulb without vapour. */
const size = 5;
const [vapour, rate, bulb, slow, drift] = [0, size + 1, 2 * size + 2, 3 * size + 3, 4 * size + 4];

const count = models.length;
/** A bulb without vapour goes on as it does for so long [s]. */
const driftKept = Math.exp(-1 / 33);
/** And on the whole it cools towards the room with such a time constant; by simulation, glass around it counted [s], [°C]. */
const coolingS = 600;
const roomC = 20;
/** Vapour that has come back at another level shows it by the bulb it bathes: so far from it it may be [K]. */
const newLevelSdK = 1.5;

const leastProbability = 1e-5;
const leastVariance = 1e-10;
/** A bulb may read less than the vapour, hardly more: by a tenth of a kelvin at most (radiation, stem) [K]. */
const readsMoreK = 0.1;
/** Without vapour a bulb hardly warms: warm glass and rising air may do that much [K/s]. */
const warmsKPerS = 0.05;
/** Vapour that gets stronger, as a column fills or after a break, cools by no more than this for long [K/s]. */
const strengthensKPerS = 0.02;
const bulbPower = 1e-5;
/** A jump says about as much of a change of rate as if it had taken half a minute [1/s²]. */
const jumpRatePerS2 = 1 / 30 ** 2;

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
  const means = models.map(() => new Float64Array(size));
  const covariances = models.map(() => new Float64Array(size * size));
  const mixedMeans = models.map(() => new Float64Array(size));
  const mixedCovariances = models.map(() => new Float64Array(size * size));
  const transitions = models.map(() => new Float64Array(size * size));
  const probabilities = new Float64Array(count);
  const mixed = new Float64Array(count);
  const scratch = new Float64Array(size * size);
  const gains = new Float64Array(size);
  let noise = initial;
  let slowKept = 0;
  let hasRead = true;

  const setNoise = (next: HeadNoise): void => {
    noise = next;
    slowKept = Math.exp(-1 / next.slowCorrelationS);
    for (const [index, { isWet, rateKept }] of models.entries()) {
      const rows = isWet ? wetRows(rateKept, follow, slowKept) : dryRows(rateKept, slowKept);
      (transitions[index] as Float64Array).set(rows);
    }
  };
  setNoise(initial);

  /** Where a model's share comes from: vapour that changes its course after it was away is told by the bulb. */
  const renewed = { mean: new Float64Array(size), covariance: new Float64Array(size * size) };
  const renew = (): void => {
    const from = models.indexOf(leaves);
    renewed.mean.set(means[from] as Float64Array);
    renewed.covariance.set(covariances[from] as Float64Array);
    renewed.mean[0] = renewed.mean[2] as number;
    renewed.mean[1] = 0;
    for (let at = 1; at < size; at += 1) {
      renewed.covariance[at] = 0;
      renewed.covariance[at * size] = 0;
    }
    renewed.covariance[vapour] = newLevelSdK ** 2;
  };
  const meanFrom = (from: number, to: number): Float64Array =>
    models[from] === leaves && models[to] === changesCourse
      ? renewed.mean
      : (means[from] as Float64Array);
  const covarianceFrom = (from: number, to: number): Float64Array =>
    models[from] === leaves && models[to] === changesCourse
      ? renewed.covariance
      : (covariances[from] as Float64Array);

  const flowInto = (to: number): number => {
    let total = 0;
    for (let from = 0; from < count; from += 1) total += flow(from, to, probabilities);
    return total;
  };

  const mixInto = (to: number): void => {
    const mean = (mixedMeans[to] as Float64Array).fill(0);
    const covariance = (mixedCovariances[to] as Float64Array).fill(0);
    const total = flowInto(to);
    mixed[to] = total;
    for (let from = 0; from < count; from += 1) {
      addScaled(mean, meanFrom(from, to), flow(from, to, probabilities) / total);
    }
    for (let from = 0; from < count; from += 1) {
      const weight = flow(from, to, probabilities) / total;
      addSpread(covariance, covarianceFrom(from, to), meanFrom(from, to), mean, weight);
    }
  };

  /** Without a reading only the probabilities change: states mixed again and again would lose what each model holds. */
  const wait = (): void => {
    for (let to = 0; to < count; to += 1) mixed[to] = flowInto(to);
    probabilities.set(mixed);
  };

  const mix = (): void => {
    renew();
    for (let to = 0; to < count; to += 1) mixInto(to);
    for (let index = 0; index < count; index += 1) {
      (means[index] as Float64Array).set(mixedMeans[index] as Float64Array);
      (covariances[index] as Float64Array).set(mixedCovariances[index] as Float64Array);
    }
    probabilities.set(mixed);
  };

  const pass = (index: number): void => {
    const { isWet, levelPower, ratePower, driftPower } = models[index] as Model;
    const mean = means[index] as Float64Array;
    const covariance = covariances[index] as Float64Array;
    const transition = transitions[index] as Float64Array;
    applyTo(mean, transition, gains);
    if (!isWet) add(mean, 4, ((1 - driftKept) * roomC) / coolingS);
    multiply(transition, covariance, scratch, size);
    multiplyTransposed(scratch, transition, covariance, size);
    add(covariance, vapour, levelPower);
    add(covariance, rate, ratePower);
    add(covariance, bulb, bulbPower);
    add(covariance, slow, noise.slowSdK ** 2 * (1 - slowKept ** 2));
    add(covariance, drift, driftPower);
  };

  const varianceOf = (covariance: Float64Array): number =>
    (covariance[bulb] as number) +
    2 * (covariance[bulb + 1] as number) +
    (covariance[slow] as number) +
    noise.whiteSdK ** 2;

  const innovationOf = (mean: Float64Array, valueC: number): number =>
    valueC - (mean[2] as number) - (mean[3] as number);

  /** Corrects one model; returns the logarithm of how likely it held the observation. */
  const correctOne = (index: number, valueC: number): number => {
    const mean = means[index] as Float64Array;
    const covariance = covariances[index] as Float64Array;
    const variance = varianceOf(covariance);
    const innovation = innovationOf(mean, valueC);
    for (let row = 0; row < size; row += 1) {
      gains[row] = (covariance[row * size + 2] as number) + (covariance[row * size + 3] as number);
    }
    for (let row = 0; row < size; row += 1) {
      const gain = (gains[row] as number) / variance;
      mean[row] = (mean[row] as number) + gain * innovation;
      for (let column = 0; column < size; column += 1) {
        add(covariance, row * size + column, -gain * (gains[column] as number));
      }
    }
    return (-0.5 * innovation * innovation) / variance - 0.5 * Math.log(variance);
  };

  /** A pot weakens: its vapour gets hotter, or stays; it is the bulb without vapour that cools by the minute. */
  const wetShare = (index: number): number => {
    const sdKPerS = sdOf(covariances[index] as Float64Array, rate);
    const stays = (((means[index] as Float64Array)[1] as number) + strengthensKPerS) / sdKPerS;
    return logNormalCumulative(stays);
  };

  const dryShare = (index: number): number => {
    const mean = means[index] as Float64Array;
    const covariance = covariances[index] as Float64Array;
    const coolerSdK = Math.hypot(sdOf(covariance, vapour), readsMoreK);
    const cooler = ((mean[0] as number) + readsMoreK - (mean[2] as number)) / coolerSdK;
    const falls = (warmsKPerS - (mean[4] as number)) / sdOf(covariance, drift);
    return logNormalCumulative(cooler) + logNormalCumulative(falls);
  };

  const mean = (at: number): number => {
    let sum = 0;
    for (let index = 0; index < count; index += 1) {
      sum += (probabilities[index] as number) * ((means[index] as Float64Array)[at] as number);
    }
    return sum;
  };

  const sd = (at: number, meanOfAll: number): number => {
    let sum = 0;
    for (let index = 0; index < count; index += 1) {
      const off = ((means[index] as Float64Array)[at] as number) - meanOfAll;
      const variance = (covariances[index] as Float64Array)[at * (size + 1)] as number;
      sum += (probabilities[index] as number) * (Math.max(0, variance) + off * off);
    }
    return Math.sqrt(sum);
  };

  return {
    restart: (valueC, guessC, guessSdK) => {
      for (let index = 0; index < count; index += 1) {
        (means[index] as Float64Array).set([guessC, 0, valueC, 0, 0]);
        const covariance = (covariances[index] as Float64Array).fill(0);
        covariance[vapour] = guessSdK ** 2;
        covariance[rate] = 1e-4;
        covariance[bulb] = 0.1 + noise.slowSdK ** 2;
        covariance[slow] = noise.slowSdK ** 2;
        covariance[drift] = 0.05 ** 2;
      }
      probabilities.set([0.01, 0.01, 0.98]);
      hasRead = true;
    },
    predict: () => {
      if (hasRead) mix();
      else wait();
      hasRead = false;
      for (let index = 0; index < count; index += 1) pass(index);
    },
    surprise: (valueC) => {
      let least = Number.POSITIVE_INFINITY;
      for (let index = 0; index < count; index += 1) {
        const covariance = covariances[index] as Float64Array;
        const sds =
          innovationOf(means[index] as Float64Array, valueC) / Math.sqrt(varianceOf(covariance));
        if (Math.abs(sds) < Math.abs(least)) least = sds;
      }
      return least;
    },
    correct: (valueC) => {
      hasRead = true;
      let most = Number.NEGATIVE_INFINITY;
      for (let index = 0; index < count; index += 1) {
        let logLikelihood = correctOne(index, valueC);
        logLikelihood += (models[index] as Model).isWet ? wetShare(index) : dryShare(index);
        mixed[index] = logLikelihood;
        most = Math.max(most, logLikelihood);
      }
      let total = 0;
      for (let index = 0; index < count; index += 1) {
        const mass = (probabilities[index] as number) * Math.exp((mixed[index] as number) - most);
        probabilities[index] = mass;
        total += mass;
      }
      for (let index = 0; index < count; index += 1) {
        probabilities[index] = Math.max(leastProbability, (probabilities[index] as number) / total);
      }
    },
    bound: (possible) => {
      const [course = 0, change = 0, dry = 0] = probabilities;
      const wet = course + change;
      const vapourC =
        (course * ((means[0] as Float64Array)[0] as number) +
          change * ((means[1] as Float64Array)[0] as number)) /
        wet;
      const most = Math.max(2 * leastProbability, possible(vapourC));
      if (wet <= most) return;
      probabilities.set([(course * most) / wet, (change * most) / wet, dry + wet - most]);
    },
    loosen: (jumpK) => {
      const square = jumpK * jumpK;
      for (const covariance of covariances) {
        add(covariance, vapour, square);
        add(covariance, rate, square * jumpRatePerS2);
        add(covariance, bulb, square);
      }
    },
    setNoise,
    state: () => {
      const vapourC = mean(0);
      const rateKPerS = mean(1);
      return {
        vapourC,
        vapourSdK: sd(0, vapourC),
        rateKPerS,
        rateSdKPerS: sd(1, rateKPerS),
        bulbC: mean(2),
        bulbRateKPerS: mean(4),
        wet: (probabilities[0] as number) + (probabilities[1] as number),
      };
    },
  };
}

/** `θ += s`, `s *= ρ`, `p += f(θ − p)`, `a *= φ`; the bulb's own rate is what the vapour makes it. */
function wetRows(rateKept: number, follow: number, slowKept: number): number[] {
  return [
    [1, 1, 0, 0, 0],
    [0, rateKept, 0, 0, 0],
    [follow, 0, 1 - follow, 0, 0],
    [0, 0, 0, slowKept, 0],
    [follow, 0, -follow, 0, 0],
  ].flat();
}

/** The vapour stays what it was, `p += c`, and `c` goes over to what cools the bulb towards the room. */
function dryRows(rateKept: number, slowKept: number): number[] {
  return [
    [1, 0, 0, 0, 0],
    [0, rateKept, 0, 0, 0],
    [0, 0, 1, 0, 1],
    [0, 0, 0, slowKept, 0],
    [0, 0, -(1 - driftKept) / coolingS, 0, driftKept],
  ].flat();
}

/** A variance that rounding has made negative is next to nothing. */
function sdOf(covariance: Float64Array, at: number): number {
  return Math.sqrt(Math.max(leastVariance, covariance[at] as number));
}

function flow(from: number, to: number, probabilities: Float64Array): number {
  return ((changes[from] as readonly number[])[to] as number) * (probabilities[from] as number);
}
