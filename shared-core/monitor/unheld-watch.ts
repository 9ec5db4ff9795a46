import type { HeadState } from './head-filter.ts';
import type { LimitOutlook } from './limit-outlook.ts';
import type { PlateauView } from './plateau-watch.ts';

/** Watches a head that rises through the main fraction and past the limit without holding for long. */
export interface UnheldWatch {
  second(now: UnheldSecond): void;
  /** How long the limit has been passed by such a head; 0 when it held before or never came below [s]. */
  limitPassedForS(): number;
}

export interface UnheldSecond {
  readonly head: HeadState;
  readonly plateau: PlateauView;
  readonly outlook: LimitOutlook;
  /** On the probe's scale. */
  readonly azeotropeC: number;
  /** The head has been held below the limit long enough: its departure is watched for instead. */
  readonly isArmed: boolean;
}

/** Strong vapour must have been at the bulb for so long: a front that only rushes past is no fraction [s]. */
const leastStrongS = 60;
/** A bulb this far below the azeotrope is not yet bathed by vapour [K]. */
const bathedWithinK = 1;

export function createUnheldWatch(): UnheldWatch {
  let strongForS = 0;
  let passedForS = 0;
  return {
    second: ({ head, plateau, outlook, azeotropeC, isArmed }) => {
      if (plateau.bathedS === null) return;
      const isBathed = head.vapourC > azeotropeC - bathedWithinK;
      if (isBathed && outlook.passed < 0.05) strongForS += 1;
      // A dry column's first vapour is weak and gets stronger as reflux builds up: nothing has been lost then.
      const sinking = head.rateKPerS < -2 * head.rateSdKPerS;
      const passed = outlook.passed > 0.95 && !sinking && plateau.recededSinceS === null;
      const mayCount = passedForS > 0 || (!isArmed && strongForS >= leastStrongS);
      passedForS = passed && mayCount ? passedForS + 1 : 0;
    },
    limitPassedForS: () => passedForS,
  };
}
