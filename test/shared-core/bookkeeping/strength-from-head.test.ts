import { describe, expect, test } from 'vitest';
import {
  createBatchSimulation,
  defaultRunSettings,
  pearFermentSetup,
  type RunInput,
  type RunSettings,
  teachingRigs,
} from '#shared-core';
import { distillateOfRun } from '../../../shared-core/bookkeeping/distillate-of-run.ts';
import { strengthFromHead } from '../../../shared-core/bookkeeping/strength-from-head.ts';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';

const endS = 4500;
const cut = { number: 1, fromS: 0, toS: endS, amount: null, strength: null };

describe.each(Object.keys(teachingRigs) as (keyof typeof teachingRigs)[])(
  'of a whole run on the simulated %s, kept up long after its limit',
  (name) => {
    const { charge, pressureKPa, ...setup } = pearFermentSetup();
    const rig = teachingRigs[name];
    const settings: RunSettings = {
      ...defaultRunSettings,
      charge: { ...charge, standardUncertaintyAbv: 0.5 },
      rig: { ...defaultRunSettings.rig, plates: rig.plates },
      pressure: { pressureKPa, standardUncertaintyKPa: 0.1, source: 'barometer', altitudeM: null },
    };
    const power = (share: number) =>
      ({ kind: 'heat-eased', powerW: share * rig.heater.powerW }) as const;

    /** Eased as vapour comes over; what was told of the strength of all that came, and how strong it was. */
    function wholeRun(putUpAtS: number, readEveryS: number) {
      const still = createBatchSimulation({ ...setup, charge, pressureKPa, rig, schedule: [] });
      const inputs: RunInput[] = [{ kind: 'mark', timeS: 0, markId: 1, mark: { type: 'heat-on' } }];
      still.applyEvent({ kind: 'heat-on' });
      for (let timeS = 0; timeS <= endS; timeS += 1) {
        if (timeS === 1000) still.applyEvent(power(0.48));
        if (timeS === putUpAtS) still.applyEvent({ kind: 'heat-on' });
        still.advance(timeS);
        const value = Math.round(16 * still.state.bulbTemperatureC) / 16;
        inputs.push({
          kind: 'reading',
          timeS,
          channel: 'head',
          value,
          unit: '°C',
          quality: 'good',
        });
        if (timeS % readEveryS !== 0 || timeS === 0) continue;
        const volumeMl = Math.round(2 * still.state.distillateVolumeMl) / 2;
        const mark = { type: 'volume-read', volumeMl } as const;
        inputs.push({ kind: 'mark', timeS, markId: timeS, mark });
      }
      const verdicts = analyseRun(settings, inputs, endS);
      const run = { inputs, endS, verdicts, cuts: [cut], dripRateMlPerMin: null };
      const strength = strengthFromHead(cut, distillateOfRun(run));
      if (strength?.by !== 'head-temperature') throw new Error('No strength.');
      return { told: strength.strengthAbv, trueAbv: still.state.receiver.strengthAbv };
    }

    // The heat is put up once hardly anything drips, and nobody marks it: the drops of the weak end come several times as fast.
    test('the interval of the strength by the head holds the true one by the volumes read', () => {
      const { told, trueAbv } = wholeRun(3700, 300);
      expect(told.low).toBeLessThan(trueAbv);
      expect(told.high).toBeGreaterThan(trueAbv);
    });
  },
);
