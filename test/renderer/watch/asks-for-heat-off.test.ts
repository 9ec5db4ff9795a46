import { expect, test } from 'vitest';
import type { Alarm, AlarmView } from '#shared-core';
import { answeredByHeatOff } from '../../../renderer/watch/asks-for-heat-off.ts';

const view = (alarm: Alarm, state: AlarmView['state']): AlarmView => ({
  alarm,
  state,
  priority: 'high',
  raisedS: 3268,
  act: '',
  because: '',
  consequence: '',
  wouldChangeIf: '',
  shelvedUntilS: null,
});

test('taking the heat off answers what waits for it, but neither a dry condenser nor a check of the bench', () => {
  expect(
    answeredByHeatOff([
      view('plateau-departure', 'unacknowledged'),
      view('over-limit', 'unacknowledged'),
      view('near-dryness', 'shelved'),
      view('condenser-warm', 'unacknowledged'),
      view('attention', 'unacknowledged'),
    ]),
  ).toEqual(['plateau-departure', 'over-limit']);
});
