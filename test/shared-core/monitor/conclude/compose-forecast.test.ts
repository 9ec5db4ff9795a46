import { expect, test } from 'vitest';
import { strengthFromMoleFraction } from '../../../../shared-core/alcoholometry/index.ts';
import { composeForecast } from '../../../../shared-core/monitor/conclude/compose-forecast.ts';
import type { ForecastCheck } from '../../../../shared-core/monitor/conclude/forecast-check.ts';
import type { ForecastSecond } from '../../../../shared-core/monitor/conclude/forecast-second.ts';
import type { Stage } from '../../../../shared-core/stages/index.ts';
import type { TwinOutlook } from '../../../../shared-core/twin/index.ts';
import type { Estimate } from '../../../../shared-core/uncertainty/index.ts';
import { factsOf } from '../words/facts.ts';
import { outlookOf } from './forecast-seconds.ts';

const ahead = outlookOf();
const drifting = { kind: 'end', sds: 3, checks: 4, sinceS: 600, movedS: 600 } as const;

/** At 1800 s; what the check is asked is kept. */
function compose(
  stage: Stage,
  changes: Partial<ForecastCheck> = {},
  expected: TwinOutlook = ahead,
) {
  const asked: Estimate[] = [];
  const { head, scale, situation } = factsOf();
  if (head === null) throw new Error('There is a head.');
  const second: ForecastSecond = {
    timeS: 1800,
    stage,
    head,
    situation,
    scale,
    statedSdK: 0.3,
    pressureSdK: 0.1,
    potC: null,
    receiverMl: null,
    nothingCollected: false,
    nothingCollectedByMarks: false,
    suspended: false,
  };
  const check: ForecastCheck = {
    see: () => undefined,
    forgetFrom: () => undefined,
    widened: (left) => {
      asked.push(left);
      return { ...left, high: 2 * left.value };
    },
    doubt: () => null,
    ...changes,
  };
  return { view: composeForecast(second, expected, check, 1000), asked };
}

test('the end is told in run time and as wide as it has earned, with what a reading of the receiver would give', () => {
  expect(compose('main-fraction').view).toEqual({
    madeS: 1800,
    mainFractionEndS: { value: 2800, low: 2700, high: 3800 },
    mainFractionEndIfEasedS: { value: 3100, low: 2970, high: 4400 },
    distillateMlAtEnd: ahead.distillateMlAtLimit,
    // A guess that overshoots pure ethanol by rounding is pure ethanol.
    potStrengthAbv: {
      value: strengthFromMoleFraction(0.02),
      low: strengthFromMoleFraction(0.01),
      high: strengthFromMoleFraction(1),
    },
    potVolumeMl: ahead.potMl,
    collectedMl: ahead.collectedMl,
    wouldHelp: 'Read the volume to narrow this by 30 %.',
    doubt: null,
  });
});

test('no end is told of a main fraction that has not begun or is over, but what is in the pot is', () => {
  for (const stage of ['warm-up', 'tail', 'cool-down'] as const) {
    const { view, asked } = compose(stage, { doubt: () => drifting });
    expect(asked).toEqual([]);
    expect(view).toMatchObject({
      mainFractionEndS: null,
      mainFractionEndIfEasedS: null,
      distillateMlAtEnd: null,
      wouldHelp: null,
      doubt: null,
      potVolumeMl: ahead.potMl,
    });
  }
});

test('a still that runs away from its forecasts is doubted in words, which say whether an end is told', () => {
  const doubt = () => drifting;
  const told = compose('main-fraction', { doubt }).view.doubt;
  const untold = compose('main-fraction', { doubt, widened: () => null }).view;
  expect(told).toContain('the range is wider for it');
  expect([untold.mainFractionEndS, untold.doubt]).toEqual([
    null,
    expect.stringContaining('no end is told until it does'),
  ]);
});

test('a limit that the twin holds for passed while the fraction goes on is said to be, without an end', () => {
  const passed = outlookOf({ limitInS: { value: 0, low: 0, high: 60 } });
  const { view } = compose('main-fraction', { widened: () => null }, passed);
  expect([view.mainFractionEndS, view.doubt]).toEqual([
    null,
    'By the model the limit is passed, by the head it is not: no end is told. Go by the head.',
  ]);
});
