import { unlikelySds } from '../certainty.ts';
import type { BulbDoubt } from '../sense/probe-fault.ts';
import type { Situation } from './situation.ts';
import type { VapourScale } from './vapour-scale.ts';

/** Deviation that probe and pressure explain at least [K]. */
const leastExplainedK = 1;

/**
 * What speaks against trusting the head, which is staged all the same: it held a level at which no ethanol–water vapour
 * condenses, by more than the stated doubts of probe and pressure explain. It holds until its cause is corrected: another air
 * pressure moves the azeotrope, another calibration the level. What only the first minutes showed may have been lighter
 * volatiles.
 */
export function judgeBulb(
  { lowestLevelC, lowestLaterC }: Situation,
  { azeotropeC }: VapourScale,
  statedSdK: number,
): BulbDoubt | null {
  const levelC = lowestLaterC ?? lowestLevelC;
  if (levelC === null) return null;
  return azeotropeC - levelC > explainedK(statedSdK) ? 'below-boiling' : null;
}

/** How far below the azeotrope a level may lie by the stated doubts of probe and pressure [K]. */
export function explainedK(statedSdK: number): number {
  return Math.max(leastExplainedK, unlikelySds * statedSdK);
}
