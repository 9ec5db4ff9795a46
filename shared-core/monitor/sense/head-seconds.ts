import type { Reading, RunSettings } from '../../run/index.ts';
import type { ProbeHealth } from './probe-health.ts';
import { type BinnedSecond, createSecondBin } from './second-bin.ts';

/** Newest reading, calibrated: shown at once, whatever the second's tick makes of it later. */
export interface LatestHead {
  readonly timeS: number;
  readonly temperatureC: number;
}

/** Gathers the head's readings, calibrated and screened, into whole seconds. */
export interface HeadSeconds {
  /** `openS`: end of the second that is open; what comes later belongs to the one after it. */
  see(reading: Reading, openS: number): void;
  /** The open second's observation; the one after it is open from now on. */
  take(): BinnedSecond | null;
  latest(): LatestHead | null;
}

export function createHeadSeconds(
  { offsetK, gain }: RunSettings['probe'],
  health: ProbeHealth,
): HeadSeconds {
  let open = createSecondBin();
  let next = createSecondBin();
  let latest: LatestHead | null = null;
  return {
    see: (reading, openS) => {
      const temperatureC = offsetK + gain * reading.value;
      if (!health.seeReading(reading, temperatureC)) return;
      latest = { timeS: reading.timeS, temperatureC };
      (reading.timeS < openS ? open : next).add(reading.timeS, temperatureC);
    },
    take: () => {
      const taken = open.take();
      [open, next] = [next, open];
      return taken;
    },
    latest: () => latest,
  };
}
