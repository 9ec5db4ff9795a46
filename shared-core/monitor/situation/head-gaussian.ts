import { type HeadNoise, slowCorrelationS } from '../sense/head-noise.ts';
import {
  add,
  applyTo,
  copyValues,
  multiply,
  multiplyTransposed,
  type SparseMatrix,
  sparse,
} from './small-matrix.ts';
import type { Model } from './vapour-models.ts';

/** What one model believes: a normal distribution over vapour, its rate, bulb, the probe's slow noise, and the rate of a dry bulb. */
export interface HeadGaussian {
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
}

/** Places in the mean. */
export const place = { vapour: 0, rate: 1, bulb: 2, slow: 3, drift: 4 } as const;
export const size = 5;

/** What is left of the probe's slow noise after a second. */
const slowKept = Math.exp(-1 / slowCorrelationS);
/** A bulb without vapour goes on as it does for so long [s]. */
const driftKept = Math.exp(-1 / 33);
/** And on the whole it cools towards the room with such a time constant; by simulation, glass around it counted [s], [°C]. */
const coolingS = 600;
const roomC = 20;
/** What a bulb does besides, from a draught or a drop on it [K²/s]; chosen here. */
const bulbPower = 1e-5;
/** A jump says about as much of a change of rate as if it had taken half a minute [1/s²]. */
const jumpRatePerS2 = 1 / 30 ** 2;
/** A hundredth of a millikelvin: below it the rounding of sums could make a variance negative [K²]. */
const leastVariance = 1e-10;

const scratch = new Float64Array(size * size);
const gains = new Float64Array(size);

export function newGaussian(): HeadGaussian {
  return { mean: new Float64Array(size), covariance: new Float64Array(size * size) };
}

export function copyInto(into: HeadGaussian, from: HeadGaussian): void {
  copyValues(into.mean, from.mean);
  copyValues(into.covariance, from.covariance);
}

export function varianceAt({ covariance }: HeadGaussian, at: number): number {
  return covariance[at * (size + 1)] as number;
}

/** A variance that rounding has made negative is next to nothing. */
export function sdAt(belief: HeadGaussian, at: number): number {
  return Math.sqrt(Math.max(leastVariance, varianceAt(belief, at)));
}

/** A dry bulb at a reading; of the vapour only a guess is known. */
export function begin(
  { mean, covariance }: HeadGaussian,
  valueC: number,
  guess: { readonly valueC: number; readonly sdK: number },
  noise: HeadNoise,
): void {
  mean.set([guess.valueC, 0, valueC, 0, 0]);
  covariance.fill(0);
  const known = [guess.sdK ** 2, 1e-4, 0.1 + noise.slowSdK ** 2, noise.slowSdK ** 2, 0.05 ** 2];
  for (const [at, variance] of known.entries()) covariance[at * (size + 1)] = variance;
}

/** Lets one second pass. */
export function passSecond(
  { mean, covariance }: HeadGaussian,
  { isWet, levelPower, ratePower, driftPower }: Model,
  transition: SparseMatrix,
  noise: HeadNoise,
): void {
  applyTo(mean, transition, gains);
  if (!isWet) add(mean, place.drift, ((1 - driftKept) * roomC) / coolingS);
  multiply(transition, covariance, scratch);
  multiplyTransposed(scratch, transition, covariance);
  addVariance(covariance, place.vapour, levelPower);
  addVariance(covariance, place.rate, ratePower);
  addVariance(covariance, place.bulb, bulbPower);
  addVariance(covariance, place.slow, noise.slowSdK ** 2 * (1 - slowKept ** 2));
  addVariance(covariance, place.drift, driftPower);
}

/** How far a reading lies from what is expected [K], and the variance of that. */
export function innovationOf({ mean }: HeadGaussian, valueC: number): number {
  return valueC - (mean[place.bulb] as number) - (mean[place.slow] as number);
}

export function innovationVariance(belief: HeadGaussian, { whiteSdK }: HeadNoise): number {
  const together = belief.covariance[place.bulb * size + place.slow] as number;
  const expected = varianceAt(belief, place.bulb) + 2 * together + varianceAt(belief, place.slow);
  // After wild readings rounding may leave less than nothing of it.
  return Math.max(0, expected) + whiteSdK ** 2;
}

/** Corrects by a reading; returns the logarithm of how likely it was held. */
export function correctBy(belief: HeadGaussian, valueC: number, noise: HeadNoise): number {
  const { mean, covariance } = belief;
  const variance = innovationVariance(belief, noise);
  const innovation = innovationOf(belief, valueC);
  for (let row = 0; row < size; row += 1) {
    const ofBulb = covariance[row * size + place.bulb] as number;
    gains[row] = ofBulb + (covariance[row * size + place.slow] as number);
  }
  for (let row = 0; row < size; row += 1) {
    const gain = (gains[row] as number) / variance;
    add(mean, row, gain * innovation);
    for (let column = 0; column <= row; column += 1) {
      add(covariance, row * size + column, -gain * (gains[column] as number));
    }
  }
  keepPossible(covariance);
  return (-0.5 * innovation * innovation) / variance - 0.5 * Math.log(variance);
}

/**
 * Rounding must not make anything known better than surely, or two things go together more than wholly: both would grow without end.
 * What stands below the diagonal is told above it too.
 */
function keepPossible(covariance: Float64Array): void {
  for (let row = 0; row < size; row += 1) {
    const at = row * (size + 1);
    covariance[at] = Math.max(leastVariance, covariance[at] as number);
    for (let column = 0; column < row; column += 1) {
      const other = covariance[column * (size + 1)] as number;
      const most = Math.sqrt((covariance[at] as number) * other);
      const together = covariance[row * size + column] as number;
      const kept = Math.max(-most, Math.min(most, together));
      covariance[row * size + column] = kept;
      covariance[column * size + row] = kept;
    }
  }
}

/** Forgets how sure it was of bulb and vapour, after a confirmed jump of this size [K]. */
export function loosen({ covariance }: HeadGaussian, jumpK: number): void {
  const square = jumpK * jumpK;
  addVariance(covariance, place.vapour, square);
  addVariance(covariance, place.rate, square * jumpRatePerS2);
  addVariance(covariance, place.bulb, square);
}

/** What a model makes of the mean in one second; of the bulb, that it follows this share of its distance from the vapour. */
export function transitionOf({ isWet, rateKept }: Model, follow: number): SparseMatrix {
  return sparse(isWet ? wetRows(rateKept, follow) : dryRows(rateKept));
}

/** `θ += s`, `s *= ρ`, `p += f(θ − p)`, `a *= φ`; the bulb's own rate is what the vapour makes it. */
function wetRows(rateKept: number, follow: number): number[][] {
  return [
    [1, 1, 0, 0, 0],
    [0, rateKept, 0, 0, 0],
    [follow, 0, 1 - follow, 0, 0],
    [0, 0, 0, slowKept, 0],
    [follow, 0, -follow, 0, 0],
  ];
}

/** The vapour stays what it was, `p += c`, and `c` goes over to what cools the bulb towards the room. */
function dryRows(rateKept: number): number[][] {
  return [
    [1, 0, 0, 0, 0],
    [0, rateKept, 0, 0, 0],
    [0, 0, 1, 0, 1],
    [0, 0, 0, slowKept, 0],
    [0, 0, -(1 - driftKept) / coolingS, 0, driftKept],
  ];
}

function addVariance(covariance: Float64Array, at: number, variance: number): void {
  add(covariance, at * (size + 1), variance);
}
