import type { Random } from '../random/index.ts';
import type { Evidence } from './gather-evidence.ts';
import { ferments, type PossibleFerments } from './possible-ferments.ts';
import { drawAgain, effectiveCount, shiftLastStep } from './renew-ferments.ts';
import {
  doubtOfGravity,
  learnFromEvidence,
  logLikelihood,
  type Surroundings,
} from './weigh-evidence.ts';

/** Fewest possible ferments that must count after a part of a piece of evidence was weighed. */
const fewestCounting = ferments / 8;
/** Parts after which the rest is weighed at once, come what may. */
const mostParts = 12;

/**
 * Changes weights and what is learned by one piece of evidence. Evidence that hardly any possible ferment foresaw (one that works
 * faster than any drawn, on a fine balance) is weighed in parts, and the likely ones are moved between: else a handful of
 * unlikely ones would be left, and with them the wrong reasons.
 *
 * @returns how likely its gravity was misread; null where it has none, or it is the first
 *
 * Source: annealed weights in sequential Monte Carlo, after R. Neal, Stat. Comput. 11 (2001) 125 (from memory).
 */
export function takeInEvidence(
  cloud: PossibleFerments,
  evidence: Evidence,
  surroundings: Surroundings,
  random: Random,
): number | null {
  const { massG, gravity, bubblesPerMin } = evidence;
  const nothing = { ...evidence, massG: null, gravity: null, bubblesPerMin: null };
  // One after the other: each may move the last step, which the next then finds moved.
  if (massG !== null) takeInOne(cloud, { ...nothing, massG }, surroundings, random);
  if (bubblesPerMin !== null) {
    takeInOne(cloud, { ...nothing, bubblesPerMin }, surroundings, random);
  }
  return gravity === null ? null : takeInOne(cloud, { ...nothing, gravity }, surroundings, random);
}

function takeInOne(
  cloud: PossibleFerments,
  evidence: Evidence,
  surroundings: Surroundings,
  random: Random,
): number | null {
  let left = 1;
  for (let part = 1; left > 0; part += 1) {
    const each = cloud.logWeight.map((_, index) =>
      logLikelihood(cloud, index, evidence, surroundings),
    );
    const share = part < mostParts ? bearableShare(cloud, each, left) : left;
    for (let index = 0; index < ferments; index += 1) {
      cloud.logWeight[index] = (cloud.logWeight[index] as number) + share * (each[index] as number);
    }
    left -= share;
    if (left > 0) {
      drawAgain(cloud, random);
      shiftLastStep(cloud, evidence.timeH, random);
    }
  }
  const doubt = evidence.gravity === null ? null : doubtOfGravity(cloud, evidence.gravity);
  learnFromEvidence(cloud, evidence, surroundings, random);
  return doubt;
}

/** The largest share of the evidence, up to all that is left, after which enough possible ferments count. */
function bearableShare(cloud: PossibleFerments, each: Float64Array, left: number): number {
  const weighed = new Float64Array(ferments);
  const counting = (share: number) => {
    for (let index = 0; index < ferments; index += 1) {
      weighed[index] = (cloud.logWeight[index] as number) + share * (each[index] as number);
    }
    return effectiveCount(cloud, weighed);
  };
  if (counting(left) >= fewestCounting) return left;
  let [low, high] = [0, left];
  for (let halving = 0; halving < 8; halving += 1) {
    const middle = (low + high) / 2;
    if (counting(middle) >= fewestCounting) low = middle;
    else high = middle;
  }
  // Weights may be few before the evidence speaks at all: a little of it goes in at each part.
  return Math.max(low, left / 64);
}
