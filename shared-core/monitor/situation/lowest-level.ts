import { lastsAfterS } from '../patience.ts';
import type { HeadState } from './vapour-filter.ts';

/** The lowest level the head held for a while, whoever took the heat away in between. */
export interface LowestLevel {
  /** Takes one second of the head. */
  see(head: HeadState, azeotropeC: number): void;
  lowestC(): number | null;
  /** The same without the first minutes of vapour; null before they are over. */
  lowestLaterC(): number | null;
}

/** The first levels are means of so many seconds, the later ones of longer: the least of many noisy means lies too low. */
const firstBlockS = 20;
const shortBlocks = 3;
/** Lighter volatiles of a spoilt or denatured charge are over so long after the first level [s]; chosen here. */
const firstMinutesS = 600;
/** Without vapour a bulb cools, in a front it warms faster than any departure: one that does neither is in vapour [K/s]. */
const coolingKPerS = -0.006;
/** No departure is followed by a faster rise than this for long; what is steeper is vapour that comes, or comes back [K/s]. */
export const departsKPerS = 0.03;
/** Over a whole block, too [K]; chosen here. */
const restsWithinK = 0.3;
/** A bulb further below the azeotrope than this is not yet near vapour, whatever pressure and probe are off by [K]. */
const nearK = 12;

export function createLowestLevel(): LowestLevel {
  let sum = 0;
  let count = 0;
  let firstC = 0;
  let blocks = 0;
  let nearForS = 0;
  let lowestC: number | null = null;
  let lowestLaterC: number | null = null;

  const isResting = ({ bulbRateKPerS }: HeadState): boolean =>
    bulbRateKPerS > coolingKPerS && bulbRateKPerS < departsKPerS;

  const keep = (meanC: number): void => {
    lowestC = Math.min(lowestC ?? meanC, meanC);
    if (nearForS > firstMinutesS) lowestLaterC = Math.min(lowestLaterC ?? meanC, meanC);
  };

  return {
    see: (head, azeotropeC) => {
      if (head.bulbC < azeotropeC - nearK) return;
      if (blocks > 0) nearForS += 1;
      if (!isResting(head)) return;
      if (count === 0) firstC = head.bulbC;
      sum += head.bulbC;
      count += 1;
      if (count < (blocks < shortBlocks ? firstBlockS : lastsAfterS)) return;
      const rests = Math.abs(head.bulbC - firstC) < restsWithinK;
      if (rests) {
        blocks += 1;
        keep(sum / count);
      }
      sum = 0;
      count = 0;
    },
    lowestC: () => lowestC,
    lowestLaterC: () => lowestLaterC,
  };
}
