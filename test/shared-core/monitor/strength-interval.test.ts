import { expect, test } from 'vitest';
import {
  createBatchSimulation,
  createProbeSignal,
  createRandom,
  pearFermentSetup,
  type RunInput,
  teachingRigs,
} from '#shared-core';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { head, pearSettings } from './support.ts';

/**
 * The bead column with little heat gives 88 % vol where its five plates would give more: that must not be taken for a
 * probe that reads 0.8 K too high.
 */
test('a plateau weaker than the plates promise is not blamed on a sound probe', () => {
  const { heater, plates } = teachingRigs.glassBeads;
  const still = createBatchSimulation({
    ...pearFermentSetup(),
    rig: teachingRigs.glassBeads,
    schedule: [
      { timeS: 0, kind: 'heat-on' },
      { timeS: 960, kind: 'heat-eased', powerW: 0.48 * heater.powerW },
    ],
  });
  const random = createRandom('strength interval');
  const noise = { whiteNoiseK: 0.03, slowNoiseK: 0.04 };
  const headProbe = createProbeSignal({ ...noise, random: random.fork('head') });
  const potProbe = createProbeSignal({ ...noise, random: random.fork('pot') });
  const inputs: RunInput[] = [];
  const trueAbv: number[] = [];
  for (let timeS = 0; timeS <= 3000; timeS += 1) {
    still.advance(timeS);
    trueAbv.push(still.state.headVapourStrengthAbv);
    const headC = headProbe.read(timeS, still.state.bulbTemperatureC);
    const potC = potProbe.read(timeS, still.state.potTemperatureC);
    if (headC !== null) inputs.push(head(timeS, headC));
    if (potC === null) continue;
    const pot = { channel: 'pot', value: potC, unit: '°C', quality: 'good' } as const;
    inputs.push({ kind: 'reading', timeS, ...pot });
  }
  const pressure = { ...pearSettings.pressure, standardUncertaintyKPa: 0.1 };
  const settings = { ...pearSettings, pressure, rig: { ...pearSettings.rig, plates } };
  const { estimates } = analyseRun(settings, inputs, 3000);
  const held = estimates.flatMap(({ timeS, headVapourAbv }) => {
    const truth = trueAbv[timeS] as number;
    if (headVapourAbv === null || timeS < 1200) return [];
    return [headVapourAbv.low <= truth && truth <= headVapourAbv.high];
  });
  expect(held.length).toBeGreaterThan(25);
  const share = held.filter(Boolean).length / held.length;
  expect(share).toBeGreaterThanOrEqual(0.9);
});
