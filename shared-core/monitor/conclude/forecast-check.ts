import { heightModelSdK, ownWidening, type TwinOutlook, widenedRange } from '../../twin/index.ts';
import type { Estimate } from '../../uncertainty/index.ts';
import { createEndDriftWatch, type EndDrift, leastLeftS, squaredMisses } from './end-drift.ts';
import type { ForecastSecond } from './forecast-second.ts';
import { createHeadMisses } from './head-misses.ts';

/**
 * Asks three times whether the twin is the still on the bench: by what its head does from one minute to the next, by where its end goes
 * from one forecast to the next, and by the offset it must believe in to fit. Ranges are as wide as all three would have had to be.
 */
export interface ForecastCheck {
  /** Notes what the twin expects after so much boiling [s], from a second on. */
  see(from: ForecastSecond, boiledS: number, outlook: TwinOutlook): void;
  /** What was expected from this time of boiling on is not held against the twin of now [s]: a mark has been withdrawn. */
  forgetFrom(boiledS: number): void;
  /** The range of what is left [s], as wide as the still has shown it must be; null where there is nothing to say. */
  widened(left: Estimate): Estimate | null;
  /** What the model understands least, where it makes the range much wider than its own; null where the still does what it expects. */
  doubt(): ForecastDoubt | null;
}

export type ForecastDoubt =
  | ({ readonly kind: 'end' } & EndDrift)
  /** How far the head is off what was expected of it a minute before, usually [K]. */
  | { readonly kind: 'head'; readonly usualK: number }
  /** By how much the probe must read too high to fit [K]; negative where too low. */
  | { readonly kind: 'offset'; readonly offsetK: number };

/** Before anything has been held against it, the model's own width is believed as if so many checks had held just as they say. */
const trustedChecks = 4;
/**
 * A range is wider than it would be where all is as expected by the product of what the three surprises come to, to the power of two
 * thirds, since they share what they tell. By maximum likelihood under a t distribution on 250 runs of three simulated stills: 0.65, 0.7
 * and 0.3 an offset's standard deviation.
 */
const sharedPower = 2 / 3;
/** Wider than so many of its own widths no range is made: it has its reason beside it by then; chosen here. */
const mostWidening = 3;
/** A range whose ends lie further apart than this says nothing. */
const emptyRatio = 100;
/**
 * A reason is given once the range is made wider by so much. By simulation of three stills: up to here the model's own range holds the end
 * as often as where nothing is odd (9 in 10, by hand 3 in 4), from here on in half of all minutes.
 */
const toldFrom = 1.5;

export function createForecastCheck(): ForecastCheck {
  const ends = createEndDriftWatch();
  const heads = createHeadMisses();
  let offsetK = 0;
  let offsetSds = 0;

  const surprises = () => ({
    end: usualMiss(squaredMisses(ends.drift()), ends.drift().checks, 1),
    head: usualMiss(heads.squares(), heads.count(), 0),
    offset: Math.hypot(1, offsetSds),
  });
  const surprise = (): number => {
    const { end, head, offset } = surprises();
    return (end * head * offset) ** sharedPower;
  };

  return {
    see: ({ timeS, head, scale, statedSdK }, boiledS, outlook) => {
      ends.see(boiledS, outlook.limitInS);
      const heightK = head.vapourC - scale.azeotropeC;
      heads.see({ timeS, boiledS, heightK, heightSdK: head.vapourSdK }, outlook.headSoonK);
      offsetK = outlook.bias.mean;
      offsetSds = offsetK / Math.hypot(statedSdK, heightModelSdK);
    },
    forgetFrom: (boiledS) => {
      ends.forgetFrom(boiledS);
      heads.forgetFrom(boiledS);
    },
    widened: (left) => {
      // The twin holds the limit for passed, the head does not: it knows nothing of what is left.
      if (left.value <= 0) return null;
      const surprised = surprise();
      const wide = widenedRange(left, Math.min(mostWidening, ownWidening * surprised));
      const isEmpty = wide.high > emptyRatio * Math.max(leastLeftS, wide.low);
      // What is not told has a reason: a twin that has seen little yet is not surprised, only unsure.
      return isEmpty && surprised >= toldFrom ? null : wide;
    },
    doubt: () => {
      if (surprise() < toldFrom) return null;
      const { end, head, offset } = surprises();
      if (head >= end && head >= offset) return { kind: 'head', usualK: heads.usualK() };
      return end >= offset ? { kind: 'end', ...ends.drift() } : { kind: 'offset', offsetK };
    },
  };
}

/**
 * How many times as wide as told a model's misses are, `λ² = (m + Σ z²)/(m + n)`: the scale of a normal distribution by n misses, over m
 * that were as told.
 *
 * Source: A. Gelman et al., Bayesian Data Analysis (2013), ch. 2.6 (the scaled inverse χ² as prior of a variance); from memory.
 */
function usualMiss(squares: number, count: number, least: number): number {
  return Math.max(least, Math.sqrt((trustedChecks + squares) / (trustedChecks + count)));
}
