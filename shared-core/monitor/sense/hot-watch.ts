import { lastsAfterS } from '../patience.ts';
import type { ProbeFault } from './probe-fault.ts';

/** Tells a head that stays hotter than the hottest thing there is. */
export interface HotWatch {
  see(timeS: number, valueC: number, than: HottestThings): void;
  fault(timeS: number): ProbeFault | null;
}

export interface HottestThings {
  /** Boiling water at this pressure, on the probe's scale. */
  readonly waterC: number;
  readonly potC: number | null;
}

/** Hotter by more than a bulb and a barometer are out by [K]; chosen here. */
const overWaterK = 1.5;
const overPotK = 2;

export function createHotWatch(): HotWatch {
  let overWaterSinceS: number | null = null;
  let overPotSinceS: number | null = null;
  // Two probes do not warm at once: only what lasts is a contradiction.
  const lasts = (sinceS: number | null, timeS: number): boolean =>
    sinceS !== null && timeS - sinceS > lastsAfterS;

  return {
    see: (timeS, valueC, { waterC, potC }) => {
      overWaterSinceS = valueC > waterC + overWaterK ? (overWaterSinceS ?? timeS) : null;
      const isOverPot = potC !== null && valueC > potC + overPotK;
      overPotSinceS = isOverPot ? (overPotSinceS ?? timeS) : null;
    },
    fault: (timeS) => {
      if (lasts(overWaterSinceS, timeS)) return 'above-boiling-water';
      return lasts(overPotSinceS, timeS) ? 'hotter-than-pot' : null;
    },
  };
}
