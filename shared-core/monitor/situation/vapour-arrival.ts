import { even } from '../certainty.ts';
import { lastsAfterS } from '../patience.ts';
import type { HeadState } from './vapour-filter.ts';

/** When vapour first reached the bulb, and first bathed it. */
export interface VapourArrival {
  /**
   * Takes a second in which a reading was believed, until the bulb is bathed; `wet` is what was believed of vapour by it. Where one odd reading
   * is followed by what contradicts it, the filter runs on alone, and the bulb with it.
   */
  see(timeS: number, head: HeadState, wet: number, azeotropeC: number): void;
  arrivedS(): number | null;
  bathedS(): number | null;
  /** How long vapour had been at the bulb when it was bathed [s]. */
  wetBeforeS(): number;
}

/** A bulb this far below the azeotrope is not yet reached by vapour [K]. */
const arrivingK = 15;
/** A bulb further below what vapour is than this is not bathed [K]. */
export const bathedK = 5;
/** The bulb needs 2.2 times as long from cold to bathed as for the last third of the way (first-order lag). */
const warmingFactor = 2.2;

export function createVapourArrival(): VapourArrival {
  let arrivedS: number | null = null;
  let bathedS: number | null = null;
  return {
    see: (timeS, { bulbC }, wet, azeotropeC) => {
      if (bathedS !== null || wet <= even) return;
      if (bulbC > azeotropeC - arrivingK) arrivedS ??= timeS;
      if (bulbC >= azeotropeC - bathedK) bathedS = timeS;
    },
    arrivedS: () => arrivedS,
    bathedS: () => bathedS,
    wetBeforeS: () =>
      arrivedS === null || bathedS === null
        ? 0
        : Math.min(lastsAfterS, Math.round(warmingFactor * (bathedS - arrivedS))),
  };
}
