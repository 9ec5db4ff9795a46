import type { AlarmState } from './alarm-state.ts';

/**
 * What can happen to one alarm. `active` is its condition after deadband, before the delays; `isSameCause` says that
 * what returns is what nobody has answered yet: the alarm stands again, it is not raised anew.
 */
export type AlarmInput =
  | {
      readonly kind: 'condition';
      readonly timeS: number;
      readonly active: boolean;
      readonly isSameCause?: boolean;
    }
  | { readonly kind: 'acknowledge'; readonly timeS: number }
  | { readonly kind: 'shelve'; readonly timeS: number; readonly untilS: number };

/** How long a condition must last before the alarm follows it. */
export interface AlarmDelays {
  readonly onDelayS: number;
  readonly offDelayS: number;
}

/** One alarm as it stands: its state and the times it was reached at. */
export interface AlarmTrack {
  readonly state: AlarmState;
  /** The condition after the on- and off-delays; goes on being followed while shelved. */
  readonly active: boolean;
  /** Since when the raw condition has differed from `active`; null while they agree. */
  readonly differsSinceS: number | null;
  readonly raisedS: number | null;
  readonly clearedS: number | null;
  readonly acknowledgedS: number | null;
  readonly shelvedUntilS: number | null;
}

/** An alarm whose condition has never been met. */
export const quietAlarmTrack: AlarmTrack = {
  state: 'normal',
  active: false,
  differsSinceS: null,
  raisedS: null,
  clearedS: null,
  acknowledgedS: null,
  shelvedUntilS: null,
};

/** The transitions of IEC 62682 (ISA-18.2, figure of alarm states) that this tool uses. */
export const alarmTransitions: Readonly<Record<AlarmState, readonly AlarmState[]>> = {
  normal: ['unacknowledged', 'shelved'],
  unacknowledged: ['acknowledged', 'returned-unacknowledged', 'shelved'],
  acknowledged: ['normal', 'shelved'],
  'returned-unacknowledged': ['normal', 'unacknowledged', 'shelved'],
  shelved: ['normal', 'unacknowledged'],
};

/**
 * Moves one alarm through the states of IEC 62682.
 *
 * Acknowledging never ends an active condition; shelving always expires, and an alarm whose
 * condition still holds then calls again.
 */
export function stepAlarm(track: AlarmTrack, input: AlarmInput, delays: AlarmDelays): AlarmTrack {
  const current = expireShelf(track, input.timeS);
  switch (input.kind) {
    case 'condition':
      return followCondition(current, input, delays);
    case 'acknowledge':
      return acknowledge(current, input.timeS);
    case 'shelve':
      return { ...current, state: 'shelved', shelvedUntilS: input.untilS };
  }
}

function expireShelf(track: AlarmTrack, timeS: number): AlarmTrack {
  if (track.shelvedUntilS === null || timeS < track.shelvedUntilS) return track;
  const unshelved: AlarmTrack = { ...track, state: 'normal', shelvedUntilS: null };
  return track.active ? raise(unshelved, timeS) : unshelved;
}

function raise(track: AlarmTrack, timeS: number): AlarmTrack {
  return {
    ...track,
    state: 'unacknowledged',
    active: true,
    differsSinceS: null,
    raisedS: timeS,
    clearedS: null,
    acknowledgedS: null,
  };
}

/** An alarm that came back before anybody answered it: one alarm, raised when it first called. */
function standAgain(track: AlarmTrack): AlarmTrack {
  return { ...track, state: 'unacknowledged', active: true, differsSinceS: null, clearedS: null };
}

function followCondition(
  track: AlarmTrack,
  { timeS, active, isSameCause = false }: Extract<AlarmInput, { kind: 'condition' }>,
  delays: AlarmDelays,
): AlarmTrack {
  if (active === track.active) {
    return track.differsSinceS === null ? track : { ...track, differsSinceS: null };
  }
  const sinceS = track.differsSinceS ?? timeS;
  const delayS = active ? delays.onDelayS : delays.offDelayS;
  if (timeS - sinceS < delayS) return { ...track, differsSinceS: sinceS };
  if (active) {
    if (track.state === 'shelved') return { ...track, active, differsSinceS: null };
    const returns = isSameCause && track.state === 'returned-unacknowledged';
    return returns ? standAgain(track) : raise(track, timeS);
  }
  const cleared = { ...track, active, differsSinceS: null, clearedS: timeS };
  if (track.state === 'unacknowledged') return { ...cleared, state: 'returned-unacknowledged' };
  return track.state === 'acknowledged' ? { ...cleared, state: 'normal' } : cleared;
}

function acknowledge(track: AlarmTrack, timeS: number): AlarmTrack {
  if (track.state === 'unacknowledged') {
    return { ...track, state: 'acknowledged', acknowledgedS: timeS };
  }
  if (track.state === 'returned-unacknowledged') {
    return { ...track, state: 'normal', acknowledgedS: timeS };
  }
  return track;
}
