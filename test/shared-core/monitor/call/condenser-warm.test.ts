import { expect, test } from 'vitest';
import { condenserWarm } from '../../../../shared-core/monitor/call/condenser-warm.ts';
import { factsOf } from '../words/facts.ts';
import { callSecond, standing } from './call-second.ts';

const { condition, reason, sentence } = condenserWarm;

test('calls above 40 °C and stands down to 35 °C, with or without heat', () => {
  const outletAt = (condenserC: number | null, track = {}) =>
    condition(callSecond(factsOf({ condenserC, heat: 'off' }), { track }));
  expect([null, 39, 41].map((outletC) => outletAt(outletC))).toEqual([false, false, true]);
  expect([36, 34].map((outletC) => outletAt(outletC, standing))).toEqual([true, false]);
});

test('tells the outlet, and nobody may put it aside', () => {
  expect(reason(factsOf({ condenserC: 43.26 }))).toEqual({
    because: 'The condenser outlet is at 43.3 °C.',
    wouldChangeIf: 'The outlet cooling below 35 °C.',
  });
  expect([sentence(), condenserWarm.mayBeShelved, condenserWarm.isAnsweredByHeatOff]).toEqual([
    'The condenser is warm: vapour may escape.',
    false,
    false,
  ]);
});
