import type { MonitorFacts } from '../monitor-facts.ts';
import { isBlind } from '../sense/probe-fault.ts';

/** Glass that nobody burns at, and that no vapour warms; common practice, no source [°C]. */
export const coldC = 40;
/** So long after, nothing boils on and nothing drips: the run was left on, or forgotten; chosen here [s]. */
export const overAfterS = 3600;

type Cooling = Pick<MonitorFacts, 'timeS' | 'stage' | 'heat' | 'head' | 'fault' | 'potC' | 'scale'>;

/**
 * Since when nothing has been left to watch [s]: the heat is known to be off, and the head is cold over a pot in which nothing boils, or the probe, which somebody
 * has perhaps put away, is not heard. Null where something is.
 */
export function followOver(sinceS: number | null, facts: Cooling): number | null {
  const { timeS, stage, heat, head, fault, potC, scale } = facts;
  const isCold = head !== null && head.bulbC < coldC && (potC === null || potC < scale.azeotropeC);
  const isQuiet = stage === 'cool-down' && heat === 'off' && (isCold || isBlind(fault));
  return isQuiet ? (sinceS ?? timeS) : null;
}

/** Whether that has lasted so long that the run may be asked about: only a person ends it. */
export function isOver(sinceS: number | null, timeS: number): boolean {
  return sinceS !== null && timeS - sinceS >= overAfterS;
}
