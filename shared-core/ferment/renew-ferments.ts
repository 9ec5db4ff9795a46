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
  let highest = Number.NEGATIVE_INFINITY;
  for (const value of logWeight) highest = Math.max(highest, value);
  const weights = new Float64Array(logWeight.length);
  let sum = 0;
  for (let index = 0; index < weights.length; index += 1) {
    const weight = Math.exp((logWeight[index] as number) - highest);
    weights[index] = weight;
    sum += weight;
  }
  for (let index = 0; index < weights.length; index += 1)
    weights[index] = (weights[index] as number) / sum;
  return weights;
}

/** One number for those that don't believe the first gravity, and one for those that do. */
type OfKinds = [others: number, believers: number];

/** Which of its kind's numbers belong to one. */
function kindOf({ believesFirst }: PossibleFerments, index: number): 0 | 1 {
  return believesFirst[index] === 1 ? 1 : 0;
}

function kindWeights(cloud: PossibleFerments, weights: Float64Array): OfKinds {
  const sums: OfKinds = [0, 0];
  for (let index = 0; index < ferments; index += 1) {
    sums[kindOf(cloud, index)] += weights[index] as number;
  }
  return sums;
}

/**
 * What a weight of each kind is multiplied by in a drawing: a kind is drawn as often as the root of its weight says. Those that don't
 * believe the first gravity are often one in ten, and the upper end of the strength is theirs: by their weight alone they would be few, and few
 * ferments of so many strengths say where that end lies only by chance.
 *
 * Source: between drawing by weight and by weight times spread, which is best for strata (J. Neyman, J. R. Stat. Soc. 97 (1934) 558, from memory).
 */
function drawingFactors([others, believers]: OfKinds): OfKinds {
  const [root, rootOfBelievers] = [Math.sqrt(others), Math.sqrt(believers)];
  const sum = root + rootOfBelievers;
  return [root > 0 ? 1 / (root * sum) : 0, rootOfBelievers > 0 ? 1 / (rootOfBelievers * sum) : 0];
}

/**
 * How many ferments count, by the logarithms of their weights: one over the sum of the squared shares that they would have in a
 * drawing (see {@link drawAgain}).
 */
export function effectiveCount(cloud: PossibleFerments, logWeight = cloud.logWeight): number {
  const shares = drawingShares(cloud, asWeights(logWeight));
  let squares = 0;
  for (const share of shares) squares += share * share;
  return 1 / squares;
}

/** Share of the picks that each has a right to; they sum to one. */
function drawingShares(cloud: PossibleFerments, weights: Float64Array): Float64Array {
  const factors = drawingFactors(kindWeights(cloud, weights));
  const shares = new Float64Array(ferments);
  for (let index = 0; index < ferments; index += 1) {
    shares[index] = (weights[index] as number) * factors[kindOf(cloud, index)];
  }
  return shares;
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
  if (effectiveCount(cloud) > ferments / 2) return;
  drawAgain(cloud, random);
  nudgeOriginals(cloud, random);
  const traits = traitNames.map((name) => cloud.traits[name]);
  for (let index = 0; index < ferments; index += 1) {
    if (!isEndTold && random.uniform() < nudges.boldShare) widenRange(cloud, index, random);
    nudgeTraits(cloud, traits, index, random);
  }
}

/**
 * Draws ferments again as often as they are likely among their kind. The weight of each kind stays what it was, with no chance in
 * it, and is the same for all that are of it.
 */
export function drawAgain(cloud: PossibleFerments, random: Random): void {
  const weights = weightsOf(cloud);
  const before = kindWeights(cloud, weights);
  const chosen = systematicPicks(drawingShares(cloud, weights), random);
  const { traits, lostBefore, ...others } = cloud;
  const picked = new Float64Array(ferments);
  for (const values of [...Object.values(others), ...Object.values(traits), ...lostBefore]) {
    for (let place = 0; place < ferments; place += 1) {
      picked[place] = values[chosen[place] as number] as number;
    }
    values.set(picked);
  }
  const counts = kindWeights(cloud, cloud.logWeight.fill(1));
  const logWeights = before.map((weight, kind) => Math.log(weight / (counts[kind] as number)));
  for (let index = 0; index < ferments; index += 1) {
    cloud.logWeight[index] = logWeights[kindOf(cloud, index)] as number;
  }
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

/**
 * Original gravities move by a little of their spread and are drawn in as much, so that the spread stays: each kind by its own, or
 * those that believe what was read would be spread as wide as those that do not.
 */
function nudgeOriginals(cloud: PossibleFerments, random: Random): void {
  const { original } = cloud;
  const keep = Math.sqrt(1 - nudges.little ** 2);
  for (const kind of [0, 1]) {
    const alike = original.filter((_, index) => kindOf(cloud, index) === kind);
    const mean = alike.reduce((total, value) => total + value, 0) / alike.length;
    const variance = alike.reduce((total, value) => total + (value - mean) ** 2, 0) / alike.length;
    const nudge = nudges.little * Math.sqrt(variance);
    for (let index = 0; index < ferments; index += 1) {
      if (kindOf(cloud, index) !== kind) continue;
      const value = original[index] as number;
      original[index] = mean + keep * (value - mean) + nudge * random.normal();
    }
  }
}

/** Traits move such that they stay normal; the present speed stays, which the readings know. */
function nudgeTraits(
  cloud: PossibleFerments,
  traits: readonly Float64Array[],
  index: number,
  random: Random,
): void {
  const nudge = random.uniform() < nudges.boldShare ? nudges.bold : nudges.little;
  const keep = Math.sqrt(1 - nudge * nudge);
  const speedBefore = logSpeed(cloud, index);
  const before = traits.map((trait) => trait[index] as number);
  for (const trait of traits) {
    trait[index] = keep * (trait[index] as number) + nudge * random.normal();
  }
  followTraits(cloud, index);
  const isPossible = rangeOf(cloud, index) > (cloud.lost[index] as number) + 1e-5;
  if (!isPossible) {
    for (const [at, trait] of traits.entries()) trait[index] = before[at] as number;
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
