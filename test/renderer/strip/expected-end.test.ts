import { expect, test } from 'vitest';
import { createMonitor, defaultRunSettings, type Stage } from '#shared-core';
import { expectedEnd } from '../../../renderer/strip/expected-end.ts';
import { plainSnapshot } from '../../support/plain-snapshot.ts';

test('the limit is expected only while it is ahead: not in the tail, nor while the still cools down', () => {
  const before = plainSnapshot(createMonitor(defaultRunSettings).snapshot());
  const end = { value: 2400, low: 2200, high: 2600 };
  const forecast = {
    madeS: 1800,
    mainFractionEndS: end,
    mainFractionEndIfEasedS: null,
    distillateMlAtEnd: null,
    potStrengthAbv: null,
    potVolumeMl: null,
    collectedMl: null,
    wouldHelp: null,
    doubt: null,
  };
  const during = (stage: Stage) =>
    expectedEnd({ ...before, forecast, stage: { ...before.stage, stage } });
  expect([
    expectedEnd(null),
    expectedEnd({ ...before, forecast: null }),
    during('first-fraction'),
    during('main-fraction'),
    during('tail'),
    during('cool-down'),
  ]).toEqual([null, null, end, end, null, null]);
});
