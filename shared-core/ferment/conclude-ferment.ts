import { createRandom } from '../random/index.ts';
import { weightedQuantiles } from '../uncertainty/index.ts';
import { doneWithin, forecastDoneH, gravityPerH } from './advance-ferments.ts';
import type { FermentFacts, FermentState, NinetyInterval } from './ferment-log.ts';
import type { FermentBelief } from './follow-ferment.ts';
import { ferments, type PossibleFerments, usualYield } from './possible-ferments.ts';
import { pureSugarPotentialAbv } from './potential-strength.ts';
import { abvPerGravity, endGravity } from './practical-end.ts';
import { weightsOf } from './renew-ferments.ts';
import { fromSugar, strengthOf } from './sugar-to-ethanol.ts';
import { ninetyOf, shareOf } from './weighted-values.ts';

/** Numbers that a verdict rests on. */
export interface FermentConclusion {
  readonly state: FermentState;
  readonly strengthAbv: NinetyInterval;
  readonly gravity: NinetyInterval;
  readonly originalGravity: NinetyInterval;
  readonly endGravity: NinetyInterval;
  /** Gravity above the end that is usual after such a beginning. */
  readonly aboveUsualEnd: number;
  /** Lost next to nothing in two days. */
  readonly isStill: boolean;
  /** Gravity or sugar was told, so that it is known how far it had to go. */
  readonly tellsEnd: boolean;
  readonly donePercent: NinetyInterval;
  /** Gravity lost in a day at the present speed. */
  readonly perDay: NinetyInterval;
  /** Gravity lost in the last two days. */
  readonly inTwoDays: NinetyInterval;
  /** Null where it has not begun or stands still. */
  readonly doneH: NinetyInterval | null;
  /** How likely it is within {@link nearTheEnd} of its end, and how likely it stands still above it. */
  readonly nearProbability: number;
  readonly stuckProbability: number;
}

/** Gravity above the end that counts as near it. Source: rule to be tested; the smallest that floats of classrooms tell apart. */
export const nearTheEnd = 0.004;
/** Gravity lost in a day that is too little for practical purposes: a float shows it after two or three days. */
export const standsStillPerDay = 0.0018;
/** Less than this a day is sluggish above gravity 1.005, and below. Source: trade, one author (techniquesinhomewinemaking.com). */
export const sluggishPerDay = { above: 0.005, below: 0.002, from: 1.005 } as const;

/**
 * How likely near its end is near enough: told by gravities, or by masses against the sugar. There {@link sugarUsed} asks the
 * readings themselves, and the model need only not speak against it.
 */
const sureNear = { byGravity: 0.95, bySugar: 0.7 } as const;
/** Gravity lost in two days, by masses, that counts as nothing: they are finer than floats. */
const stillByMass = 0.001;
const sureStill = 0.9;
const likelyStuck = 0.5;
/**
 * Gravity above the usual end up to which steady may be the end, and from which it is rather stuck: few musts leave as much that
 * yeast can't use. Between them readings can't tell a must with much of it from a stuck ferment of pure sugar, however long it stands;
 * where fruit is known to be in it, {@link nearTheEnd} is near enough.
 */
const aboveUsual = { atEnd: 0, perhaps: 0.006 } as const;
/**
 * Share of the gas its sugar gives in practice that must have been made: "mass loss within 5 %", a rule to be tested, less the 3 % by
 * which a stated volume, the vapours and a sugar of a kind not told are in doubt.
 */
const sugarUsed = 0.92;
/** Fewer possible futures than ferments give the same quantiles. */
const futures = 400;
const longestForecastH = 60 * 24;

/**
 * What is concluded from a belief: quantiles of the weighted possible ferments, and the state by rule. "Finished" needs steady
 * (less than 0.002 lost in two days) and near its end (within 0.004); steady but high is "stuck", never "finished".
 *
 * @param belief what the log says so far, from {@link followFerment}
 * @param facts volume [mL] > 0 and, where known, sugar [g] > 0
 * @returns 90 % intervals of strength [% vol], gravities and the time of the end [h], and the state
 *
 * Source: weighted quantiles; the rule: see {@link nearTheEnd}; check: `scripts/ferments.ts`.
 * @example
 * const at = (timeH, gravity) => ({ timeH, gravity, massG: null, temperatureC: null, bubblesPerMin: null, isDegassed: false });
 * const facts = { volumeMl: 1000, sugarG: null };
 * const [, belief] = [...followFerment(gatherEvidence([at(0, 1.06), at(48, 1.02)]), facts)];
 * concludeFerment(belief, facts).state // => "working"
 */
export function concludeFerment(belief: FermentBelief, facts: FermentFacts): FermentConclusion {
  const { cloud, timeH, warmthK } = belief;
  const weights = weightsOf(cloud);
  const each = (of: (index: number) => number) => weights.map((_, index) => of(index));
  const at = (values: Float64Array, index: number) => values[index] as number;
  const range = each((index) => at(cloud.original, index) - at(cloud.end, index));
  const left = each((index) => at(range, index) - at(cloud.lost, index));
  const perDay = each((index) => 24 * gravityPerH(cloud, index, timeH, warmthK));
  const random = createRandom('ferment yield');
  const strength = each(
    (index) =>
      abvPerGravity(at(cloud.original, index)) *
      at(cloud.lost, index) *
      ethanolYield(cloud, index, random.normal()),
  );
  const twoDaysAgo = cloud.lostBefore.at(-1) as Float64Array;
  const inTwoDays = each((index) => at(cloud.lost, index) - at(twoDaysAgo, index));
  // A yeast that bears no more leaves sugar: that is no end to be content with.
  const isNear = (index: number) =>
    at(cloud.original, index) - at(cloud.lost, index) - at(cloud.dryEnd, index) <= nearTheEnd;
  const nearProbability = shareOf(weights, isNear);
  const stuckProbability = shareOf(
    weights,
    (index) => !isNear(index) && at(perDay, index) < standsStillPerDay,
  );
  const hasBegun = shareOf(weights, (index) => at(cloud.lost, index) > 0.0025) > 0.5;
  const isStill =
    shareOf(weights, (index) => at(inTwoDays, index) < doneWithin) > sureStill && timeH >= 48;
  const gravity = ninetyOf(
    each((index) => at(cloud.original, index) - at(cloud.lost, index)),
    weights,
  );
  const lostInTwoDays = ninetyOf(inTwoDays, weights);
  const speed = ninetyOf(perDay, weights);
  const [medianLeft = 0] = weightedQuantiles(left, weights, [0.5]);
  // Masses and bubbles alone don't say how far it had to go.
  const hasGravity = belief.evidence.some(({ gravity: read }) => read !== null);
  const tellsEnd = facts.sugarG !== null || hasGravity;
  const originalGravity = ninetyOf(cloud.original, weights);
  const aboveUsualEnd = gravity.value - endGravity(originalGravity.value, 2, 100);
  const strengthAbv = ninetyOf(strength, weights);
  // The model can talk itself out of the sugar, and out of a sudden death of the yeast: both rules ask the readings alone.
  const { sugarG, volumeMl } = facts;
  const gasAbv = ninetyOf(
    each(
      (index) =>
        abvPerGravity(at(cloud.original, index)) *
        at(cloud.lost, index) *
        at(cloud.gasYield, index),
    ),
    weights,
  );
  const made = hasGravity ? strengthAbv.value : gasAbv.value;
  const isAtEnd =
    sugarG === null
      ? aboveUsualEnd <= (facts.isFromFruit === true ? nearTheEnd : aboveUsual.atEnd)
      : made >= sugarUsed * pureSugarPotentialAbv(sugarG, volumeMl);
  const isPerhaps =
    sugarG === null
      ? aboveUsualEnd <= aboveUsual.perhaps
      : strengthAbv.high >= sugarUsed * asHexoseAbv(sugarG, volumeMl);
  const state = stateOf();
  return {
    state,
    strengthAbv,
    gravity,
    originalGravity,
    aboveUsualEnd,
    isStill,
    tellsEnd,
    endGravity: ninetyOf(cloud.end, weights),
    donePercent: ninetyOf(
      each((index) => (100 * at(cloud.lost, index)) / at(range, index)),
      weights,
    ),
    perDay: speed,
    inTwoDays: lostInTwoDays,
    doneH: state === 'not-started' || state === 'stuck' ? null : forecast(belief, weights),
    nearProbability,
    stuckProbability,
  };

  function stateOf(): FermentState {
    if (!hasBegun) return 'not-started';
    if (isStill) {
      const isSure = hasGravity
        ? nearProbability >= sureNear.byGravity
        : nearProbability >= sureNear.bySugar && lostInTwoDays.high < stillByMass;
      if (tellsEnd && isAtEnd && isSure) return 'finished';
      if (!tellsEnd || !isPerhaps) return 'stuck';
    }
    if (stuckProbability >= likelyStuck) return 'stuck';
    if (isStill) return 'slow';
    const sluggish =
      gravity.value > sluggishPerDay.from ? sluggishPerDay.above : sluggishPerDay.below;
    const isPastRise = shareOf(weights, (index) => at(cloud.lagH, index) * 1.5 < timeH) > 0.8;
    return isPastRise && speed.value < sluggish && medianLeft > nearTheEnd ? 'slow' : 'working';
  }
}

/** Strength that a sugar gives in practice at least, as table sugar weighs less [% vol]. */
function asHexoseAbv(sugarG: number, volumeMl: number): number {
  return strengthOf(fromSugar(sugarG, 'hexose').inPracticeEthanolG, volumeMl / 1000);
}

/** A yield of ethanol as likely as what the masses taught of the gas allows; `normal` tells where in its spread. */
function ethanolYield(cloud: PossibleFerments, index: number, normal: number): number {
  const { ethanol, ethanolSpread, gasSpread } = usualYield;
  const follows = ethanolSpread ** 2 / (ethanolSpread ** 2 + gasSpread ** 2);
  const mean = ethanol + follows * ((cloud.gasYield[index] as number) - ethanol);
  const variance =
    follows ** 2 * (cloud.gasYieldVariance[index] as number) + (1 - follows) * ethanolSpread ** 2;
  return mean + Math.sqrt(variance) * normal;
}

/** When it is done, as far as the ferments that have not faded tell. */
function forecast(belief: FermentBelief, weights: Float64Array): NinetyInterval | null {
  const { cloud, timeH, warmthK } = belief;
  const random = createRandom('ferment forecast');
  const going = weights.map((weight, index) =>
    (cloud.fading[index] as number) > -1.5 || !Number.isNaN(cloud.doneH[index] as number)
      ? weight
      : 0,
  );
  const total = going.reduce((sum, weight) => sum + weight, 0);
  if (total <= 0) return null;
  const future = copyOf(cloud);
  const done = new Float64Array(futures);
  let [from, sum] = [0, going[0] as number];
  for (let index = 0; index < futures; index += 1) {
    while (sum < ((index + random.uniform()) / futures) * total && from < ferments - 1) {
      from += 1;
      sum += going[from] as number;
    }
    future.lost[from] = cloud.lost[from] as number;
    future.vigour[from] = cloud.vigour[from] as number;
    future.doneH[from] = cloud.doneH[from] as number;
    // What has faded so far does not come back by itself.
    future.logHours[from] = (cloud.logHours[from] as number) - (cloud.fading[from] as number);
    future.fading[from] = 0;
    done[index] = forecastDoneH(future, from, timeH, timeH + longestForecastH, warmthK, random);
  }
  return ninetyOf(done, new Float64Array(futures).fill(1));
}

/** The ferments go on in the forecast, not in the belief. */
function copyOf(cloud: PossibleFerments): PossibleFerments {
  return {
    ...cloud,
    lost: cloud.lost.slice(),
    vigour: cloud.vigour.slice(),
    fading: cloud.fading.slice(),
    logHours: cloud.logHours.slice(),
    doneH: cloud.doneH.slice(),
  };
}
