import { even } from '../certainty.ts';

/** Waits for the head to come to rest in vapour for the first time. */
export interface FirstRest {
  /** Takes one second, `wetS` of them with vapour at the bulb so far; how long it has rested when it counts as held [s], else null. */
  see(rateKPerS: number, wet: number, wetS: number): number | null;
}

/** The head rests when it changes more slowly than this for so long, or has been bathed for so long [K/s], [s]. */
const restingKPerS = 0.012;
const restingForS = 20;
const waitedS = 150;

export function createFirstRest(): FirstRest {
  let restedForS = 0;
  return {
    see: (rateKPerS, wet, wetS) => {
      restedForS = wet > even && Math.abs(rateKPerS) < restingKPerS ? restedForS + 1 : 0;
      return restedForS < restingForS && wetS < waitedS ? null : restedForS;
    },
  };
}
