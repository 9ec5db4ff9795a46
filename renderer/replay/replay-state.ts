import { assertNever } from '#shared-core';

export const replaySpeeds = [1, 10, 60, 120, 240] as const;
export type ReplaySpeed = (typeof replaySpeeds)[number];

/** Where a replay stands. Time moves only through events, so a replay is as testable as a sum. */
export interface ReplayState {
  readonly timeS: number;
  readonly endS: number;
  readonly speed: ReplaySpeed;
  readonly isPlaying: boolean;
}

export type ReplayEvent =
  | { readonly type: 'opened'; readonly endS: number }
  | { readonly type: 'play' }
  | { readonly type: 'pause' }
  | { readonly type: 'speed'; readonly speed: ReplaySpeed }
  | { readonly type: 'jumped'; readonly timeS: number }
  | { readonly type: 'passed'; readonly realS: number };

export const atStart: ReplayState = { timeS: 0, endS: 0, speed: 60, isPlaying: false };

export function replayAfter(state: ReplayState, event: ReplayEvent): ReplayState {
  switch (event.type) {
    case 'opened':
      return { ...state, timeS: 0, endS: event.endS, isPlaying: false };
    case 'play':
      return { ...state, isPlaying: true, timeS: state.timeS >= state.endS ? 0 : state.timeS };
    case 'pause':
      return { ...state, isPlaying: false };
    case 'speed':
      return { ...state, speed: event.speed };
    case 'jumped':
      return { ...state, timeS: Math.min(state.endS, Math.max(0, event.timeS)) };
    case 'passed': {
      if (!state.isPlaying) return state;
      const timeS = Math.min(state.endS, state.timeS + event.realS * state.speed);
      return { ...state, timeS, isPlaying: timeS < state.endS };
    }
    default:
      return assertNever(event);
  }
}
