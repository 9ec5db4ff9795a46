import { expect, test } from 'vitest';
import { nearDryness } from '../../../../shared-core/monitor/call/near-dryness.ts';
import type { ForecastView } from '../../../../shared-core/stages/forecast-view.ts';
import { factsOf } from '../words/facts.ts';
import { callSecond } from './call-second.ts';

const { condition, reason, sentence } = nearDryness;

const potHolds = (low: number, high: number): ForecastView => ({
  madeS: 1790,
  mainFractionEndS: null,
  mainFractionEndIfEasedS: null,
  distillateMlAtEnd: null,
  potStrengthAbv: null,
  potVolumeMl: { low, value: (low + high) / 2, high },
  collectedMl: null,
  wouldHelp: null,
  doubt: null,
});
const { volumeMl } = factsOf().settings.charge;

test('calls when less than a tenth of the charge may be left, while the pot boils', () => {
  const left = (share: number) =>
    factsOf({ forecast: potHolds(share * volumeMl, (share + 0.1) * volumeMl) });
  expect(condition(callSecond(left(0.11)))).toBe(false);
  expect(condition(callSecond(left(0.09)))).toBe(true);
  expect(condition(callSecond({ ...left(0.09), heat: 'off' }))).toBe(false);
  expect(condition(callSecond({ ...left(0.09), stage: 'cool-down' }))).toBe(false);
  expect(condition(callSecond(factsOf()))).toBe(false);
});

test('tells what may be left, and nobody may put it aside', () => {
  expect(reason(factsOf({ forecast: potHolds(21.4, 55.6) })).because).toBe(
    `Of the ${volumeMl} mL charge 21–56 mL are left in the pot by what was booked and estimated: that may be less than the tenth that must stay.`,
  );
  expect([sentence(), nearDryness.mayBeShelved]).toEqual([
    'The pot may be close to running dry.',
    false,
  ]);
});
