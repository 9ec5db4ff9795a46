import type { MonitorFacts } from '../monitor-facts.ts';

/** Deadband on temperature alarms: the larger of 0.3 K and three standard deviations of the noise. */
export function deadbandK({ noise }: MonitorFacts): number {
  return Math.max(0.3, 3 * Math.hypot(noise.whiteSdK, noise.slowSdK));
}
