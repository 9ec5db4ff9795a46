import type { AlarmView } from '#shared-core';

/** Seconds between calls while nobody has acknowledged. */
const repeatS = { high: 4, medium: 20 } as const;

export interface CallState {
  readonly lastCallMs: number | null;
  readonly call: 'high' | 'medium' | null;
}

export const silent: CallState = { lastCallMs: null, call: null };

/**
 * Which call is due now: the most urgent alarm nobody has acknowledged, at once when it is new or
 * more urgent than before, and again every few seconds while it waits.
 */
export function callDue(
  state: CallState,
  alarms: readonly AlarmView[],
  nowMs: number,
): { readonly state: CallState; readonly play: 'high' | 'medium' | null } {
  const waiting = alarms.filter((view) => view.state === 'unacknowledged');
  if (waiting.length === 0) return { state: silent, play: null };
  const call = waiting.some(({ priority }) => priority === 'high') ? 'high' : 'medium';
  const isNew = state.call === null || (call === 'high' && state.call === 'medium');
  const isDue = state.lastCallMs === null || nowMs - state.lastCallMs >= repeatS[call] * 1000;
  if (!isNew && !isDue) return { state: { ...state, call }, play: null };
  return { state: { lastCallMs: nowMs, call }, play: call };
}
