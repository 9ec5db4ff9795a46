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
  type Beside,
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

/** Half a range as a share of what is left by it. */
const shareOf = ({ low, value, high }: Estimate): number => (high - low) / (2 * value);

const middleOf = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] as number;

/** Ranges of the time that is left half-way through one still: those that were said of stills like it, and the one that was told of it. */
interface SaidAndTold {
  readonly said: readonly Estimate[];
  readonly told: Estimate;
}

/** What was said of such stills before each run, and what the monitor tells of it half-way to the limit: other physics, noise and bulb. */
function saidAndTold(beside: Beside, instruments: readonly Instrument[]): readonly SaidAndTold[] {
  return Array.from({ length: 20 }, (_, index) => index).flatMap((index) => {
    const drawn = drawRun(`gains/${index}`, teachingStills, instruments);
    if (drawn.volumeEveryS !== null) return [];
    const run = simulateRun(drawn);
    const { mainFromS, limitS } = readTruth(run);
    if (mainFromS === null || limitS === null || limitS - mainFromS < 900) return [];
    const halfS = (mainFromS + limitS) / 2;
    const soFar = run.inputs.filter(({ timeS }) => timeS <= halfS);
    const { forecasts } = analyseRun(run.settings, soFar, halfS);
    const { madeS = 0, mainFractionEndS = null } = forecasts.at(-1) ?? {};
    if (mainFractionEndS === null) return [];
    const told = mapEstimate(mainFractionEndS, (endS) => endS - madeS);
    return [{ said: saidBefore(run.settings, beside), told }];
  });
}

/** What is said of stills with these settings: of as many as give a main fraction. */
function saidBefore(ofRun: RunSettings, beside: Beside): readonly Estimate[] {
  const benchOfRun = benchOf(ofRun);
  const chance = createRandom('stills like it');
  const tries = Array.from({ length: 12 }, () => drawHalfRun(benchOfRun, chance));
  return tries.flatMap((half) =>
    half === null ? [] : [forecastHalfWay(half, beside, benchOfRun)],
  );
}

describe('what each instrument would narrow', () => {
  const gains = instrumentGains(settings, 24);

  test.each([
    { beside: 'nothing', instruments: [] },
    { beside: 'balance', instruments: ['balance'] },
  ] as const)(
    'the ± said before a run of the head with $beside is the one told half-way of it, within a quarter',
    ({ beside, instruments }) => {
      const runs = saidAndTold(beside, instruments);
      expect(runs.length).toBeGreaterThan(5);
      const said = middleOf(runs.flatMap((run) => run.said.map(shareOf)));
      const told = middleOf(runs.map((run) => shareOf(run.told)));
      expect(said / told).toBeGreaterThan(0.75);
      expect(said / told).toBeLessThan(1.25);
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
