import type { Heat, MarksLedger } from '../marks-ledger.ts';
import type { HeadNow } from '../situation/head-course.ts';
import { strengthensKPerS } from '../situation/one-sided-bulb.ts';

/** The heat by the person's marks, as far as the head does not belie them. */
export interface BelievedHeat {
  second(now: HeadNow): void;
  heat(): Heat;
}

/** A pot boils on for a minute; what bathes the bulb for longer and does not let it cool is heated [s]. */
const beliesAfterS = 90;

export function createBelievedHeat(marks: MarksLedger): BelievedHeat {
  /** Seconds of vapour that does not die away since the heat was last marked off. */
  let vapourSinceOffS = 0;
  let offSinceS: number | null = null;
  return {
    second: ({ situation, head }) => {
      const isWet = situation.recededSinceS === null && situation.bathedS !== null;
      const rests = head !== null && head.bulbRateKPerS > -strengthensKPerS;
      if (marks.heat() !== 'off' || marks.heatChangedS() !== offSinceS) vapourSinceOffS = 0;
      else if (isWet && rests) vapourSinceOffS += 1;
      offSinceS = marks.heatChangedS();
    },
    // Vapour that goes on bathing the bulb belies a mark: the heat is on again, and nobody has said so.
    heat: () =>
      marks.heat() === 'off' && vapourSinceOffS > beliesAfterS ? 'unknown' : marks.heat(),
  };
}
