import { type HeadNoise, slowCorrelationS } from '../sense/head-noise.ts';

/** Scatter of one block's mean: the probe's, and the level's own wander, a random walk. */
export interface BlockNoise extends HeadNoise {
  readonly wanderK2PerS: number;
}

/** What the filter makes of one block, whatever stands in it: the head as it was read, or a ramp that is laid upon it. */
export interface FilterStep {
  readonly stepS: number;
  /** What is left of the slow scatter since the block before. */
  readonly kept: number;
  readonly levelGain: number;
  readonly driftGain: number;
  readonly slowGain: number;
  /** Of what a block shows that was not expected [K²]. */
  readonly variance: number;
}

/** Level, drift and slow scatter of a head that holds a plateau. */
export interface PlateauFilter {
  restart(): void;
  /** Takes the mean of one block; null for the first after a restart, which gives the level and tells nothing else. */
  see(timeS: number, meanC: number, noise: BlockNoise): FilterStep | null;
  /** What the last block showed beyond what was expected [K]. */
  surpriseK(): number;
  /** The level as it is believed now [°C]. */
  levelC(): number;
}

/** Plateaus drift by 0.00 … 0.02 K/min (real traces, `test/reference/real-traces`): by so much, either way [K/s]. */
const driftSdKPerS = 0.01 / 60;

/**
 * A Kalman filter of what a plateau does without leaving: `reading = level + slow + white`, with `level' = drift + wander`. The level
 * is not known before the first block, the drift is known to be small.
 *
 * Source: R. E. Kalman, J. Basic Eng. 82 (1960) 35; from memory.
 */
export function createPlateauFilter(): PlateauFilter {
  let previousS: number | null = null;
  let level = 0;
  let drift = 0;
  let slow = 0;
  let surpriseK = 0;
  // Covariance of level, drift and slow scatter.
  let ll = 0;
  let ld = 0;
  let ls = 0;
  let dd = 0;
  let ds = 0;
  let ss = 0;

  const begin = (meanC: number, { whiteSdK, slowSdK }: BlockNoise): void => {
    level = meanC;
    drift = 0;
    slow = 0;
    ss = slowSdK ** 2;
    ls = -ss;
    ll = ss + whiteSdK ** 2;
    ld = 0;
    dd = driftSdKPerS ** 2;
    ds = 0;
  };

  const expect = (stepS: number, kept: number, { slowSdK, wanderK2PerS }: BlockNoise): void => {
    level += drift * stepS;
    slow *= kept;
    ll += 2 * stepS * ld + stepS * stepS * dd + wanderK2PerS * stepS;
    ld += stepS * dd;
    ls = kept * (ls + stepS * ds);
    ds *= kept;
    ss = kept * kept * ss + slowSdK ** 2 * (1 - kept * kept);
  };

  const learn = (meanC: number, { whiteSdK }: BlockNoise): Omit<FilterStep, 'stepS' | 'kept'> => {
    const ofLevel = ll + ls;
    const ofDrift = ld + ds;
    const ofSlow = ls + ss;
    const variance = ofLevel + ofSlow + whiteSdK ** 2;
    const levelGain = ofLevel / variance;
    const driftGain = ofDrift / variance;
    const slowGain = ofSlow / variance;
    surpriseK = meanC - level - slow;
    level += levelGain * surpriseK;
    drift += driftGain * surpriseK;
    slow += slowGain * surpriseK;
    ll -= levelGain * ofLevel;
    ld -= levelGain * ofDrift;
    ls -= levelGain * ofSlow;
    dd -= driftGain * ofDrift;
    ds -= driftGain * ofSlow;
    ss -= slowGain * ofSlow;
    return { levelGain, driftGain, slowGain, variance };
  };

  return {
    restart: () => {
      previousS = null;
    },
    see: (timeS, meanC, noise) => {
      const stepS = previousS === null ? null : timeS - previousS;
      previousS = timeS;
      if (stepS === null) {
        begin(meanC, noise);
        return null;
      }
      const kept = Math.exp(-stepS / slowCorrelationS);
      expect(stepS, kept, noise);
      const { levelGain, driftGain, slowGain, variance } = learn(meanC, noise);
      return { stepS, kept, levelGain, driftGain, slowGain, variance };
    },
    surpriseK: () => surpriseK,
    levelC: () => level,
  };
}
