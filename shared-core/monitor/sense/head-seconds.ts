import type { LinkChange, Reading, RunSettings } from '../../run/index.ts';
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
  seeLink(change: LinkChange): void;
  /** The open second's observation; the one after it is open from now on. */
  take(): BinnedSecond | null;
  /**
   * Null from when the program was closed until the probe has been heard again: how long ago that was may be told by a clock
   * that somebody set, or that was empty when the computer came back, and nothing on board tells better.
   */
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
    seeLink: (change) => {
      health.seeLink(change);
      if (change.reason === 'program-closed') latest = null;
    },
    take: () => {
      const taken = open.take();
      [open, next] = [next, open];
      return taken;
    },
    latest: () => latest,
  };
}
