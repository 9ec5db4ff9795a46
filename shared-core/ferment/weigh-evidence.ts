import type { Random } from '../random/index.ts';
import { gravityPerH } from './advance-ferments.ts';
import type { FermentFacts } from './ferment-log.ts';
import { type GasBudget, lostPerGasG, usualGasG } from './gas-budget.ts';
import type { Evidence, Measured } from './gather-evidence.ts';
import { carbonDioxidePerAbvGPerL } from './mass-loss.ts';
import {
  ferments,
  followTraits,
  type PossibleFerments,
  possibleOriginal,
  unknownMassG2,
} from './possible-ferments.ts';
import { abvPerGravity } from './practical-end.ts';
import { moveLastStep, weightsOf } from './renew-ferments.ts';

/** Shares of readings that are misread or mistyped, and by how much then; common practice, no source. */
const misread = {
  gravity: 0.02,
  gravityBy: 0.012,
  gravityAnywhere: 0.1,
  mass: 0.005,
  massByG: 60,
  bubbles: 0.2,
} as const;
/** A mistyped gravity may be any on the scale, with this density (as {@link density} counts, without the root of 2π). */
const anyGravity = Math.sqrt(2 * Math.PI) / 0.16;
/** Counts of bubbles scatter by this (logarithm); below the least, a lock may as well leak. */
const bubbleScatter = 0.4;
const leastBubbles = 0.4;

/** What surrounds a piece of evidence: the warmth that the speed goes with beside 20 °C [K], and where the gas went. */
export interface Surroundings {
  readonly facts: FermentFacts;
  readonly warmthK: number;
  readonly budget: GasBudget;
}

const density = (off: number, uncertainty: number) =>
  Math.exp(-0.5 * (off / uncertainty) ** 2) / uncertainty;

/** Logarithm of how likely one possible ferment makes a piece of evidence. */
export function logLikelihood(
  cloud: PossibleFerments,
  index: number,
  { gravity, massG, bubblesPerMin, timeH }: Evidence,
  { facts, warmthK, budget }: Surroundings,
): number {
  let log = 0;
  if (gravity !== null) {
    const { right, wrong } = gravityLikelihoods(cloud, index, gravity);
    log += Math.log(right + wrong + 1e-300);
  }
  if (massG !== null) {
    const { usual, anew } = massLikelihoods(cloud, index, massG, facts, budget);
    log += Math.log(usual + anew + 1e-300);
  }
  if (bubblesPerMin !== null) {
    const expected = expectedBubbles(
      cloud,
      index,
      facts,
      gravityPerH(cloud, index, timeH, warmthK),
    );
    const { seen, nothing } = bubbleLikelihoods(cloud, index, bubblesPerMin, expected);
    log += Math.log(seen + nothing + 1e-300);
  }
  return log;
}

/** How likely a gravity was misread, once its evidence was weighed. */
export function doubtOfGravity(cloud: PossibleFerments, gravity: Measured): number {
  return weightsOf(cloud).reduce((sum, weight, index) => {
    const { right, wrong } = gravityLikelihoods(cloud, index, gravity);
    return sum + (right + wrong > 0 ? (weight * wrong) / (right + wrong) : weight);
  }, 0);
}

/** Lets each possible ferment learn what a piece of evidence tells of its vessel, its gas and its air lock. */
export function learnFromEvidence(
  cloud: PossibleFerments,
  { gravity, massG, bubblesPerMin, timeH }: Evidence,
  surroundings: Surroundings,
  random: Random,
): void {
  const { facts, warmthK } = surroundings;
  for (let index = 0; index < ferments; index += 1) {
    if (gravity !== null) learnGravity(cloud, index, timeH, gravity, random);
    if (massG !== null) learnMass(cloud, index, timeH, massG, surroundings, random);
    if (bubblesPerMin !== null && bubblesPerMin >= leastBubbles) {
      const perH = gravityPerH(cloud, index, timeH, warmthK);
      learnBubbles(cloud, index, bubblesPerMin, expectedBubbles(cloud, index, facts, perH));
    }
  }
}

/** Where the original is open, a gravity is as likely as the original that it asks for. */
function gravityLikelihoods(
  cloud: PossibleFerments,
  index: number,
  { value, uncertainty }: Measured,
): { readonly right: number; readonly wrong: number } {
  const asked = value + (cloud.lost[index] as number);
  const off = asked - (cloud.original[index] as number);
  const isOpen = (cloud.originalSpread[index] as number) > 0;
  const right = isOpen
    ? density(
        asked - (cloud.originalCentre[index] as number),
        Math.hypot(cloud.originalSpread[index] as number, uncertainty),
      )
    : density(off, Math.hypot(uncertainty, speedOfStep * lastStep(cloud, index)));
  return {
    right: (1 - misread.gravity) * right,
    wrong:
      misread.gravity *
      ((1 - misread.gravityAnywhere) * density(off, Math.hypot(uncertainty, misread.gravityBy)) +
        misread.gravityAnywhere * anyGravity),
  };
}

/** Gravity that one has lost since the last evidence. */
function lastStep(cloud: PossibleFerments, index: number): number {
  return (cloud.lost[index] as number) - (cloud.lostAtEvidence[index] as number);
}

/** Learns the speed of the last step from a gravity, or the original where that is open; nothing from one taken for misread. */
function learnGravity(
  cloud: PossibleFerments,
  index: number,
  timeH: number,
  gravity: Measured,
  random: Random,
): void {
  const { right, wrong } = gravityLikelihoods(cloud, index, gravity);
  if (random.uniform() * (right + wrong) < wrong) return;
  const asked = gravity.value + (cloud.lost[index] as number);
  const variance = gravity.uncertainty ** 2;
  const spread = cloud.originalSpread[index] as number;
  if (spread === 0) {
    const off = asked - (cloud.original[index] as number);
    learnStep(cloud, index, { timeH, off, step: lastStep(cloud, index), variance }, random);
    return;
  }
  const centre = cloud.originalCentre[index] as number;
  const gain = spread ** 2 / (spread ** 2 + variance);
  const drawn = centre + gain * (asked - centre) + Math.sqrt(gain * variance) * random.normal();
  cloud.original[index] = possibleOriginal(drawn);
  cloud.originalSpread[index] = 0;
  followTraits(cloud, index);
}

/** A mass beside what one possible ferment expects [g]. */
interface MassBeside {
  /** Gas that has left it with all it took along, and what of that left since the last evidence. */
  readonly gasG: number;
  readonly off: number;
  readonly stepG: number;
  /** Variance but for the speed of the last step. */
  readonly variance: number;
}

function massBeside(
  cloud: PossibleFerments,
  index: number,
  { value, uncertainty }: Measured,
  facts: FermentFacts,
  budget: GasBudget,
): MassBeside {
  const perGas = lostPerGasG(budget);
  const gasYield = cloud.gasYield[index] as number;
  const madeG = usualGasG(cloud, index, facts.volumeMl);
  const isAbove = madeG > budget.heldG;
  const gasG = isAbove ? madeG * perGas : 0;
  const read = value + (isAbove ? -budget.heldG * perGas : 0);
  const stepShare =
    1 - (cloud.lostAtEvidence[index] as number) / Math.max(1e-9, cloud.lost[index] as number);
  return {
    gasG,
    off: read - (cloud.mass[index] as number) + gasG * gasYield,
    stepG: gasG * gasYield * stepShare,
    variance: massSpread(cloud, index, gasG) + uncertainty ** 2,
  };
}

function massLikelihoods(
  cloud: PossibleFerments,
  index: number,
  measured: Measured,
  facts: FermentFacts,
  budget: GasBudget,
): { readonly usual: number; readonly anew: number } {
  if ((cloud.massVariance[index] as number) >= unknownMassG2) return { usual: 1, anew: 0 };
  const { off, variance, stepG } = massBeside(cloud, index, measured, facts, budget);
  const spread = Math.hypot(Math.sqrt(variance), speedOfStep * stepG);
  return {
    usual: (1 - misread.mass) * density(off, spread),
    // Something was taken away or put on the balance: it counts anew from here.
    anew: misread.mass * density(off, Math.hypot(spread, misread.massByG)),
  };
}

/** In each ferment the first mass and the yield are known as far as the masses so far tell: a Kalman filter of two states. */
function learnMass(
  cloud: PossibleFerments,
  index: number,
  timeH: number,
  measured: Measured,
  { facts, budget }: Surroundings,
  random: Random,
): void {
  const { usual, anew } = massLikelihoods(cloud, index, measured, facts, budget);
  if (random.uniform() * (usual + anew) < anew) {
    cloud.massVariance[index] = unknownMassG2;
    cloud.massGasCovariance[index] = 0;
  } else {
    const { off, stepG, variance } = massBeside(cloud, index, measured, facts, budget);
    learnStep(cloud, index, { timeH, off, step: stepG, variance }, random);
  }
  const [mass, both, gas] = [
    cloud.massVariance[index] as number,
    cloud.massGasCovariance[index] as number,
    cloud.gasYieldVariance[index] as number,
  ];
  const { gasG, off, variance } = massBeside(cloud, index, measured, facts, budget);
  const toMass = (mass - gasG * both) / variance;
  const toGas = (both - gasG * gas) / variance;
  cloud.mass[index] = (cloud.mass[index] as number) + toMass * off;
  cloud.gasYield[index] = (cloud.gasYield[index] as number) + toGas * off;
  cloud.massVariance[index] = mass - toMass * toMass * variance;
  cloud.massGasCovariance[index] = both - toMass * toGas * variance;
  cloud.gasYieldVariance[index] = Math.max(1e-9, gas - toGas * toGas * variance);
}

/** Spread of a step's speed about what was foreseen (share); the model's shape is no ferment's. Common practice, no source. */
const speedOfStep = 0.1;

/** The last step: when it ended [h], and in one unit what is off, how much it made, and the variance of the rest. */
interface Step {
  readonly timeH: number;
  readonly off: number;
  readonly step: number;
  readonly variance: number;
}

/** Draws how much faster or slower the last step went, by what is off and how much of it the step could have made. */
function learnStep(
  cloud: PossibleFerments,
  index: number,
  { timeH, off, step, variance }: Step,
  random: Random,
): void {
  const total = variance + (speedOfStep * step) ** 2;
  const mean = (-off * step * speedOfStep ** 2) / total;
  const spread = speedOfStep * Math.sqrt(variance / total);
  moveLastStep(cloud, index, timeH, 1 + mean + spread * random.normal());
}

function massSpread(cloud: PossibleFerments, index: number, gasG: number): number {
  return (
    (cloud.massVariance[index] as number) -
    2 * gasG * (cloud.massGasCovariance[index] as number) +
    gasG * gasG * (cloud.gasYieldVariance[index] as number)
  );
}

/** Range of logarithms that a count may have when it tells nothing. */
const anyCount = 1 / 9;

/** Logarithm of the bubbles a minute that a possible ferment would show. */
function expectedBubbles(
  cloud: PossibleFerments,
  index: number,
  facts: FermentFacts,
  perH: number,
): number {
  const gasGPerH =
    abvPerGravity(cloud.original[index] as number) *
    perH *
    carbonDioxidePerAbvGPerL *
    (facts.volumeMl / 1000);
  return Math.log(gasGPerH + 1e-6) + (cloud.bubbles[index] as number);
}

function bubbleLikelihoods(
  cloud: PossibleFerments,
  index: number,
  bubblesPerMin: number,
  expected: number,
): { readonly seen: number; readonly nothing: number } {
  const spread = Math.hypot(Math.sqrt(cloud.bubblesVariance[index] as number), bubbleScatter);
  if (bubblesPerMin < leastBubbles) {
    const unseen = 1 / (1 + Math.exp((1.7 * (expected - Math.log(leastBubbles))) / spread));
    return { seen: (1 - misread.bubbles) * unseen, nothing: misread.bubbles };
  }
  const off = Math.log(bubblesPerMin) - expected;
  return {
    seen: ((1 - misread.bubbles) * density(off, spread)) / Math.sqrt(2 * Math.PI),
    nothing: misread.bubbles * anyCount,
  };
}

function learnBubbles(
  cloud: PossibleFerments,
  index: number,
  bubblesPerMin: number,
  expected: number,
): void {
  const { seen, nothing } = bubbleLikelihoods(cloud, index, bubblesPerMin, expected);
  if (seen <= nothing) return;
  const known = cloud.bubblesVariance[index] as number;
  const gain = known / (known + bubbleScatter ** 2);
  cloud.bubbles[index] =
    (cloud.bubbles[index] as number) + gain * (Math.log(bubblesPerMin) - expected);
  cloud.bubblesVariance[index] = known * (1 - gain) + 0.01;
}
