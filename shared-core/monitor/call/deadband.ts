import { unlikelySds } from '../certainty.ts';
import type { MonitorFacts } from '../monitor-facts.ts';

/** Deadband on temperature alarms: the larger of 0.3 K and what noise alone may do. */
export function deadbandK({ noise }: MonitorFacts): number {
  return Math.max(0.3, unlikelySds * Math.hypot(noise.whiteSdK, noise.slowSdK));
}
