import { type BiasBelief, normalCumulative } from './bias-belief.ts';
import type { HeadState } from './head-filter.ts';
import type { PlateauView } from './plateau-watch.ts';

/** Where the head stands against the strength limit, now and within the person's reaction time. */
export interface LimitOutlook {
  /** Reading at which vapour is at the least strength: its dew temperature plus the bias [°C]. */
  readonly limitOnProbeC: number;
  /** Probability that the vapour is weaker than the limit now, and within the reaction time. */
  readonly passed: number;
  readonly passedWithinReaction: number;
  /** Time to the limit at the present rate [s]; null when the head is not rising. */
  readonly etaS: number | null;
  /** The head is clearly above the level it was held at. */
  readonly departed: boolean;
  /** The heat-off call: departed, and the limit reached or expected within the reaction time. */
  readonly heatOffDue: boolean;
}

/** Least rise above the held level that counts as having left it [K]. */
const leastDepartureK = 0.25;
/** After an upset the head must have been back for so long before its rate is believed [s]. */
const settleS = 30;
/**
 * So long after vapour came (back) the column still goes over to its own steady course, and a head may rise steeply and
 * come to rest: until then only the limit itself counts, not where a straight line would meet it [s].
 */
const steadyCourseS = 240;

/** Vapour that comes back after an upset drives the bulb faster than any departure does [K/s]. */
const fastestDepartureKPerS = 5 / 60;
/**
 * An expectation alone would call on every lucky second of noise: it must also be nearly sure that the
 * limit comes within this many reaction times.
 */
const soon = 3;
const soonSurety = 0.95;

export function judgeLimit(
  head: HeadState,
  plateau: PlateauView,
  limitC: number,
  bias: BiasBelief,
  reactionTimeS: number,
): LimitOutlook {
  const limitOnProbeC = limitC + bias.meanK;
  const toGoK = limitOnProbeC - head.vapourC;
  const nowSdK = Math.hypot(head.vapourSdK, 0.02);
  const passed = normalCumulative(-toGoK / nowSdK);
  const rate = Math.max(0, head.rateKPerS);
  const thenSdK = Math.hypot(nowSdK, reactionTimeS * head.rateSdKPerS);
  const passedWithinReaction = normalCumulative((rate * reactionTimeS - toGoK) / thenSdK);
  const aboveLevelK = plateau.levelC === null ? 0 : head.vapourC - plateau.levelC;
  const departed =
    plateau.heldS !== null &&
    aboveLevelK > Math.max(leastDepartureK, 3 * nowSdK) &&
    (plateau.departedS !== null || aboveLevelK > 0.6);
  const settled = plateau.recededSinceS === null && plateau.calmS >= settleS;
  const rising = head.rateKPerS > 2 * head.rateSdKPerS && head.rateKPerS < fastestDepartureKPerS;
  const passedSoon = normalCumulative(
    (rate * soon * reactionTimeS - toGoK) /
      Math.hypot(nowSdK, soon * reactionTimeS * head.rateSdKPerS),
  );
  const isExpected = rising && passedWithinReaction > 0.5 && passedSoon > soonSurety;
  const near = toGoK < 0 || (plateau.calmS >= steadyCourseS && isExpected);
  return {
    limitOnProbeC,
    passed,
    passedWithinReaction,
    etaS: toGoK <= 0 ? 0 : rate > 1e-5 ? toGoK / rate : null,
    departed,
    heatOffDue: settled && departed && near,
  };
}
