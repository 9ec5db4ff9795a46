import type { BinnedSecond } from './second-bin.ts';

/**
 * A probe that slipped goes on telling changes truly: its step is taken off from there on, until readings fit
 * better without.
 */
export interface SlippedProbe {
  /** Takes the step off, as far as one stands, where the bulb was expected at `bulbC`. */
  corrected(reported: BinnedSecond | null, bulbC: number | null): BinnedSecond | null;
  slipped(byK: number): void;
}

/** So much better a reading must fit without the step before it counts as gone [K]. */
const betterK = 1;

export function createSlippedProbe(): SlippedProbe {
  let stepK = 0;
  return {
    corrected: (reported, bulbC) => {
      if (reported === null) return null;
      const value = reported.value - stepK;
      const isBack =
        bulbC !== null && Math.abs(reported.value - bulbC) < Math.abs(value - bulbC) - betterK;
      if (isBack) stepK = 0;
      return isBack ? reported : { ...reported, value };
    },
    slipped: (byK) => {
      stepK += byK;
    },
  };
}
