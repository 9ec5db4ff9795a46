import { describe, expect, test } from 'vitest';
import {
  azeotrope,
  createBatchSimulation,
  dewPoint,
  OutOfRangeError,
  pearFermentSetup,
  simulateBatch,
  teachingRigs,
} from '#shared-core';
import type { BatchSetup } from '../../../shared-core/column/batch-setup.ts';
import type { BatchState } from '../../../shared-core/column/batch-state.ts';
import type { BatchRun } from '../../../shared-core/column/simulate-batch.ts';
import { molarVolumeMlPerMol } from '../../../shared-core/thermo/molar-volume.ts';

const pear = pearFermentSetup();
const rough: BatchSetup = {
  ...pear,
  rig: { ...teachingRigs.vigreux, returnedFraction: 0.3 },
  pressureKPa: [
    { timeS: 0, pressureKPa: 101.8 },
    { timeS: 3600, pressureKPa: 100.9 },
  ],
  schedule: [
    { timeS: 0, kind: 'heat-on' },
    { timeS: 1200, kind: 'heat-removed' },
    { timeS: 1290, kind: 'heat-returned' },
    { timeS: 1500, kind: 'draught', durationS: 120, lossFactor: 2 },
    { timeS: 1800, kind: 'surging', durationS: 200, depth: 0.9, periodS: 20 },
    { timeS: 2100, kind: 'reflux-set', returnedFraction: 1 },
    { timeS: 2400, kind: 'reflux-set', returnedFraction: 0 },
    { timeS: 2500, kind: 'receiver-changed' },
    { timeS: 2600, kind: 'heat-off' },
  ],
};

function heatResidualShare({ ledgerAtStart, ledgerAtEnd }: BatchRun): number {
  const { storedJ, lostJ, coolingWaterJ, distillateJ, heatInJ } = ledgerAtEnd;
  const residual = storedJ - ledgerAtStart.storedJ + lostJ + coolingWaterJ + distillateJ - heatInJ;
  return Math.abs(residual / heatInJ);
}

describe('conservation', () => {
  test.each([
    ['a calm run', pear],
    ['a run with heat removed, draught, surging, total reflux and a falling barometer', rough],
    ['a run to dryness', { ...pear, schedule: [{ timeS: 0, kind: 'heat-on', powerW: 300 }] }],
    [
      'the strongest heater',
      { ...pear, stepS: 2, schedule: [{ timeS: 0, kind: 'heat-on', powerW: 5000 }] },
    ],
  ] as [string, BatchSetup][])('%s keeps ethanol, water, traces and heat to 1e-6', (_, setup) => {
    const run = simulateBatch(setup, { durationS: 9000, sampleEveryS: 10 });
    const { ledgerAtStart: start, ledgerAtEnd: end } = run;
    expect(Math.abs(end.ethanolMol / start.ethanolMol - 1)).toBeLessThan(1e-6);
    expect(Math.abs(end.waterMol / start.waterMol - 1)).toBeLessThan(1e-6);
    expect(end.traceMol).toHaveLength(3);
    end.traceMol.forEach((mol, index) => {
      expect(Math.abs(mol / (start.traceMol[index] as number) - 1)).toBeLessThan(1e-6);
    });
    expect(heatResidualShare(run)).toBeLessThan(1e-6);
  });

  test('every number of every sample is finite, also when the pot boils dry', () => {
    const setup: BatchSetup = { ...pear, schedule: [{ timeS: 0, kind: 'heat-on', powerW: 600 }] };
    const simulation = createBatchSimulation(setup);
    for (let timeS = 0; timeS <= 6000; timeS += 20) {
      simulation.advance(timeS);
      const { receiver, refluxRatio, ...numbers } = simulation.state;
      const all = [...Object.values(numbers), ...Object.values(receiver), refluxRatio ?? 0];
      expect(all.filter((value) => !Number.isFinite(Number(value)))).toEqual([]);
    }
    expect(simulation.state.potVolumeMl).toBeLessThan(1);
  });
});

describe('the demonstration run', () => {
  const run = simulateBatch(pear, { durationS: 4200 });

  test('warms up, holds a plateau and runs into a tail within 60 to 70 minutes', () => {
    const minutes = (timeS: number | null) => (timeS ?? Number.NaN) / 60;
    const { truth } = run;
    expect(minutes(truth.vapourArrivalS)).toBeGreaterThan(12);
    expect(minutes(truth.vapourArrivalS)).toBeLessThan(20);
    const plateau = minutes(truth.limitReachedS) - minutes(truth.plateauStartS);
    expect(plateau).toBeGreaterThan(15);
    expect(plateau).toBeLessThan(40);
    expect(run.samples.at(-1)?.headVapourTemperatureC).toBeGreaterThan(95);
  });

  test('shows the dew temperature of its own vapour while the bulb is bathed', () => {
    const { charge, ...rest } = pear;
    const { lightVolatiles: _, ...clean } = charge;
    const calm = simulateBatch({ ...rest, charge: clean }, { durationS: 3000, sampleEveryS: 60 });
    const bathed = calm.samples.filter((sample) => sample.bathedFraction > 0.9999);
    expect(bathed.length).toBeGreaterThan(20);
    for (const sample of bathed) {
      const dew = dewPoint({
        ethanolMoleFraction: sample.headVapourMoleFraction,
        pressureKPa: sample.pressureKPa,
      });
      expect(Math.abs(sample.headVapourTemperatureC - dew.temperatureC)).toBeLessThan(0.003);
      expect(dew.temperatureC).toBeGreaterThan(azeotrope(sample.pressureKPa).temperatureC - 1e-6);
    }
  });

  test('light volatiles lower the first vapour by tenths of a kelvin and soon no longer show', () => {
    const arrival = run.samples.findIndex((sample) => sample.bathedFraction > 0.9999);
    const loweredK = (sample: BatchState) =>
      dewPoint({
        ethanolMoleFraction: sample.headVapourMoleFraction,
        pressureKPa: sample.pressureKPa,
      }).temperatureC - sample.headVapourTemperatureC;
    const first = run.samples[arrival] as BatchState;
    expect(first.headVapourTraceMoleFraction).toBeGreaterThan(1e-3);
    expect(loweredK(first)).toBeGreaterThan(0.1);
    expect(loweredK(first)).toBeLessThan(0.5);
    expect(Math.abs(loweredK(run.samples[arrival + 300] as BatchState))).toBeLessThan(0.1);
  });

  test('the bulb lags behind the vapour, most while vapour arrives', () => {
    const arrival = run.samples.findIndex(({ bathedFraction }) => bathedFraction > 0.95);
    const atArrival = run.samples[arrival];
    expect(atArrival?.bulbTemperatureC).toBeLessThan((atArrival?.headVapourTemperatureC ?? 0) - 1);
    const plateau = run.samples[arrival + 300];
    expect(
      Math.abs((plateau?.bulbTemperatureC ?? 0) - (plateau?.headVapourTemperatureC ?? 0)),
    ).toBeLessThan(0.05);
  });

  test('volumes above and below the limit add up to the distillate and what is on its way', () => {
    const last = run.samples.at(-1);
    const sum = (last?.aboveLimitMl ?? 0) + (last?.belowLimitMl ?? 0);
    // Mixing strong and weak distillate shrinks the volume by up to 3 %.
    expect(sum / (last?.distillateVolumeMl ?? 1)).toBeGreaterThan(0.999);
    expect(sum / (last?.distillateVolumeMl ?? 1)).toBeLessThan(1.04);
  });
});

describe('what people do', () => {
  const at = (setup: BatchSetup, timeS: number) => {
    const simulation = createBatchSimulation(setup);
    simulation.advance(timeS);
    return simulation;
  };

  test('without heat the vapour recedes and the head cools; with heat it comes back', () => {
    const still = at(pear, 1500);
    const before = still.state;
    still.applyEvent({ kind: 'heat-removed' });
    still.advance(1600);
    const away = still.state;
    still.applyEvent({ kind: 'heat-returned' });
    still.advance(1900);
    const back = still.state;
    expect([before.vapourAtHead, away.vapourAtHead, back.vapourAtHead]).toEqual([
      true,
      false,
      true,
    ]);
    expect(away.headVapourTemperatureC).toBeLessThan(before.headVapourTemperatureC - 3);
    expect(away.distillateRateMlPerMin).toBeLessThan(0.01);
    expect(Math.abs(back.headVapourTemperatureC - before.headVapourTemperatureC)).toBeLessThan(0.6);
  });

  test('the cooled head approaches the room with the time constant of its glass', () => {
    const still = at(pear, 1500);
    still.applyEvent({ kind: 'heat-removed' });
    still.advance(2100);
    const early = still.state.headVapourTemperatureC - 20;
    still.advance(2400);
    const late = still.state.headVapourTemperatureC - 20;
    const { heatCapacityJPerK, lossWPerK } = pear.rig.head;
    const timeConstantS = 300 / Math.log(early / late);
    // The column keeps warming the head a little, so it cools more slowly than alone.
    expect(timeConstantS).toBeGreaterThan(heatCapacityJPerK / (lossWPerK + 0.02));
    expect(timeConstantS).toBeLessThan(2 * (heatCapacityJPerK / lossWPerK));
  });

  test('easing the heat raises reflux and strength and slows the drip', () => {
    const usual = at(pear, 2100).state;
    const still = at(pear, 1500);
    still.applyEvent({ kind: 'heat-eased', powerW: 55 });
    still.advance(2100);
    const eased = still.state;
    expect(eased.refluxRatio ?? 0).toBeGreaterThan((usual.refluxRatio ?? 0) * 1.3);
    expect(eased.headVapourStrengthAbv).toBeGreaterThan(usual.headVapourStrengthAbv);
    expect(eased.distillateRateMlPerMin).toBeLessThan(usual.distillateRateMlPerMin);
  });

  test('total reflux stops the drip and keeps vapour at the head', () => {
    const still = at(pear, 1500);
    still.applyEvent({ kind: 'reflux-set', returnedFraction: 1 });
    still.advance(1800);
    const { refluxRatio, vapourAtHead, distillateRateMlPerMin } = still.state;
    expect({ refluxRatio, vapourAtHead }).toEqual({ refluxRatio: null, vapourAtHead: true });
    expect(distillateRateMlPerMin).toBeLessThan(1e-6);
  });

  test('a new receiver starts empty and the distillate goes on counting', () => {
    const still = at(pear, 1800);
    const before = still.state;
    still.applyEvent({ kind: 'receiver-changed' });
    const { receiver, receiverIndex, distillateVolumeMl } = still.state;
    expect({ receiver, receiverIndex, distillateVolumeMl }).toEqual({
      receiver: { volumeMl: 0, ethanolMol: 0, strengthAbv: 0 },
      receiverIndex: 1,
      distillateVolumeMl: before.distillateVolumeMl,
    });
  });

  test('a draught takes drip and gives reflux for as long as it lasts', () => {
    const rates = (durationS: number) => {
      const still = at(pear, 1500);
      still.applyEvent({ kind: 'draught', durationS, lossFactor: 1.6 });
      still.advance(1590);
      return still.state.distillateRateMlPerMin;
    };
    const [usual, over, lasting] = [rates(0), rates(30), rates(100)];
    expect(lasting).toBeLessThan(0.8 * usual);
    expect(over).toBeGreaterThan(0.9 * usual);
  });

  test('surging makes the drip come and go', () => {
    const still = at(pear, 1500);
    const calmRate = still.state.distillateRateMlPerMin;
    still.applyEvent({ kind: 'surging', durationS: 120, depth: 0.9, periodS: 30 });
    const rates: number[] = [];
    for (let timeS = 1530; timeS <= 1620; timeS += 1) {
      still.advance(timeS);
      rates.push(still.state.distillateRateMlPerMin);
    }
    expect(Math.min(...rates)).toBeLessThan(calmRate * 0.6);
    expect(Math.max(...rates)).toBeGreaterThan(calmRate * 1.4);
  });
});

describe('reflux from heat loss', () => {
  test('the reflux ratio is the heat lost by column and head over the duty of the distillate', () => {
    const still = createBatchSimulation(pear);
    still.advance(1800);
    const { refluxRatio, distillateRateMlPerMin, headVapourTemperatureC } = still.state;
    const { column, head } = pear.rig;
    const lossW = (column.lossWPerK + head.lossWPerK) * (headVapourTemperatureC + 2 - 20);
    const molPerS =
      distillateRateMlPerMin / 60 / molarVolumeMlPerMol(still.state.headVapourMoleFraction);
    const dutyW = molPerS * 39_100;
    expect((refluxRatio ?? 0) / (lossW / dutyW)).toBeGreaterThan(0.9);
    expect((refluxRatio ?? 0) / (lossW / dutyW)).toBeLessThan(1.1);
  });
});

describe('the numerical scheme', () => {
  test('a ten times finer step changes times by < 0.5 % and strengths by < 0.1 % vol', () => {
    const coarse = simulateBatch(pear, { durationS: 4000 });
    const fine = simulateBatch({ ...pear, stepS: 0.05 }, { durationS: 4000 });
    const relative = (a: number | null, b: number | null) =>
      Math.abs((a ?? Number.NaN) / (b ?? Number.NaN) - 1);
    expect(relative(coarse.truth.vapourArrivalS, fine.truth.vapourArrivalS)).toBeLessThan(0.005);
    expect(relative(coarse.truth.limitReachedS, fine.truth.limitReachedS)).toBeLessThan(0.005);
    expect(relative(coarse.truth.aboveLimitMl, fine.truth.aboveLimitMl)).toBeLessThan(0.005);
    for (const timeS of [1200, 1800, 2400, 3000]) {
      const strong = coarse.samples[timeS]?.headVapourStrengthAbv ?? 0;
      expect(Math.abs(strong - (fine.samples[timeS]?.headVapourStrengthAbv ?? 0))).toBeLessThan(
        0.1,
      );
    }
  });

  test('the same setup gives the same run to the last bit, however it is advanced', () => {
    const whole = createBatchSimulation(rough);
    whole.advance(2345);
    const piecewise = createBatchSimulation(rough);
    for (let timeS = 0; timeS <= 2345; timeS += 0.7) piecewise.advance(timeS);
    piecewise.advance(2345);
    expect(piecewise.state).toEqual(whole.state);
  });

  test('numbers outside their ranges are refused before anything runs', () => {
    const bad: BatchSetup[] = [
      { ...pear, pressureKPa: 20 },
      { ...pear, charge: { ...pear.charge, strengthAbv: Number.NaN } },
      { ...pear, rig: { ...pear.rig, plates: -1 } },
      { ...pear, schedule: [{ timeS: Number.NaN, kind: 'heat-off' }] },
      {
        ...pear,
        schedule: [
          { timeS: 5, kind: 'heat-on' },
          { timeS: 1, kind: 'heat-off' },
        ],
      },
    ];
    for (const setup of bad) expect(() => createBatchSimulation(setup)).toThrow(OutOfRangeError);
  });

  test.each([Number.NaN, -1, Number.POSITIVE_INFINITY])('refuse a spell of %d s', (durationS) => {
    const still = createBatchSimulation(pear);
    const draught = { kind: 'draught', durationS, lossFactor: 2 } as const;
    const surging = { kind: 'surging', durationS, depth: 0.5, periodS: 20 } as const;
    expect(() => still.applyEvent(draught)).toThrow(OutOfRangeError);
    expect(() => still.applyEvent(surging)).toThrow(OutOfRangeError);
  });
});
