import { expect, test } from 'vitest';
import type { BatchAction } from '../../../shared-core/column/batch-event.ts';
import { createBatchSimulation } from '../../../shared-core/column/create-batch-simulation.ts';
import {
  createProbeSignal,
  type ProbeFlaws,
} from '../../../shared-core/column/create-probe-signal.ts';
import { pearFermentSetup } from '../../../shared-core/column/pear-ferment-setup.ts';
import { simulateBatch } from '../../../shared-core/column/simulate-batch.ts';
import { createRandom } from '../../../shared-core/random/create-random.ts';

const random = createRandom('flaws');

test.each<[Omit<ProbeFlaws, 'random'>, RegExp]>([
  [{ t90S: 301 }, /^lag is 301 s; .* 0 and 300/],
  [{ slowShare: 0.51 }, /^slow share of the response is 0\.51; .* 0 and 0\.5/],
  [{ slowShareS: 0 }, /^time constant of the slow share is 0 s; .* 0\.1 and 600/],
  [{ whiteNoiseK: 6 }, /^white noise is 6 K; .* 0 and 5/],
  [{ slowNoiseK: 6 }, /^slow noise is 6 K; .* 0 and 5/],
  [{ slowNoiseS: 0 }, /^memory of the slow noise is 0 s; .* 0\.1 and 600/],
  [{ wanderK: 6 }, /^wander is 6 K; .* 0 and 5/],
  [{ wanderS: 0 }, /^memory of the wander is 0 s; .* 0\.1 and 3600/],
  [{ biasK: 11 }, /^bias is 11 K; .* -10 and 10/],
  [{ driftKPerHour: -11 }, /^drift is -11 K\/h; .* -10 and 10/],
  [{ quantumK: 6 }, /^quantum is 6 K; .* 0 and 5/],
  [{ dropoutsPerHour: 3601 }, /^dropouts is 3601 1\/h; .* 0 and 3600/],
  [{ dropoutS: 0 }, /^length of a dropout is 0 s; .* 0\.1 and 3600/],
  [{ spikesPerHour: -1 }, /^spikes is -1 1\/h; .* 0 and 3600/],
  [{ spikeK: 501 }, /^size of a spike is 501 K; .* 0 and 500/],
  [{ burstsPerHour: 3601 }, /^bursts of fault values is 3601 1\/h; .* 0 and 3600/],
  [{ burstS: 0 }, /^length of a burst is 0 s; .* 0\.1 and 600/],
  [{ faultC: 3001 }, /^fault value is 3001 °C; .* -500 and 3000/],
  [{ powerOnReadings: 101 }, /^power-on readings is 101; .* 0 and 100/],
])('a probe with %o is refused by name, with unit and bounds', (flaws, message) => {
  expect(() => createProbeSignal({ random, ...flaws })).toThrow(message);
});

test('a probe is asked in order of time, of temperatures that there are', () => {
  const probe = createProbeSignal({ random });
  expect(() => probe.read(-1, 20)).toThrow(/^time is -1 s; .* 0 and 1000000000/);
  expect(() => probe.read(0, 501)).toThrow(/^temperature at the probe is 501 °C; .* -50 and 500/);
  expect(probe.read(5, 20)).toBe(20);
  expect(() => probe.read(4, 20)).toThrow(/^time is 4 s; .* 5 and/);
});

test.each<[BatchAction, RegExp]>([
  [{ kind: 'heat-on', powerW: -1 }, /^heater power is -1 W; .* 0 and 5000/],
  [{ kind: 'heat-eased', powerW: 5001 }, /^heater power is 5001 W; .* 0 and 5000/],
  [{ kind: 'reflux-set', returnedFraction: 2 }, /^returned fraction is 2; .* 0 and 1/],
  [{ kind: 'draught', durationS: 1, lossFactor: 11 }, /^loss factor is 11; .* 0 and 10/],
  [{ kind: 'draught', durationS: -1, lossFactor: 1 }, /^duration of a draught is -1 s; .* 86400/],
  [{ kind: 'surging', durationS: 1, depth: 2, periodS: 20 }, /^depth of surging is 2; .* 0 and 1/],
  [
    { kind: 'surging', durationS: 1, depth: 1, periodS: 1 },
    /^period of surging is 1 s; .* 2 and 600/,
  ],
  [
    { kind: 'surging', durationS: 86_401, depth: 1, periodS: 2 },
    /^duration of surging is 86401 s; .* 0 and 86400/,
  ],
])('what people do to a still is refused by name where it cannot be: %o', (action, message) => {
  const still = createBatchSimulation(pearFermentSetup());
  expect(() => still.applyEvent(action)).toThrow(message);
});

test('a run of no time, or looked at more often than it is stepped, is refused', () => {
  const pear = pearFermentSetup();
  expect(() => simulateBatch(pear, { durationS: 0 })).toThrow(/^duration is 0 s; .* 1 and 1000000/);
  expect(() => simulateBatch(pear, { durationS: 10, sampleEveryS: 0.4 })).toThrow(
    /^sample interval is 0\.4 s; .* 0\.5 and 10/,
  );
  expect(() => createBatchSimulation(pear).advance(-1)).toThrow(/^time is -1 s; .* 0 and 10000000/);
});

test('heat follows what is done with the next step, by the heater’s own delay', () => {
  const pear = pearFermentSetup();
  const { powerW, timeConstantS } = pear.rig.heater;
  const still = createBatchSimulation({ ...pear, schedule: [] });
  const heatAt = (timeS: number) => {
    still.advance(timeS);
    return still.state.heatW;
  };
  expect(heatAt(10)).toBe(0);
  still.applyEvent({ kind: 'heat-on' });
  expect(heatAt(10 + timeConstantS) / powerW).toBeCloseTo(1 - Math.exp(-1), 1);
  const steady = heatAt(10 + 30 * timeConstantS);
  expect(steady).toBeCloseTo(powerW, 3);
  still.applyEvent({ kind: 'heat-removed' });
  expect(heatAt(11 + 30 * timeConstantS)).toBe(0);
  still.applyEvent({ kind: 'heat-returned' });
  expect(heatAt(12 + 30 * timeConstantS)).toBeCloseTo(powerW, 3);
  still.applyEvent({ kind: 'heat-off' });
  expect(heatAt(12 + 31 * timeConstantS) / powerW).toBeCloseTo(Math.exp(-1), 1);
});

test('a run ends when it is told to, and is looked at at equal times', () => {
  const { samples } = simulateBatch(pearFermentSetup(), {
    durationS: 100,
    sampleEveryS: 10,
    stopWhen: ({ timeS }) => timeS >= 50,
  });
  expect(samples.map(({ timeS }) => timeS)).toEqual([0, 10, 20, 30, 40, 50]);
});
