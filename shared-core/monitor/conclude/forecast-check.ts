import { coverageFactor90, type Estimate } from '../../uncertainty/index.ts';

/**
 * Holds the twin's forecasts of the end against what became of them. Where the model fits, the end believed now lies within the
 * ranges told before, as often as these say; where it runs away from them, they were too narrow, and so is the range of now.
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
  /** In standard deviations of that forecast, of the one that held worst; positive where the end moves away. */
  readonly sds: number;
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
const leastLogSd = 0.1;
/** The worst of several forecasts misses by less than this most of the time where the model is right; by simulation [sd]. */
const usualSds = 1.2;
const mostWidening = 3;
/** Heat that was away for more than this share of the time is in a hand, and nobody knows what it will do; by simulation. */
const usualDryShare = 0.1;
const widerByHand = 4;
/** A range whose ends lie further apart than this says nothing. */
const emptyRatio = 100;
/** A reason is given once the range has been made wider by so much. */
const toldFrom = 1.25;

const none: ForecastDrift = { sds: 0, sinceS: 0, movedS: 0 };

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

/** How many times as wide the range must be. */
function misfitFactor({ sds }: ForecastDrift): number {
  return Math.max(1, Math.abs(sds) / usualSds);
}

function worstDrift(kept: readonly Kept[], boiledS: number, left: Estimate): ForecastDrift {
  let worst = none;
  for (const item of kept) {
    const sinceS = boiledS - item.boiledS;
    if (sinceS < oldS) continue;
    const told = Math.max(leastLeftS, item.left.value);
    const turnedOut = Math.max(leastLeftS, sinceS + left.value);
    const isLater = turnedOut > told;
    const end = Math.max(leastLeftS, isLater ? item.left.high : item.left.low);
    const sd = Math.max(leastLogSd, Math.abs(Math.log(end / told)) / coverageFactor90);
    const sds = Math.log(turnedOut / told) / sd;
    if (Math.abs(sds) > Math.abs(worst.sds)) worst = { sds, sinceS, movedS: turnedOut - told };
  }
  return worst;
}
