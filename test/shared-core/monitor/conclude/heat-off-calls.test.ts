import { expect, test } from 'vitest';
import { createAlarmBank } from '../../../../shared-core/monitor/alarm-bank.ts';
import { createHeatOffCalls } from '../../../../shared-core/monitor/conclude/heat-off-calls.ts';
import type { HeadNow } from '../../../../shared-core/monitor/situation/head-course.ts';
import type { Alarm } from '../../../../shared-core/snapshot/index.ts';
import type { Stage } from '../../../../shared-core/stages/index.ts';
import { factsOf } from '../words/facts.ts';

const { settings } = factsOf();

function now(strongForS: number): HeadNow {
  const { head, situation, outlook, bias } = factsOf({}, { outlook: { strongForS } });
  return { head, situation, outlook, belief: bias, fault: null, lastTrustedC: 78, surging: false };
}

/** After each of these alarms has stood for a minute and is over. */
function afterAlarms(...alarms: readonly Alarm[]) {
  const calls = createHeatOffCalls(settings);
  const bank = createAlarmBank();
  for (let timeS = 0; timeS < 200; timeS += 1) {
    for (const alarm of alarms)
      bank.condition(alarm, timeS, timeS < 60, () => ({ because: '', wouldChangeIf: '' }));
    calls.note(bank);
  }
  const patienceS = (stage: Stage, strongForS: number) => calls.patienceS(stage, now(strongForS));
  return [
    calls.wasCalled(),
    patienceS('main-fraction', 100),
    patienceS('tail', 100),
    patienceS('tail', 0),
  ];
}

test('weak vapour is told of after the reaction time, sooner where it was never strong, and in the tail as a reminder', () => {
  expect([
    afterAlarms(),
    afterAlarms('plateau-departure'),
    afterAlarms('over-limit'),
    afterAlarms('surging'),
  ]).toEqual([
    [false, settings.reactionTimeS, settings.reactionTimeS, 30],
    [true, settings.reactionTimeS, settings.reactionTimeS, 30],
    [false, settings.reactionTimeS, 240, 240],
    [false, settings.reactionTimeS, settings.reactionTimeS, 30],
  ]);
});
