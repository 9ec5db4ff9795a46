/** Readings of one channel within one second, reduced to one observation. */
export interface BinnedSecond {
  readonly timeS: number;
  readonly value: number;
  readonly count: number;
  /** Largest minus smallest reading of the second. */
  readonly spread: number;
}

/** Gathers the readings of one second. */
export interface SecondBin {
  add(timeS: number, value: number): void;
  /** The second's observation, or null when nothing came; empties the bin. */
  take(): BinnedSecond | null;
}

/** More than this in one second adds nothing to the mean; it bounds the memory. */
const capacity = 256;

/**
 * A bin whose observation is the mean of the middle half of its readings: one wild reading among
 * many then moves nothing, while the resolution gained by averaging coarse steps is kept.
 */
export function createSecondBin(): SecondBin {
  const values = new Float64Array(capacity);
  let count = 0;
  let timeSum = 0;
  return {
    add: (timeS, value) => {
      if (count === capacity) return;
      values[count] = value;
      timeSum += timeS;
      count += 1;
    },
    take: () => {
      if (count === 0) return null;
      const timeS = timeSum / count;
      const sorted = count > 1 ? values.subarray(0, count).sort() : values;
      const cut = Math.floor(count / 4);
      let sum = 0;
      for (let index = cut; index < count - cut; index += 1) sum += sorted[index] as number;
      const binned: BinnedSecond = {
        timeS,
        value: sum / (count - 2 * cut),
        count,
        spread: (sorted[count - 1] as number) - (sorted[0] as number),
      };
      count = 0;
      timeSum = 0;
      return binned;
    },
  };
}
