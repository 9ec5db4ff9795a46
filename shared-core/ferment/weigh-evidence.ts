import type { Random } from '../random/index.ts';
import { gravityPerH } from './advance-ferments.ts';
import type { FermentFacts } from './ferment-log.ts';
import { type GasBudget, lostPerGasG, usualGasG } from './gas-budget.ts';
import type { Evidence, Measured } from './gather-evidence.ts';
import { carbonDioxidePerAbvGPerL } from './mass-loss.ts';
import { ferments, type PossibleFerments, unknownMassG2 } from './possible-ferments.ts';
import { abvPerGravity } from './practical-end.ts';
import { weightsOf } from './renew-ferments.ts';

/** Shares of readings that are misread or mistyped, and by how much then; common practice, no source. */
const misread = {
  gravity: 0.02,
  gravityBy: 0.012,
  mass: 0.005,
  massByG: 60,
  bubbles: 0.2,
} as const;
/** Counts of bubbles scatter by this (logarithm); below the least, a lock may as well leak. */
const bubbleScatter = 0.4;
const leastBubbles = 0.4;

/**
 * Changes the weights by what one piece of evidence says.
 *
 * @returns how likely its gravity was misread; null where it has none, or it is the first
 */
export function weighEvidence(
  cloud: PossibleFerments,
  evidence: Evidence,
  facts: FermentFacts,
  { warmthK, budget }: { readonly warmthK: number; readonly budget: GasBudget },
  random: Random,
  isFirst: boolean,
): number | null {
  const { gravity, massG, bubblesPerMin, timeH } = evidence;
  // The first gravity was believed, or not, when the ferments were drawn.
  const doubt = gravity === null || isFirst ? null : weighGravity(cloud, gravity);
  if (massG !== null) weighMass(cloud, massG, facts, budget, random);
  if (bubblesPerMin !== null) {
    for (let index = 0; index < ferments; index += 1) {
      weighBubbles(cloud, index, bubblesPerMin, facts, gravityPerH(cloud, index, timeH, warmthK));
    }
  }
  return doubt;
}

const density = (off: number, uncertainty: number) =>
  Math.exp(-0.5 * (off / uncertainty) ** 2) / uncertainty;

function add(cloud: PossibleFerments, index: number, likelihood: number): void {
  cloud.logWeight[index] = (cloud.logWeight[index] as number) + Math.log(likelihood + 1e-300);
}

function weighGravity(cloud: PossibleFerments, { value, uncertainty }: Measured): number {
  const wide = Math.hypot(uncertainty, misread.gravityBy);
  const before = weightsOf(cloud);
  let [asMisread, inAll] = [0, 0];
  for (let index = 0; index < ferments; index += 1) {
    const off = value - (cloud.original[index] as number) + (cloud.lost[index] as number);
    const wrong = misread.gravity * density(off, wide);
    const likelihood = (1 - misread.gravity) * density(off, uncertainty) + wrong;
    asMisread += (before[index] as number) * wrong;
    inAll += (before[index] as number) * likelihood;
    add(cloud, index, likelihood);
  }
  return inAll > 0 ? asMisread / inAll : 1;
}

/** In each ferment the first mass and the yield are known as far as the masses so far tell: a Kalman filter of two states. */
function weighMass(
  cloud: PossibleFerments,
  { value, uncertainty }: Measured,
  facts: FermentFacts,
  budget: GasBudget,
  random: Random,
): void {
  const carried = lostPerGasG(budget);
  const dissolvedG = budget.heldG;
  const variance = uncertainty ** 2;
  for (let index = 0; index < ferments; index += 1) {
    const madeG = usualGasG(cloud, index, facts.volumeMl);
    const isAbove = madeG > dissolvedG;
    const gasG = isAbove ? madeG * carried : 0;
    const read = value + (isAbove ? -dissolvedG * carried : 0);
    const spread = Math.sqrt(massSpread(cloud, index, gasG) + variance);
    const off = read - (cloud.mass[index] as number) + gasG * (cloud.gasYield[index] as number);
    if ((cloud.massVariance[index] as number) < unknownMassG2) {
      const usual = (1 - misread.mass) * density(off, spread);
      // Something was taken away or put on the balance: it counts anew from here.
      const anew = misread.mass * density(off, Math.hypot(spread, misread.massByG));
      add(cloud, index, usual + anew);
      if (random.uniform() * (usual + anew) < anew) {
        cloud.massVariance[index] = unknownMassG2;
        cloud.massGasCovariance[index] = 0;
      }
    }
    learnMass(cloud, index, gasG, read, variance);
  }
}

function massSpread(cloud: PossibleFerments, index: number, gasG: number): number {
  return (
    (cloud.massVariance[index] as number) -
    2 * gasG * (cloud.massGasCovariance[index] as number) +
    gasG * gasG * (cloud.gasYieldVariance[index] as number)
  );
}

function learnMass(
  cloud: PossibleFerments,
  index: number,
  gasG: number,
  read: number,
  variance: number,
): void {
  const [mass, both, gas] = [
    cloud.massVariance[index] as number,
    cloud.massGasCovariance[index] as number,
    cloud.gasYieldVariance[index] as number,
  ];
  const total = massSpread(cloud, index, gasG) + variance;
  const toMass = (mass - gasG * both) / total;
  const toGas = (both - gasG * gas) / total;
  const off = read - (cloud.mass[index] as number) + gasG * (cloud.gasYield[index] as number);
  cloud.mass[index] = (cloud.mass[index] as number) + toMass * off;
  cloud.gasYield[index] = (cloud.gasYield[index] as number) + toGas * off;
  cloud.massVariance[index] = mass - toMass * toMass * total;
  cloud.massGasCovariance[index] = both - toMass * toGas * total;
  cloud.gasYieldVariance[index] = Math.max(1e-9, gas - toGas * toGas * total);
}

/** Range of logarithms that a count may have when it tells nothing. */
const anyCount = 1 / 9;

function weighBubbles(
  cloud: PossibleFerments,
  index: number,
  bubblesPerMin: number,
  facts: FermentFacts,
  perH: number,
): void {
  const gasGPerH =
    abvPerGravity(cloud.original[index] as number) *
    perH *
    carbonDioxidePerAbvGPerL *
    (facts.volumeMl / 1000);
  const known = cloud.bubblesVariance[index] as number;
  const expected = Math.log(gasGPerH + 1e-6) + (cloud.bubbles[index] as number);
  const spread = Math.sqrt(known + bubbleScatter ** 2);
  if (bubblesPerMin < leastBubbles) {
    const unseen = 1 / (1 + Math.exp((1.7 * (expected - Math.log(leastBubbles))) / spread));
    add(cloud, index, misread.bubbles + (1 - misread.bubbles) * unseen);
    return;
  }
  const off = Math.log(bubblesPerMin) - expected;
  const seen = ((1 - misread.bubbles) * density(off, spread)) / Math.sqrt(2 * Math.PI);
  const nothing = misread.bubbles * anyCount;
  add(cloud, index, seen + nothing);
  if (seen > nothing) {
    const gain = known / (known + bubbleScatter ** 2);
    cloud.bubbles[index] = (cloud.bubbles[index] as number) + gain * off;
    cloud.bubblesVariance[index] = known * (1 - gain) + 0.01;
  }
}
