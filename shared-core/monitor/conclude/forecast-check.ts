import { coverageFactor90, type Estimate } from '../../uncertainty/index.ts';

/**
 * Holds the twin's forecasts of the end against what became of them. Where the model fits, an end moves between two forecasts by no
 * more than was still to be learned in between; where it runs away faster, the ranges were too narrow, and so is that of now. How far
 * that is believed depends on how many forecasts have come of age: a few say little.
 */
export interface ForecastCheck {
  /** Notes a forecast made after so much boiling [s], of what is left [s]. */
  see(boiledS: number, left: Estimate): void;
  /**
   * The range of what is left as wide as past ones would have had to be [s], where the heat was away for such a share of the time;
   * null where it would say nothing any more.
   */
  widened(left: Estimate, dryShare: number): Estimate | null;
  /** How far the end has run away from what was told before; null where the still does what the model expects. */
  misfit(): ForecastDrift | null;
}

/** How far the end has moved from one of the forecasts before. */
export interface ForecastDrift {
  /** In standard deviations of what was still to be learned, of the forecast that held worst; positive where the end moves away. */
  readonly sds: number;
  /** Forecasts that were old enough to be held to account. */
  readonly checks: number;
  /** How long ago it was made, in boiling [s]. */
  readonly sinceS: number;
  /** By how much the end has moved since [s]. */
  readonly movedS: number;
}

/** Forecasts are kept so often, and are held to account when so old [s of boiling]. */
const keptEveryS = 300;
const oldS = 300;
/** Old ones say how the model did, not how it does [s of boiling]. */
const forgottenS = 3600;
/** Below this everything is soon: the twin counts in minutes [s]. */
const leastLeftS = 60;
/** An outlook moves by so much from one update to the next though nothing was learned: the ensemble is finite. */
const leastLogSd = 0.1;
/**
 * What moves an end anew every few minutes adds up, so the worst of n forecasts misses by 1 + 0.27 ln n standard deviations (root mean
 * square) where the model is right; by simulation of 1 … 12 sums of independent steps, to 3 %.
 */
const worstGrowth = 0.27;
/** Before any forecast has come of age, the model's own width is believed as if so many had held just as they say. */
const trustedChecks = 4;
/** Wider than so many of its own widths no range is made: it has its reason beside it by then; chosen here. */
const mostWidening = 3;
/** Heat that was away for more than this share of the time is in a hand, and nobody knows what it will do; by simulation. */
const usualDryShare = 0.1;
const widerByHand = 4;
/** A range whose ends lie further apart than this says nothing. */
const emptyRatio = 100;
/** A reason is given once the range has been made wider by so much. */
const toldFrom = 1.25;

const none: ForecastDrift = { sds: 0, checks: 0, sinceS: 0, movedS: 0 };

interface Kept {
  readonly boiledS: number;
  readonly left: Estimate;
}

export function createForecastCheck(): ForecastCheck {
  let kept: Kept[] = [];
  let drift = none;

  return {
    see: (boiledS, left) => {
      kept = kept.filter((item) => boiledS - item.boiledS <= forgottenS);
      drift = worstDrift(kept, boiledS, left);
      const last = kept.at(-1);
      if (last === undefined || boiledS - last.boiledS >= keptEveryS) kept.push({ boiledS, left });
    },
    widened: (left, dryShare) => {
      const byHand = 1 + widerByHand * Math.max(0, dryShare - usualDryShare);
      const factor = misfitFactor(drift);
      const value = Math.max(1, left.value);
      const ended = (endS: number, isMissed: boolean): number =>
        value *
        (Math.max(1, endS) / value) ** Math.min(mostWidening, isMissed ? byHand * factor : byHand);
      const wide = {
        value: left.value,
        low: Math.min(left.low, ended(left.low, drift.sds < 0)),
        high: Math.max(left.high, ended(left.high, drift.sds > 0)),
      };
      const isEmpty = wide.high > emptyRatio * Math.max(leastLeftS, wide.low);
      return isEmpty && factor >= toldFrom ? null : wide;
    },
    misfit: () => (misfitFactor(drift) < toldFrom ? null : drift),
  };
}

/**
 * How many times as wide the range must be, `λ² = (m + n (z/z_n)²)/(m + n)`: the scale of a normal distribution by n misses, of which
 * the worst is known, over m that were as told; never less than the model's own.
 *
 * Source: A. Gelman et al., Bayesian Data Analysis (2013), ch. 2.6 (the scaled inverse χ² as prior of a variance); from memory.
 */
function misfitFactor({ sds, checks }: ForecastDrift): number {
  if (checks === 0) return 1;
  const usualSds = 1 + worstGrowth * Math.log(checks);
  const missed = checks * (sds / usualSds) ** 2;
  return Math.max(1, Math.sqrt((trustedChecks + missed) / (trustedChecks + checks)));
}

function worstDrift(kept: readonly Kept[], boiledS: number, left: Estimate): ForecastDrift {
  const ofAge = kept.filter((item) => boiledS - item.boiledS >= oldS);
  let worst = { ...none, checks: ofAge.length };
  for (const item of ofAge) {
    const sinceS = boiledS - item.boiledS;
    const told = Math.max(leastLeftS, item.left.value);
    const turnedOut = Math.max(leastLeftS, sinceS + left.value);
    const isLater = turnedOut > told;
    const toldSd = logSd(told, isLater ? item.left.high : item.left.low);
    const stillSd = logSd(sinceS + left.value, sinceS + (isLater ? left.high : left.low));
    const learnedSd = Math.sqrt(Math.max(0, toldSd ** 2 - stillSd ** 2) + leastLogSd ** 2);
    const sds = Math.log(turnedOut / told) / learnedSd;
    if (Math.abs(sds) > Math.abs(worst.sds))
      worst = { ...worst, sds, sinceS, movedS: turnedOut - told };
  }
  return worst;
}

/** Standard deviation of a logarithm, by its value and one end of its 90 % range [s]. */
function logSd(valueS: number, endS: number): number {
  return (
    Math.abs(Math.log(Math.max(leastLeftS, endS) / Math.max(leastLeftS, valueS))) / coverageFactor90
  );
}
