import { describe, expect, test } from 'vitest';
import {
  type AlarmInput,
  type AlarmTrack,
  alarmTransitions,
  createRandom,
  quietAlarmTrack,
  stepAlarm,
} from '#shared-core';

const delays = { onDelayS: 2, offDelayS: 3 };
const run = (...inputs: readonly AlarmInput[]): AlarmTrack =>
  inputs.reduce((track, input) => stepAlarm(track, input, delays), quietAlarmTrack);
const condition = (timeS: number, active: boolean): AlarmInput => ({
  kind: 'condition',
  timeS,
  active,
});

describe('stepAlarm', () => {
  test('raises only after the on-delay and returns only after the off-delay', () => {
    expect(run(condition(10, true), condition(11, true)).state).toBe('normal');
    expect(
      run(condition(10, true), condition(12, true), condition(20, false), condition(23, false)),
    ).toEqual({
      state: 'returned-unacknowledged',
      active: false,
      differsSinceS: null,
      raisedS: 12,
      clearedS: 23,
      acknowledgedS: null,
      shelvedUntilS: null,
    });
  });

  test('acknowledging never ends an active condition', () => {
    const track = run(condition(0, true), condition(2, true), { kind: 'acknowledge', timeS: 3 });
    expect({ state: track.state, active: track.active, clearedS: track.clearedS }).toEqual({
      state: 'acknowledged',
      active: true,
      clearedS: null,
    });
  });

  test('a shelf expires by itself and the alarm calls again while its condition holds', () => {
    const shelved = run(condition(0, true), condition(2, true), {
      kind: 'shelve',
      timeS: 5,
      untilS: 65,
    });
    const later = stepAlarm(shelved, condition(64, true), delays);
    const expired = stepAlarm(later, condition(65, true), delays);
    expect([shelved.state, later.state, expired.state, expired.raisedS]).toEqual([
      'shelved',
      'shelved',
      'unacknowledged',
      65,
    ]);
  });

  test('100 000 random event lists make no transition that IEC 62682 forbids', () => {
    const random = createRandom('alarm transitions');
    const forbidden: string[] = [];
    for (let list = 0; list < 100_000; list += 1) {
      let track = quietAlarmTrack;
      let timeS = 0;
      for (let step = 0; step < 12; step += 1) {
        timeS += random.integer(0, 4);
        const draw = random.integer(0, 9);
        const input: AlarmInput =
          draw < 7
            ? condition(timeS, draw % 2 === 0)
            : draw < 9
              ? { kind: 'acknowledge', timeS }
              : { kind: 'shelve', timeS, untilS: timeS + random.integer(1, 8) };
        const next = stepAlarm(track, input, delays);
        const viaExpiry =
          track.state === 'shelved' && track.shelvedUntilS !== null && timeS >= track.shelvedUntilS;
        const allowed =
          next.state === track.state ||
          alarmTransitions[track.state].includes(next.state) ||
          // An expired shelf and the input that showed it are two steps in one.
          (viaExpiry &&
            alarmTransitions.shelved.some((between) =>
              alarmTransitions[between].includes(next.state),
            ));
        if (!allowed) forbidden.push(`${track.state} → ${next.state}`);
        if (next.state === 'normal' && track.active && input.kind !== 'condition' && !viaExpiry) {
          forbidden.push('an active condition went quiet');
        }
        track = next;
      }
    }
    expect(forbidden).toEqual([]);
  });
});
