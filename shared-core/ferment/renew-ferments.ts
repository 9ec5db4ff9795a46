import { type Random, systematicPicks } from '../random/index.ts';
import { doneWithin } from './advance-ferments.ts';
import { ferments, followTraits, type PossibleFerments, traitNames } from './possible-ferments.ts';

/** How far traits are nudged, of their spread: most a little, some boldly, so that no possibility dies out. */
const nudges = { little: 0.08, bold: 0.6, boldShare: 0.06 } as const;

/** Weights that sum to one. */
export function weightsOf({ logWeight }: PossibleFerments): Float64Array {
  return asWeights(logWeight);
}

function asWeights(logWeight: Float64Array): Float64Array {
  const highest = logWeight.reduce(
    (most, value) => Math.max(most, value),
    Number.NEGATIVE_INFINITY,
  );
  const weights = logWeight.map((value) => Math.exp(value - highest));
  const sum = weights.reduce((total, value) => total + value, 0);
  return weights.map((value) => value / sum);
}

/** How many ferments count, by the logarithms of their weights: one over the sum of the squared weights. */
export function effectiveCount(logWeight: Float64Array): number {
  const weights = asWeights(logWeight);
  return 1 / weights.reduce((sum, weight) => sum + weight * weight, 0);
}

/**
 * Draws the likely ferments again and leaves out the unlikely, once less than half of them count; traits are nudged
 * so that copies differ. While neither gravity nor sugar tells how far it goes, some begin anew with another range: masses that stood for a cold night and then
 * go on must find ferments that still have far to go.
 *
 * Source: systematic resampling; kernel with shrinkage after J. Liu, M. West, in: Sequential Monte Carlo Methods in Practice
 * (2001), 197 (from memory).
 */
export function renewFerments(cloud: PossibleFerments, random: Random, isEndTold: boolean): void {
  if (effectiveCount(cloud.logWeight) > ferments / 2) return;
  drawAgain(cloud, random);
  nudgeOriginals(cloud, random);
  for (let index = 0; index < ferments; index += 1) {
    if (!isEndTold && random.uniform() < nudges.boldShare) widenRange(cloud, index, random);
    nudgeTraits(cloud, index, random);
  }
}

/** Draws ferments again as often as they are likely, and gives all the same weight. */
export function drawAgain(cloud: PossibleFerments, random: Random): void {
  const chosen = systematicPicks(weightsOf(cloud), random);
  const { traits, lostBefore, ...others } = cloud;
  for (const values of [...Object.values(others), ...Object.values(traits), ...lostBefore]) {
    values.set(pick(values, chosen));
  }
  cloud.logWeight.fill(0);
}

/** Spread by which the speed of the last step is moved (logarithm). */
const speedShift = 0.15;

/** Moves what each has lost since the last evidence, and its vigour with it, as if it had gone slower or faster. */
export function shiftLastStep(cloud: PossibleFerments, timeH: number, random: Random): void {
  for (let index = 0; index < ferments; index += 1) {
    moveLastStep(cloud, index, timeH, Math.exp(speedShift * random.normal()));
  }
}

/** Slowest that a step is taken to have gone, of what was foreseen. */
const slowestStep = 0.05;

/** Lets the last step of one, which ended at a time [h], have gone by a factor faster. */
export function moveLastStep(
  cloud: PossibleFerments,
  index: number,
  timeH: number,
  factor: number,
): void {
  const faster = Math.max(slowestStep, factor);
  const before = cloud.lostAtEvidence[index] as number;
  const range = rangeOf(cloud, index);
  const lost = before + ((cloud.lost[index] as number) - before) * faster;
  cloud.lost[index] = Math.min(lost, range - 1e-6);
  cloud.vigour[index] = (cloud.vigour[index] as number) + Math.log(faster);
  const isDone = range - (cloud.lost[index] as number) <= doneWithin;
  if (!isDone) cloud.doneH[index] = Number.NaN;
  else if (Number.isNaN(cloud.doneH[index] as number)) cloud.doneH[index] = timeH;
}

/** How far the original gravity of one that begins anew may lie above what it has lost. */
const mostLeft = 0.06;

/** Another original gravity, any that what was lost allows; what was done is no longer. */
function widenRange(cloud: PossibleFerments, index: number, random: Random): void {
  cloud.original[index] = Math.min(
    1.16,
    1 + Math.max(0.012, cloud.lost[index] as number) + mostLeft * random.uniform(),
  );
  followTraits(cloud, index);
  const left = rangeOf(cloud, index) - (cloud.lost[index] as number);
  if (left > doneWithin) cloud.doneH[index] = Number.NaN;
  else cloud.lost[index] = Math.min(cloud.lost[index] as number, rangeOf(cloud, index) - 1e-6);
}

/** Original gravities move by a little of their spread and are drawn in as much, so that the spread stays. */
function nudgeOriginals({ original }: PossibleFerments, random: Random): void {
  const keep = Math.sqrt(1 - nudges.little ** 2);
  const mean = original.reduce((total, value) => total + value, 0) / ferments;
  const spread = Math.sqrt(
    original.reduce((total, value) => total + (value - mean) ** 2, 0) / ferments,
  );
  for (let index = 0; index < ferments; index += 1) {
    const value = original[index] as number;
    original[index] = mean + keep * (value - mean) + nudges.little * spread * random.normal();
  }
}

/** Traits move such that they stay normal; the present speed stays, which the readings know. */
function nudgeTraits(cloud: PossibleFerments, index: number, random: Random): void {
  const nudge = random.uniform() < nudges.boldShare ? nudges.bold : nudges.little;
  const keep = Math.sqrt(1 - nudge * nudge);
  const before = traitNames.map((name) => cloud.traits[name][index] as number);
  const speedBefore = logSpeed(cloud, index);
  for (const name of traitNames) {
    cloud.traits[name][index] =
      keep * (cloud.traits[name][index] as number) + nudge * random.normal();
  }
  followTraits(cloud, index);
  const isPossible = rangeOf(cloud, index) > (cloud.lost[index] as number) + 1e-5;
  if (!isPossible) {
    for (const [at, name] of traitNames.entries()) cloud.traits[name][index] = before[at] as number;
    followTraits(cloud, index);
  } else if (Number.isNaN(cloud.doneH[index] as number)) {
    cloud.logHours[index] =
      (cloud.logHours[index] as number) + logSpeed(cloud, index) - speedBefore;
  }
  // An original that was nudged down takes what was lost with it.
  const most = rangeOf(cloud, index) - 1e-6;
  cloud.lost[index] = Math.min(cloud.lost[index] as number, most);
}

function rangeOf(cloud: PossibleFerments, index: number): number {
  return (cloud.original[index] as number) - (cloud.end[index] as number);
}

/** Logarithm of the gravity lost in an hour, up to what traits don't change. */
function logSpeed(cloud: PossibleFerments, index: number): number {
  const range = rangeOf(cloud, index);
  const left = Math.max(1e-5, range - (cloud.lost[index] as number));
  return (
    Math.log(left) + ((cloud.power[index] as number) - 1) * Math.log(Math.max(1e-3, left / range))
  );
}

function pick(values: Float64Array, chosen: Uint32Array): Float64Array {
  return Float64Array.from(chosen, (index) => values[index] as number);
}
