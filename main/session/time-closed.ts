import type { ClockReading } from './clock-watch.ts';

/** What time services slew, and what a clock is off by without having been set [s]. */
const smallS = 2;

export interface TimeClosed {
  readonly closedS: number;
  /** False where no clock tells, and it may have been far longer. */
  readonly isKnown: boolean;
}

/**
 * How long ago a record was written, by another process perhaps before the computer was started again [s]. The monotonic clock is
 * right for as long as the computer ran, and counts no sleep; the wall clock is right unless somebody set it. Where they differ, the
 * wall clock is believed if the computer was off or slept for as long, and the monotonic clock otherwise. A computer that was off and
 * whose wall clock stands before where it must by now has lost it: then it has been for at least as long as it has been on again.
 */
export function timeClosed(
  written: { readonly monoS: number; readonly wallMs: number },
  now: ClockReading,
): TimeClosed {
  const byWallS = (now.wallMs - written.wallMs) / 1000;
  const countedS = now.monoS - written.monoS;
  const wasRestarted = countedS < 0 || byWallS > now.uptimeS + smallS;
  if (wasRestarted) {
    const isKnown = byWallS >= now.uptimeS - smallS;
    return { closedS: Math.max(byWallS, now.uptimeS, 0), isKnown };
  }
  const sleptS = now.uptimeS - now.monoS;
  const uncountedS = byWallS - countedS;
  const closedS = uncountedS > smallS && uncountedS <= sleptS + smallS ? byWallS : countedS;
  return { closedS, isKnown: true };
}
