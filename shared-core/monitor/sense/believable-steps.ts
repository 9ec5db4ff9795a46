import { confirmedAfterS } from '../patience.ts';
import type { BinnedSecond } from './second-bin.ts';

/** What one second's reading may differ by from where the bulb should be. */
export interface ExpectedStep {
  /** Where the bulb should be now; null before the first reading or after a long gap. */
  readonly bulbC: number | null;
  /** Noise of one second's observation [K]. */
  readonly noiseSdK: number;
  /** The held plateau on the probe's scale; null before the head has held. */
  readonly plateauC: number | null;
}

/** Whether a reading is believed, and how much of it is the probe's own step [K]; 0 for what the head may have done. */
export type StepVerdict = { readonly believed: boolean; readonly probeStepK: number };

/** Tells a head that changes from a probe that jumps. */
export interface BelievableSteps {
  /** `gapS`: time since the last good reading [s]. */
  judge(binned: BinnedSecond, expected: ExpectedStep, gapS: number): StepVerdict;
  /** Once a second: what jumped counts less and less, half as much after 23 s. */
  fade(): void;
  jumps(): number;
}

/** Chosen here: no vapour front heats a bulb faster, no wet bulb cools faster [K/s]. */
const fastestRiseKPerS = 20;
const fastestFallKPerS = 8;
/** On a plateau vapour gets hotter only as fast as the pot weakens; a fast tail is some 0.1 K/s. */
const fastestRiseAbovePlateauKPerS = 0.5;
/** What a jump counts a second later: a probe that has stopped jumping is soon believed again; chosen here. */
const jumpsKept = 0.97;

/** No reading waits to be confirmed: none is like it. */
const nothing = { valueC: Number.NaN, count: 0 };

export function createBelievableSteps(): BelievableSteps {
  let pending = nothing;
  let jumps = 0;

  return {
    judge: (binned, { bulbC, noiseSdK, plateauC }, gapS) => {
      const change = bulbC === null ? 0 : binned.value - bulbC;
      const slack = 1 + 6 * noiseSdK;
      const abovePlateau = plateauC !== null && binned.value > plateauC + 1;
      const riseKPerS = abovePlateau ? fastestRiseAbovePlateauKPerS : fastestRiseKPerS;
      if (change <= slack + riseKPerS * gapS && change >= -(slack + fastestFallKPerS * gapS)) {
        pending = nothing;
        return { believed: true, probeStepK: 0 };
      }
      jumps += 1;
      const isSame = Math.abs(binned.value - pending.valueC) < slack;
      pending = { valueC: binned.value, count: isSame ? pending.count + 1 : 1 };
      if (pending.count < confirmedAfterS) return { believed: false, probeStepK: 0 };
      pending = nothing;
      return { believed: true, probeStepK: change > 0 && abovePlateau ? change : 0 };
    },
    fade: () => {
      jumps *= jumpsKept;
    },
    jumps: () => jumps,
  };
}
