import { describe, expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import {
  type AlarmInput,
  type AlarmTrack,
  alarmTransitions,
  quietAlarmTrack,
  stepAlarm,
} from '../../../shared-core/alarms/alarm-track.ts';

const delays = { onDelayS: 2, offDelayS: 3 };
const run = (...inputs: readonly AlarmInput[]): AlarmTrack =>
  inputs.reduce((track, input) => stepAlarm(track, input, delays), quietAlarmTrack);
const condition = (timeS: number, active: boolean) => ({
  kind: 'condition' as const,
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

  test('a condition that does not last begins its delay anew when it comes back', () => {
    const flickers = [condition(10, true), condition(11, false), condition(13, true)];
    expect(run(...flickers).state).toBe('normal');
    expect(run(...flickers, condition(14.9, true)).state).toBe('normal');
    expect(run(...flickers, condition(15, true)).raisedS).toBe(15);
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

  test('what comes back unanswered stands again as the alarm it was; answered, it is raised anew', () => {
    const returned = run(
      condition(0, true),
      condition(2, true),
      condition(5, false),
      condition(8, false),
    );
    const back = (from: AlarmTrack, isSameCause: boolean) => {
      const inputs = [20, 22].map((timeS) => ({ ...condition(timeS, true), isSameCause }));
      const { state, raisedS, clearedS } = inputs.reduce(
        (track, input) => stepAlarm(track, input, delays),
        from,
      );
      return { state, raisedS, clearedS };
    };
    const answered = stepAlarm(returned, { kind: 'acknowledge', timeS: 9 }, delays);
    const anew = { state: 'unacknowledged', raisedS: 22, clearedS: null };
    expect(back(returned, true)).toEqual({ ...anew, raisedS: 2 });
    expect(back(returned, false)).toEqual(anew);
    // Of which nobody says that it is the same cause is another.
    expect(
      stepAlarm(stepAlarm(returned, condition(20, true), delays), condition(22, true), delays)
        .raisedS,
    ).toBe(22);
    expect(back(answered, true)).toEqual(anew);
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
            ? { ...condition(timeS, draw % 2 === 0), isSameCause: draw < 3 }
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
