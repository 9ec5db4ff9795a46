import { coverageFactor90, type Estimate } from '../../uncertainty/index.ts';

/**
 * Holds forecasts of the end against what became of them. Where the model fits, an end moves between two of them by no more than was
 * still to be learned in between.
 */
export interface EndDriftWatch {
  /** Notes a forecast made after so much boiling [s], of what is left [s]. */
  see(boiledS: number, left: Estimate): void;
  /** Forecasts made from this time of boiling on are held to account no more [s]. */
  forgetFrom(boiledS: number): void;
  drift(): EndDrift;
}

/** How far the end has moved from one of the forecasts before. */
export interface EndDrift {
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
export const leastLeftS = 60;
/** An outlook moves by so much from one update to the next though nothing was learned: the ensemble is finite. */
const leastLogSd = 0.1;
/**
 * What moves an end anew every few minutes adds up, so the worst of n forecasts misses by 1 + 0.27 ln n standard deviations (root mean
 * square) where the model is right; by simulation of 1 … 12 sums of independent steps, to 3 %.
 */
const worstGrowth = 0.27;

const none: EndDrift = { sds: 0, checks: 0, sinceS: 0, movedS: 0 };

interface Kept {
  readonly boiledS: number;
  readonly left: Estimate;
}

export function createEndDriftWatch(): EndDriftWatch {
  let kept: Kept[] = [];
  let drift = none;

  return {
    see: (boiledS, left) => {
      kept = kept.filter((item) => boiledS - item.boiledS <= forgottenS);
      drift = worstDrift(kept, boiledS, left);
      const last = kept.at(-1);
      if (last === undefined || boiledS - last.boiledS >= keptEveryS) kept.push({ boiledS, left });
    },
    forgetFrom: (boiledS) => {
      kept = kept.filter((item) => item.boiledS < boiledS);
      drift = none;
    },
    drift: () => drift,
  };
}

/** What the forecasts' misses add up to, as a sum of squares of standard deviations: one for each, where the model is right. */
export function squaredMisses({ sds, checks }: EndDrift): number {
  return checks === 0 ? 0 : checks * (sds / (1 + worstGrowth * Math.log(checks))) ** 2;
}

function worstDrift(kept: readonly Kept[], boiledS: number, left: Estimate): EndDrift {
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
