import { describe, expect, test } from 'vitest';
import {
  createBatchSimulation,
  defaultRunSettings,
  pearFermentSetup,
  type RunInput,
  type RunSettings,
  teachingRigs,
} from '#shared-core';
import { strengthFromHead } from '../../../shared-core/bookkeeping/strength-from-head.ts';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';

const cut = (fromS: number, toS: number) => ({
  number: 1,
  fromS,
  toS,
  amount: null,
  strength: null,
});

/** Vapour of these strengths [% vol], one every ten seconds, each known as well as the next. */
const estimates = (strengths: readonly number[], halfWidth = 1) =>
  strengths.map((value, index) => ({
    timeS: 10 * index,
    headVapourAbv: { low: value - halfWidth, value, high: value + halfWidth },
  }));

const stated = (strengths: readonly number[]) => {
  const strength = strengthFromHead(cut(0, 1e6), estimates(strengths));
  if (strength?.by !== 'stated') throw new Error('No strength.');
  return strength.strengthAbv;
};

test('vapour that stays as strong as it is gives its strength as well as the head tells it', () => {
  const { value, standardUncertainty } = stated(Array.from({ length: 50 }, () => 90));
  expect([value, standardUncertainty]).toEqual([
    expect.closeTo(90, 9),
    expect.closeTo(1 / 1.96, 2),
  ]);
});

test('where half of the time strong vapour came and half of it weak, the rate that nobody counted leaves much open', () => {
  const halves = [...Array.from({ length: 50 }, () => 90), ...Array.from({ length: 50 }, () => 10)];
  const { value, standardUncertainty } = stated(halves);
  expect(value).toBeCloseTo(50, 9);
  // Four to one either way: 26 to 74 % vol, taken as a rectangular distribution (JCGM 100:2008, 4.3.7).
  expect(standardUncertainty).toBeCloseTo(Math.hypot(1 / 1.96, 24 / Math.sqrt(3)), 2);
});

describe.each(Object.keys(teachingRigs) as (keyof typeof teachingRigs)[])(
  'of a whole run on the simulated %s, kept up long after its limit',
  (name) => {
    const { charge, pressureKPa, ...setup } = pearFermentSetup();
    const rig = teachingRigs[name];
    const still = createBatchSimulation({ ...setup, charge, pressureKPa, rig, schedule: [] });
    const settings: RunSettings = {
      ...defaultRunSettings,
      charge: { ...charge, standardUncertaintyAbv: 0.5 },
      rig: { ...defaultRunSettings.rig, plates: rig.plates },
      pressure: { pressureKPa, standardUncertaintyKPa: 0.1, source: 'barometer', altitudeM: null },
    };
    const inputs: RunInput[] = [{ kind: 'mark', timeS: 0, markId: 1, mark: { type: 'heat-on' } }];
    const endS = 4500;
    const power = (share: number) =>
      ({ kind: 'heat-eased', powerW: share * rig.heater.powerW }) as const;
    still.applyEvent({ kind: 'heat-on' });
    for (let timeS = 0; timeS <= endS; timeS += 1) {
      // Eased as vapour comes over, and put up again once hardly anything drips: what a person at the bench does.
      if (timeS === 1000) still.applyEvent(power(0.48));
      if (timeS === 3700) still.applyEvent({ kind: 'heat-on' });
      still.advance(timeS);
      const value = Math.round(16 * still.state.bulbTemperatureC) / 16;
      inputs.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' });
    }
    const { strengthAbv: trueAbv } = still.state.receiver;

    test('the interval of the strength by the head holds the true one', () => {
      const { estimates: told } = analyseRun(settings, inputs, endS);
      const strength = strengthFromHead(cut(0, endS), told);
      if (strength?.by !== 'stated') throw new Error('No strength.');
      const { value, standardUncertainty } = strength.strengthAbv;
      expect(Math.abs(value - trueAbv)).toBeLessThan(1.96 * standardUncertainty);
    });
  },
);
