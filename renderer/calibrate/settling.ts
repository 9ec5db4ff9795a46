import { fail, type Result, settledReading } from '#shared-core';

export type TimedTemperature = Parameters<typeof settledReading>[0][number];
type Judged = ReturnType<typeof settledReading>;
export type SettledReading = Extract<Judged, { ok: true }>['value'];
/** A bath that has settled, or why it has not; or that no probe is heard that could say. */
export type Settling = Result<
  SettledReading,
  Extract<Judged, { ok: false }>['error'] | { readonly kind: 'not-heard' }
>;

/** A bath is judged by this much of what was heard last. */
const windowS = 45;
/** Digital probes step by 1/16 K, many meters by 0.1 K: the coarser of the two. */
const resolutionK = 0.1;

export function settlingOf(lately: readonly TimedTemperature[], isHeard = true): Settling {
  // What a probe said before it fell silent or was let go is not what the bath is now.
  return isHeard ? settledReading(lately, resolutionK) : fail({ kind: 'not-heard' });
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
