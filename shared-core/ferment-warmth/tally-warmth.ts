import type { WarmthBand } from './warmth-band.ts';
import type { WarmthSpan } from './warmth-span.ts';

/** How warm a ferment was over a time, and for how long outside its band. */
export interface WarmthTally {
  readonly lowC: number;
  readonly meanC: number;
  readonly highC: number;
  readonly coldestAtIso: string;
  readonly hottestAtIso: string;
  /** Hours in which it was heard, and of these hours below and above the band. */
  readonly heardH: number;
  readonly belowH: number;
  readonly aboveH: number;
}

/**
 * Counts the hours of a ferment within its band, below it and above it: `belowH = Σ n_i/60` over the spans whose mean lies below.
 *
 * @param spans any stretches of time
 * @param band its ends [°C]
 * @returns null where nothing was heard
 *
 * Source: arithmetic; no formula.
 * @example
 * tallyWarmth([], { lowC: 25, aimC: 30, highC: 34 }) // => null
 */
export function tallyWarmth(spans: readonly WarmthSpan[], band: WarmthBand): WarmthTally | null {
  const [first] = spans;
  if (first === undefined) return null;
  let coldest = first;
  let hottest = first;
  const minutes = { all: 0, below: 0, above: 0 };
  let sum = 0;
  for (const span of spans) {
    if (span.lowC < coldest.lowC) coldest = span;
    if (span.highC > hottest.highC) hottest = span;
    minutes.all += span.minutes;
    sum += span.minutes * span.meanC;
    if (span.meanC < band.lowC) minutes.below += span.minutes;
    if (span.meanC > band.highC) minutes.above += span.minutes;
  }
  return {
    lowC: coldest.lowC,
    meanC: sum / minutes.all,
    highC: hottest.highC,
    coldestAtIso: coldest.atIso,
    hottestAtIso: hottest.atIso,
    heardH: minutes.all / 60,
    belowH: minutes.below / 60,
    aboveH: minutes.above / 60,
  };
}
