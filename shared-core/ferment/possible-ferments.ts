import type { Random } from '../random/index.ts';
import type { FermentFacts } from './ferment-log.ts';
import type { Measured } from './gather-evidence.ts';
import { pureSugarPotentialAbv } from './potential-strength.ts';
import { abvPerGravity, endGravity } from './practical-end.ts';

/**
 * Ethanol for the gravity lost, over Balling's: table sugar gives some 4 % more, wines as much, and each ferment differs. The
 * gas differs from that by what is known of volume and vapours. Source: from the proportions in `fromSugar`; spread of ethanol:
 * Pasteur's 48.4 g and the 16.83 and 17.5 g/L for each % vol of the law lie within 7 % (a standard deviation of 2 % if all between
 * are as likely), and each ferment differs by as much as half of that from its like; spread of the gas: common practice, no source.
 */
export const usualYield = { ethanol: 1.015, ethanolSpread: 0.026, gasSpread: 0.026 } as const;

/** Variance of a mass of which nothing is known [g²]. */
export const unknownMassG2 = 1e8;

/** How many possible ferments are weighed against the log; with fewer, the ends of the strength follow from chance as much as from it. */
export const ferments = 11_000;

/**
 * Many possible ferments side by side, one number of each in every array: what they are (drawn once, then nudged), where they
 * stand now, and what the readings have taught about scale and lock in each of them.
 */
export interface PossibleFerments {
  /** The two kinds: 1 where the first gravity that was read is believed, 0 where it is not, or none was read. */
  readonly believesFirst: Float64Array;
  readonly original: Float64Array;
  /**
   * Where a ferment's original gravity is still open, as it does not believe the first that was read: centre and spread of what it
   * may be. The spread is 0 once a gravity has told.
   */
  readonly originalCentre: Float64Array;
  readonly originalSpread: Float64Array;
  /** Standard normal numbers that the next arrays follow from. */
  readonly traits: Readonly<Record<Trait, Float64Array>>;
  /** Gravity at which it ends, and at which its sugar would be used up by a yeast that bears any strength. */
  readonly end: Float64Array;
  readonly dryEnd: Float64Array;
  /** Logarithm of the hours in which it would end at full speed. */
  readonly logHours: Float64Array;
  /** Power of what is left that the speed goes with. */
  readonly power: Float64Array;
  /** When it gets going [h]. */
  readonly lagH: Float64Array;
  /** Hours in which it fades by a factor e once it fades. */
  readonly fadeHours: Float64Array;
  /** Where each stands: gravity lost, vigour (logarithm, wandering), fading (logarithm; 0 when it does not). */
  readonly lost: Float64Array;
  readonly vigour: Float64Array;
  readonly fading: Float64Array;
  /** Gravity lost when the last evidence was taken in. */
  readonly lostAtEvidence: Float64Array;
  /** When it came within 0.002 of its end [h]; NaN before. */
  readonly doneH: Float64Array;
  /** What was lost 12, 24, 36, 48 h ago, at the last four half days. */
  readonly lostBefore: readonly Float64Array[];
  /** Mass at the beginning [g] and gas for the gravity lost over the usual, with their variances and covariance. */
  readonly mass: Float64Array;
  readonly gasYield: Float64Array;
  readonly massVariance: Float64Array;
  readonly massGasCovariance: Float64Array;
  readonly gasYieldVariance: Float64Array;
  /** Logarithm of bubbles a minute for a gram of gas an hour, with its variance. */
  readonly bubbles: Float64Array;
  readonly bubblesVariance: Float64Array;
  /** Logarithm of the weight. */
  readonly logWeight: Float64Array;
}

export const traitNames = ['extractLeft', 'tolerance', 'power', 'lag', 'fade'] as const;
export type Trait = (typeof traitNames)[number];

/** Share of first readings that tell nothing: unmixed, misread, or the log begins late; common practice, no source. */
const doubtOfFirst = 0.18;

/** Draws possible ferments before anything but the first gravity was read. */
export function drawFerments(
  random: Random,
  facts: FermentFacts,
  firstGravity: Measured | null,
): PossibleFerments {
  const array = () => new Float64Array(ferments);
  const drawn: PossibleFerments = {
    believesFirst: array(),
    original: array(),
    originalCentre: array(),
    originalSpread: array(),
    traits: {
      extractLeft: array(),
      tolerance: array(),
      power: array(),
      lag: array(),
      fade: array(),
    },
    end: array(),
    dryEnd: array(),
    logHours: array(),
    power: array(),
    lagH: array(),
    fadeHours: array(),
    lost: array(),
    lostAtEvidence: array(),
    vigour: array(),
    fading: array(),
    doneH: array().fill(Number.NaN),
    lostBefore: [array(), array(), array(), array()],
    mass: array(),
    gasYield: array().fill(usualYield.ethanol),
    massVariance: array().fill(unknownMassG2),
    massGasCovariance: array(),
    gasYieldVariance: array().fill(usualYield.ethanolSpread ** 2 + usualYield.gasSpread ** 2),
    bubbles: array().fill(Math.log(40)),
    bubblesVariance: array().fill(1.44),
    logWeight: array(),
  };
  for (let index = 0; index < ferments; index += 1) {
    const isBeliever = firstGravity !== null && index < believers * ferments;
    const { original, centre, spread, logWeight } = drawOriginal(random, firstGravity, isBeliever);
    drawn.believesFirst[index] = isBeliever ? 1 : 0;
    drawn.original[index] = original;
    drawn.logWeight[index] = logWeight;
    drawn.originalCentre[index] = centre;
    // Sugar that was weighed says as much of the original as a gravity.
    drawn.originalSpread[index] = facts.sugarG === null ? spread : 0;
    for (const trait of traitNames) drawn.traits[trait][index] = random.normal();
    drawn.logHours[index] = Math.log(45) + random.normal();
    drawn.vigour[index] = vigourSpread * random.normal();
    followTraits(drawn, index);
    if (facts.sugarG !== null) {
      const abv =
        abvPerGravity(original) * (original - (drawn.end[index] as number)) * usualYield.ethanol;
      const expected = pureSugarPotentialAbv(facts.sugarG, facts.volumeMl);
      const off = (abv - expected) / (0.04 * expected);
      drawn.logWeight[index] = logWeight + Math.log(0.9 * Math.exp((-off * off) / 2) + 0.02);
    }
  }
  return drawn;
}

/** Spread of the vigour's logarithm, and the hours in which it forgets. */
export const vigourSpread = 0.34;
export const vigourHours = 36;

/** Share of the drawn that believe the first gravity; fewer than is likely, so that the others are many enough. */
const believers = 0.6;

interface DrawnOriginal {
  readonly original: number;
  /** What it may be beside that, if it is open; spread 0 if it is not. */
  readonly centre: number;
  readonly spread: number;
  readonly logWeight: number;
}

function drawOriginal(random: Random, first: Measured | null, isBeliever: boolean): DrawnOriginal {
  const isNoBeginning = first === null || first.value < 1.015;
  // Sugar lies at the bottom before it is stirred, so that the first gravity is more often too low.
  const [centre, spread] = isNoBeginning ? [1.075, 0.022] : [first.value + 0.006, 0.016];
  const original = possibleOriginal(centre + spread * random.normal());
  const open = { original, centre, spread };
  if (first === null) return { ...open, logWeight: 0 };
  const doubt = isNoBeginning ? 0.9 : doubtOfFirst;
  if (!isBeliever) return { ...open, logWeight: Math.log(doubt / (1 - believers)) };
  const told = first.value + first.uncertainty * random.normal();
  return {
    original: Math.max(1.004, told),
    centre,
    spread: 0,
    logWeight: Math.log((1 - doubt) / believers),
  };
}

/** Musts lie between these. */
export function possibleOriginal(gravity: number): number {
  return Math.min(1.16, Math.max(1.01, gravity));
}

const bearsAnything = 100;

/**
 * What a ferment is by its traits. Spreads: common practice, no source; extract that yeast leaves is 1 °P in sugar washes, 2 in
 * wines and up to 4 in pears with their sorbitol; yeasts bear 12 to 18 % vol.
 */
export function followTraits(cloud: PossibleFerments, index: number): void {
  const { extractLeft, tolerance, power, lag, fade } = cloud.traits;
  const left = Math.min(5, Math.max(0.3, 2 + 0.95 * (extractLeft[index] as number)));
  const original = cloud.original[index] as number;
  cloud.end[index] = endGravity(original, left, 15.5 + 1.8 * (tolerance[index] as number));
  cloud.dryEnd[index] = endGravity(original, left, bearsAnything);
  cloud.power[index] = 0.15 + 1.3 / (1 + Math.exp(-1.3 * (power[index] as number)));
  cloud.lagH[index] = Math.min(150, 13 * Math.exp(0.9 * (lag[index] as number)));
  cloud.fadeHours[index] = Math.min(60, 11 * Math.exp(0.7 * (fade[index] as number)));
}
