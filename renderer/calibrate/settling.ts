import { settledReading } from '#shared-core';

export type TimedTemperature = Parameters<typeof settledReading>[0][number];
/** A bath that has settled, or why it has not. */
export type Settling = ReturnType<typeof settledReading>;
export type SettledReading = Extract<Settling, { ok: true }>['value'];

/** A bath is judged by this much of what was heard last. */
const windowS = 45;
/** Digital probes step by 1/16 K, many meters by 0.1 K: the coarser of the two. */
const resolutionK = 0.1;

export function settlingOf(lately: readonly TimedTemperature[]): Settling {
  return settledReading(lately, resolutionK);
}

/** A probe that was plugged in anew counts its time anew; older readings are then of another bath. */
export function withReading(
  lately: readonly TimedTemperature[],
  reading: TimedTemperature,
): readonly TimedTemperature[] {
  const last = lately.at(-1);
  if (last && reading.timeS === last.timeS) return lately;
  if (last && reading.timeS < last.timeS) return [reading];
  return [...lately.filter(({ timeS }) => timeS > reading.timeS - windowS), reading];
}
