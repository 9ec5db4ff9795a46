import { even } from '../certainty.ts';
import { settledAfterS } from '../patience.ts';
import { departsKPerS } from './lowest-level.ts';
import { modelSdK, probabilityAbove, type ScaleBelief } from './scale-belief.ts';
import type { Situation } from './situation.ts';
import type { HeadState } from './vapour-filter.ts';

/** How the vapour stands to the strength limit, with the offset's and the filter's doubt counted. */
export interface LimitOutlook {
  /** Where this probe is expected to show the limit [°C]. */
  readonly limitOnProbeC: number;
  /** Probability that the vapour at the bulb is weaker than the limit now, and that it has been, on the whole, of late. */
  readonly passed: number;
  readonly passedOfLate: number;
  /** Probability that it will be, on the whole, when a person has reacted. */
  readonly passedWithinReaction: number;
  /** Expected time to the limit at the present rate [s]; null while it is not rising. */
  readonly etaS: number | null;
  /** Seconds of vapour that was stronger than the limit. */
  readonly strongForS: number;
  /** Seconds for which it has been weaker without much doubt. */
  readonly weakForS: number;
  /** The heat-off call: there was a fraction to keep, and it is over, or will be within the reaction time. */
  readonly heatOffDue: boolean;
}

export interface LimitSecond {
  readonly head: HeadState;
  readonly situation: Situation;
  readonly belief: ScaleBelief;
  /** On the true scale [°C]. */
  readonly limitC: number;
  readonly reactionTimeS: number;
}

export interface LimitWatch {
  second(now: LimitSecond): void;
  /** Who has been called brings the heat back for the tail: nothing to call off before the vapour is strong again, a reminder later. */
  disarm(): void;
  outlook(): LimitOutlook;
}

/**
 * One cup of the receiver mixes what comes over within such a time: a swing of the head that a hand makes is over by
 * then, and does not make the fraction weak [s of vapour]; by trial on simulated runs.
 */
const mixesS = 40;

/** A cup is told to be weak only once that is all but sure: with 0.9 one prompt in twenty more was raised on runs heated by hand. */
const weakFrom = 0.95;

export function createLimitWatch(limitC: number): LimitWatch {
  let passed = 0;
  let passedOfLate = 0;
  let ahead = 0;
  let strongForS = 0;
  let weakForS = 0;
  let etaS: number | null = null;
  let limitOnProbeC = limitC;

  return {
    second: ({ head, situation, belief, limitC: trueLimitC, reactionTimeS }) => {
      limitOnProbeC = trueLimitC + belief.meanK;
      if (situation.bathedS === null || situation.recededSinceS !== null) return;
      const rate = Math.max(-departsKPerS, Math.min(departsKPerS, head.rateKPerS));
      const nowSdK = Math.hypot(head.vapourSdK, modelSdK);
      const thenSdK = Math.hypot(nowSdK, reactionTimeS * Math.min(departsKPerS, head.rateSdKPerS));
      passed = probabilityAbove(belief, head.vapourC, nowSdK, trueLimitC);
      const then = probabilityAbove(
        belief,
        head.vapourC + reactionTimeS * rate,
        thenSdK,
        trueLimitC,
      );
      const share = head.wet / mixesS;
      passedOfLate += share * (passed - passedOfLate);
      ahead += share * (then - ahead);
      if (passed < even) strongForS += head.wet;
      weakForS = passedOfLate > weakFrom ? weakForS + 1 : 0;
      const toGoK = limitOnProbeC - head.vapourC;
      etaS = toGoK <= 0 ? 0 : head.rateKPerS > 1e-5 ? toGoK / head.rateKPerS : null;
    },
    disarm: () => {
      strongForS = 0;
      weakForS = 0;
    },
    outlook: () => ({
      limitOnProbeC,
      passed,
      passedOfLate,
      passedWithinReaction: ahead,
      etaS,
      strongForS,
      weakForS,
      heatOffDue: strongForS >= settledAfterS && ahead > even,
    }),
  };
}
