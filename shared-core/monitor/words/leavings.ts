import type { MonitorFacts } from '../monitor-facts.ts';

/** How often vapour has left the bulb and come back, each time soon after the last. */
export interface Leavings {
  readonly count: number;
  readonly lastS: number;
  readonly isAway: boolean;
}

export const noLeavings: Leavings = { count: 0, lastS: Number.NEGATIVE_INFINITY, isAway: false };

/** A flame is put back within these seconds; longer away, or longer there, is no coming and going (common practice, no source). */
const soonS = 150;
/** So many in a row are a habit, and said once. */
const habit = 3;

/** One second more. */
export function followLeavings(
  before: Leavings,
  { situation, timeS }: Pick<MonitorFacts, 'situation' | 'timeS'>,
): Leavings {
  const isAway = situation.recededSinceS !== null;
  if (isAway === before.isAway) return before;
  if (!isAway) return { ...before, isAway };
  const isSoon = timeS - before.lastS <= soonS;
  return { count: isSoon ? before.count + 1 : 1, lastS: timeS, isAway };
}

/** Whether the heat is being taken away and put back, by what the head does: nobody marks each time. */
export function isToAndFro(
  { count, lastS }: Leavings,
  { heat, timeS }: Pick<MonitorFacts, 'heat' | 'timeS'>,
): boolean {
  return count >= habit && timeS - lastS <= soonS && heat !== 'off';
}
