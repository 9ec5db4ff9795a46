/** Notices a probe that repeats itself: digits that used to flicker no longer do. */
export interface FrozenWatch {
  /** Takes one reading; true when so long a repetition has become unbelievable. */
  see(value: number): boolean;
}

/** Chance below which a run of equal readings is no longer taken for rest. */
const disbelief = 1e-9;
/** A flicker is known after so many readings, and what came long before tells of another noise [readings]; chosen here. */
const learnReadings = 40;
const memoryReadings = 300;
/** A jump back by more than one digit is noise; by one digit it may be a steady value between two. */
const moreThanOneDigit = 1.5;

/**
 * Learns how often readings turn back by more than one digit, and judges a run of n equal ones by
 * `(1 − p/2)^n`. Steady rises do not count, nor does a coarse probe that toggles between two values: such
 * probes may well stand still.
 */
export function createFrozenWatch(): FrozenWatch {
  let last = Number.NaN;
  let lastStep = 0;
  let digit = Number.POSITIVE_INFINITY;
  let run = 0;
  let seen = 0;
  let turns = 0;
  return {
    see: (value) => {
      if (value === last) {
        run += 1;
      } else {
        const fade = seen > memoryReadings ? memoryReadings / seen : 1;
        const step = value - last;
        const size = Math.abs(step);
        // Floating point leaves crumbs below any probe's digit.
        if (size > 1e-6 && size < digit) digit = size;
        const turned = step * lastStep < 0 && size > moreThanOneDigit * digit;
        seen = seen * fade + run + 1;
        turns = turns * fade + (turned ? 1 : 0);
        run = 0;
        last = value;
        lastStep = step;
      }
      if (seen < learnReadings) return false;
      return run * Math.log1p(-Math.min(0.9, turns / seen / 2)) < Math.log(disbelief);
    },
  };
}
