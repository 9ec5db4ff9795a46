import { expect, test } from 'vitest';
import type { AlarmView } from '#shared-core';
import { callDue, silent } from '../../../renderer/sound/call-for-alarms.ts';

const alarm = (
  priority: AlarmView['priority'],
  state: AlarmView['state'] = 'unacknowledged',
): AlarmView => ({
  alarm: 'surging',
  state,
  priority,
  raisedS: 0,
  act: '',
  because: '',
  consequence: '',
  wouldChangeIf: '',
  shelvedUntilS: null,
});

function callsAt(alarmsAt: (ms: number) => AlarmView[], untilMs: number) {
  let state = silent;
  const calls: [number, string][] = [];
  for (let ms = 0; ms <= untilMs; ms += 500) {
    const due = callDue(state, alarmsAt(ms), ms);
    state = due.state;
    if (due.play) calls.push([ms, due.play]);
  }
  return calls;
}

test('an urgent alarm calls at once and every four seconds until acknowledged', () => {
  expect(
    callsAt((ms) => (ms < 9000 ? [alarm('high')] : [alarm('high', 'acknowledged')]), 20_000),
  ).toEqual([
    [0, 'high'],
    [4000, 'high'],
    [8000, 'high'],
  ]);
});

test('an urgent alarm does not wait for the pause of a softer one', () => {
  const alarms = (ms: number) => (ms < 1000 ? [alarm('medium')] : [alarm('medium'), alarm('high')]);
  expect(callsAt(alarms, 2000)).toEqual([
    [0, 'medium'],
    [1000, 'high'],
  ]);
});

test('shelved and returned alarms are silent', () => {
  expect(
    callsAt(() => [alarm('high', 'shelved'), alarm('high', 'returned-unacknowledged')], 9000),
  ).toEqual([]);
});
