import { describe, expect, test } from 'vitest';
import { createMonitor, defaultRunSettings, planRun, type Snapshot } from '#shared-core';
import { runningLesson } from '../../../renderer/lesson/running-lesson.ts';
import { planRequestFrom } from '../../../renderer/plan/plan-request-from.ts';
import { plainSnapshot } from '../../support/plain-snapshot.ts';

const plan = planRun({ ...planRequestFrom(defaultRunSettings, 1), runs: 8 });
const warming: Snapshot = plainSnapshot(createMonitor(defaultRunSettings).advanceTo(300));
const collecting: Snapshot = {
  ...warming,
  stage: { ...warming.stage, stage: 'main-fraction' },
  forecast: {
    madeS: 300,
    mainFractionEndS: { low: 2000, value: 2200, high: 2500 },
    mainFractionEndIfEasedS: null,
    distillateMlAtEnd: null,
    potStrengthAbv: null,
    potVolumeMl: null,
    collectedMl: null,
    wouldHelp: null,
    doubt: null,
  },
};

describe('what is ahead in a run', () => {
  test('until vapour comes it is the plan, counted from when the heat went on', () => {
    const { vapour, heatOff } = runningLesson({ ...warming, heat: 'on' }, plan, 240);
    expect([vapour, heatOff]).toEqual([
      { low: plan.timeToVapourS!.low + 240, high: plan.timeToVapourS!.high + 240, madeS: 240 },
      {
        low: plan.mainFraction!.toS.low + 240,
        high: plan.mainFraction!.toS.high + 240,
        madeS: 240,
      },
    ]);
  });

  test('before the heat it counts from now, and with the heat off nothing is promised', () => {
    const unknown = runningLesson({ ...warming, heat: 'unknown' }, plan, null);
    expect(unknown.vapour?.low).toBe(plan.timeToVapourS!.low + warming.timeS);
    expect(runningLesson({ ...warming, heat: 'off' }, plan, 10)).toEqual({
      vapour: null,
      heatOff: null,
    });
  });

  test('once vapour has come it is the run’s own forecast, whatever the plan said', () => {
    expect(runningLesson(collecting, plan, 240)).toMatchObject({
      vapour: null,
      heatOff: { low: 2000, high: 2500 },
    });
    const tail = { ...collecting, stage: { ...collecting.stage, stage: 'tail' } } as const;
    expect(runningLesson(tail, plan, 240)).toEqual({ vapour: null, heatOff: null });
  });
});
