import type { ClockReading } from './clock-watch.ts';

/** What time services slew, and what a clock is off by without having been set [s]. */
const smallS = 2;

/**
 * How long ago a record was written, by another process perhaps before the computer was started again [s]. The monotonic clock is
 * right for as long as the computer ran, and counts no sleep; the wall clock is right unless somebody set it. Where they differ, the
 * wall clock is believed if the computer was off or slept for as long, and the monotonic clock otherwise.
 */
export function timeClosedS(
  written: { readonly monoS: number; readonly wallMs: number },
  now: ClockReading,
): number {
  const byWallS = (now.wallMs - written.wallMs) / 1000;
  const countedS = now.monoS - written.monoS;
  const wasRestarted = countedS < 0 || byWallS > now.uptimeS + smallS;
  // Both clocks were new: it has been closed since before the computer was started.
  if (wasRestarted) return Math.max(byWallS, now.uptimeS, 0);
  const sleptS = now.uptimeS - now.monoS;
  const uncountedS = byWallS - countedS;
  return uncountedS > smallS && uncountedS <= sleptS + smallS ? byWallS : countedS;
}
