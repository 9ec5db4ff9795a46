import { expect, test } from 'vitest';
import { strengthFromMoleFraction } from '../../../../shared-core/alcoholometry/index.ts';
import { composeForecast } from '../../../../shared-core/monitor/conclude/compose-forecast.ts';
import type { ForecastCheck } from '../../../../shared-core/monitor/conclude/forecast-check.ts';
import type { ForecastSecond } from '../../../../shared-core/monitor/conclude/forecast-second.ts';
import type { Stage } from '../../../../shared-core/stages/index.ts';
import type { TwinOutlook } from '../../../../shared-core/twin/index.ts';
import { factsOf } from '../words/facts.ts';

const estimate = (value: number) => ({ value, low: 0.9 * value, high: 1.1 * value });
const ahead: TwinOutlook = {
  limitInS: estimate(1000),
  limitInIfEasedS: estimate(1300),
  distillateMlAtLimit: estimate(40),
  collectedMl: estimate(12),
  potMl: estimate(290),
  potMoleFraction: { value: 0.02, low: 0.01, high: 1.01 },
  flowMlPerS: 0.03,
  bias: { mean: 0, sd: 1 },
  stopMoleFraction: null,
  volumeWouldNarrow: 0.3,
};

/** At 1800 s, bathed since 900 s; what the check is asked is kept. */
function compose(
  stage: Stage,
  wetS: number,
  changes: Partial<ForecastCheck> = {},
  bathedS: number | null = 900,
) {
  const asked: number[] = [];
  const { head, scale, situation } = factsOf({}, { situation: { bathedS, wetS } });
  if (head === null) throw new Error('There is a head.');
  const second: ForecastSecond = {
    timeS: 1800,
    stage,
    head,
    situation,
    scale,
    statedSdK: 0.3,
    potC: null,
    receiverMl: null,
    nothingCollected: false,
    nothingCollectedByMarks: false,
    suspended: false,
  };
  const check: ForecastCheck = {
    see: () => undefined,
    widened: (left, dryShare) => {
      asked.push(dryShare);
      return { ...left, high: 2 * left.value };
    },
    misfit: () => null,
    ...changes,
  };
  return { view: composeForecast(second, ahead, check, 1000), asked };
}

test('the end is told in run time and as wide as it has earned, with what a reading of the receiver would give', () => {
  expect(compose('main-fraction', 900).view).toEqual({
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
  const misfit = () => ({ sds: 3, checks: 4, sinceS: 600, movedS: 600 });
  for (const stage of ['warm-up', 'tail', 'cool-down'] as const) {
    const { view, asked } = compose(stage, 900, { misfit });
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

test('how much of the time since vapour came was dry is told to whoever widens the range', () => {
  expect([
    compose('first-fraction', 900).asked[0],
    compose('first-fraction', 450).asked[0],
    compose('first-fraction', 1200).asked[0],
    compose('first-fraction', 0, {}, null).asked[0],
  ]).toEqual([0, 0.5, 0, 0]);
});

test('a still that runs away from its forecasts is doubted in words, which say whether an end is told', () => {
  const misfit = () => ({ sds: 3, checks: 4, sinceS: 600, movedS: 600 });
  const told = compose('main-fraction', 900, { misfit }).view.doubt;
  const untold = compose('main-fraction', 900, { misfit, widened: () => null }).view;
  expect(told).toContain('the range is wider for it');
  expect([untold.mainFractionEndS, untold.doubt]).toEqual([
    null,
    expect.stringContaining('no end is told until it does'),
  ]);
});
