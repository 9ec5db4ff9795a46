/** Notices a probe that repeats itself: digits that used to flicker no longer do. */
export interface FrozenWatch {
  /** Takes one reading; true when so long a repetition has become unbelievable. */
  see(value: number): boolean;
}

/** Chance below which a run of equal readings is no longer taken for rest. */
const disbelief = 1e-9;
const learnReadings = 40;
const memoryReadings = 300;

/**
 * Learns how often successive readings differ, and judges a run of n equal ones by `(1 − p/2)^n`.
 * A coarse or very quiet probe differs seldom, so it is given as much longer as it deserves.
 */
export function createFrozenWatch(): FrozenWatch {
  let last = Number.NaN;
  let run = 0;
  let seen = 0;
  let changes = 0;
  return {
    see: (value) => {
      if (value === last) {
        run += 1;
      } else {
        const fade = seen > memoryReadings ? memoryReadings / seen : 1;
        seen = seen * fade + run + 1;
        changes = changes * fade + 1;
        run = 0;
        last = value;
      }
      if (seen < learnReadings) return false;
      return run * Math.log1p(-Math.min(0.9, changes / seen / 2)) < Math.log(disbelief);
    },
  };
}
