import { describe, expect, test } from 'vitest';
import {
  createRandom,
  defaultRunSettings,
  type Estimate,
  OutOfRangeError,
  type RunSettings,
} from '#shared-core';
import { drawRun, type Instrument, teachingStills } from '../../../scripts/ensemble/draw-run.ts';
import { simulateRun } from '../../../scripts/ensemble/simulate-run.ts';
import { readTruth } from '../../../scripts/ensemble/truth.ts';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { benchOf, drawHalfRun, type HalfRun } from '../../../shared-core/planning/half-run.ts';
import {
  forecastHalfWay,
  instrumentGains,
} from '../../../shared-core/planning/instrument-gains.ts';
import { mapEstimate } from '../../../shared-core/uncertainty/index.ts';

const settings: RunSettings = {
  ...defaultRunSettings,
  pressure: {
    pressureKPa: 99.4,
    standardUncertaintyKPa: 0.2,
    source: 'barometer',
    altitudeM: null,
  },
};
const bench = benchOf(settings);

/** Other stills than those that the figures are made from. */
const random = createRandom('other stills');
const others: HalfRun[] = [];
while (others.length < 48) {
  const half = drawHalfRun(bench, random);
  if (half !== null) others.push(half);
}

/** Half the range told half-way, as a share of what was left by it, in the middle of the runs. */
const middleOf = (forecasts: readonly Estimate[]): number => {
  const shares = forecasts.map(({ low, value, high }) => (high - low) / (2 * value));
  return shares.toSorted((a, b) => a - b)[shares.length >> 1] as number;
};

/** What the monitor tells in stills of other physics, minute by minute through noise and bulb, half-way to the limit. */
const toldLive = (beside: readonly Instrument[]): readonly Estimate[] =>
  Array.from({ length: 20 }, (_, index) => index).flatMap((index) => {
    const drawn = drawRun(`gains/${index}`, teachingStills, beside);
    if (drawn.volumeEveryS !== null) return [];
    const run = simulateRun(drawn);
    const { mainFromS, limitS } = readTruth(run);
    if (mainFromS === null || limitS === null || limitS - mainFromS < 900) return [];
    const halfS = (mainFromS + limitS) / 2;
    const soFar = run.inputs.filter(({ timeS }) => timeS <= halfS);
    const { forecasts } = analyseRun(run.settings, soFar, halfS);
    const { madeS = 0, mainFractionEndS = null } = forecasts.at(-1) ?? {};
    return mainFractionEndS === null ? [] : [mapEstimate(mainFractionEndS, (endS) => endS - madeS)];
  });

describe('what each instrument would narrow', () => {
  const gains = instrumentGains(settings, 24);

  test.each([
    { beside: 'nothing', instruments: [] },
    { beside: 'balance', instruments: ['balance'] },
  ] as const)(
    'the ± said of the head with $beside is the one told half-way of simulated stills, within a quarter',
    ({ beside, instruments }) => {
      const live = toldLive(instruments);
      expect(live.length).toBeGreaterThan(5);
      const said = middleOf(others.map((half) => forecastHalfWay(half, beside, bench)));
      expect(said / middleOf(live)).toBeGreaterThan(0.75);
      expect(said / middleOf(live)).toBeLessThan(1.25);
    },
    240_000,
  );

  test('the ranges behind it hold nine in ten of the ends of other stills, or more', () => {
    const held = others.filter((half) => {
      const { low, high } = forecastHalfWay(half, 'balance', bench);
      return low <= half.leftS && half.leftS <= high;
    });
    expect(held.length / others.length).toBeGreaterThan(0.85);
  });

  test('a balance narrows most; a heat that is stated already is not offered', () => {
    expect(gains?.withBalanceS).toBeLessThan(0.7 * (gains?.asItIsS ?? 0));
    const stated = { ...settings, rig: { ...settings.rig, heatW: 90 } };
    expect(instrumentGains(stated, 4)?.withStatedHeatS).toBeNull();
  });

  test('a charge that gives no main fraction has no end to know', () => {
    const charge = { volumeMl: 350, strengthAbv: 1, standardUncertaintyAbv: 0.2 };
    expect(instrumentGains({ ...settings, charge }, 4)).toBeNull();
  });

  test('says the same every time, and refuses senseless numbers of stills', () => {
    expect(instrumentGains(settings, 4)).toEqual(instrumentGains(settings, 4));
    expect(() => instrumentGains(settings, 0)).toThrow(OutOfRangeError);
  });
});
