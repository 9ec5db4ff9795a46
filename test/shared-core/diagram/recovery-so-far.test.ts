import { describe, expect, test } from 'vitest';
import {
  collectedAtMl,
  collectedCourse,
  type Mark,
  type MarkBody,
  pearFermentSetup,
  simulateBatch,
} from '#shared-core';
import { dripRateAt } from '../../../shared-core/diagram/collected-course.ts';
import { presentReflux } from '../../../shared-core/diagram/present-reflux.ts';
import { recoverySoFar } from '../../../shared-core/diagram/recovery-so-far.ts';

function marks(...made: readonly (readonly [number, MarkBody])[]): Mark[] {
  return made.map(([timeS, mark], index) => ({ kind: 'mark', timeS, markId: index + 1, mark }));
}

describe('collectedCourse', () => {
  test('adds receivers up and leaves out withdrawn readings and receivers without a volume', () => {
    const course = collectedCourse(
      marks(
        [700, { type: 'volume-read', volumeMl: 3 }],
        [800, { type: 'receiver-changed', volumeMl: 4 }],
        [900, { type: 'volume-read', volumeMl: 50 }],
        [910, { type: 'mark-withdrawn', withdrawnMarkId: 3 }],
        [1000, { type: 'volume-read', volumeMl: 6 }],
        [1100, { type: 'receiver-changed', volumeMl: null }],
      ),
      600,
    );
    expect(course).toEqual([
      { timeS: 600, volumeMl: 0 },
      { timeS: 700, volumeMl: 3 },
      { timeS: 800, volumeMl: 4 },
      { timeS: 1000, volumeMl: 10 },
    ]);
    expect([500, 600, 650, 900, 1001].map((timeS) => collectedAtMl(course, timeS))).toEqual([
      null,
      0,
      1.5,
      7,
      null,
    ]);
  });

  test('knows nothing before vapour has arrived', () => {
    expect(collectedCourse(marks([700, { type: 'volume-read', volumeMl: 3 }]), null)).toEqual([]);
  });
});

describe('dripRateAt', () => {
  test('is the slope round the time, and wider the shorter the time between the bookings', () => {
    const course = [
      { timeS: 0, volumeMl: 0 },
      { timeS: 600, volumeMl: 10 },
      { timeS: 660, volumeMl: 10.5 },
    ];
    const long = dripRateAt(course, 300);
    const short = dripRateAt(course, 5000);
    expect([long?.value, short?.value]).toEqual([1, 0.5]);
    expect((short?.high ?? 0) - 0.5).toBeGreaterThan((long?.high ?? 0) - 1);
    expect(dripRateAt([], 10)).toBe(null);
  });
});

describe('presentReflux', () => {
  const rig = { description: '', plates: null, heatW: 60, columnLossW: null };
  const dripRateMlPerMin = { value: 0.9, low: 0.8, high: 1 };

  test('knows reflux less well from the heater than from the column’s loss', () => {
    const byHeat = presentReflux({ rig, dripRateMlPerMin, headStrengthAbv: 92 });
    const byLoss = presentReflux({
      rig: { ...rig, columnLossW: 30 },
      dripRateMlPerMin,
      headStrengthAbv: 92,
    });
    const width = ({ low, high }: { low: number; high: number }) => high / Math.max(0.1, low);
    expect([byHeat?.basis, byLoss?.basis]).toEqual(['heat', 'column-loss']);
    expect(width(byHeat?.refluxRatio ?? { low: 1, high: 1 })).toBeGreaterThan(
      width(byLoss?.refluxRatio ?? { low: 1, high: 0 }),
    );
  });

  test('is unknown without a drip rate, and without any heat', () => {
    expect(presentReflux({ rig, dripRateMlPerMin: null, headStrengthAbv: 92 })).toBe(null);
    expect(
      presentReflux({ rig: { ...rig, heatW: null }, dripRateMlPerMin, headStrengthAbv: 92 }),
    ).toBe(null);
  });
});

describe('recoverySoFar', () => {
  test('agrees with the books of a simulated run within the balance it can know', () => {
    const setup = pearFermentSetup();
    const { samples, truth } = simulateBatch(setup, { durationS: 3600, sampleEveryS: 10 });
    const arrivedS = truth.vapourArrivalS ?? 0;
    const later = samples.filter(({ timeS }) => timeS >= arrivedS);
    const course = later.map(({ timeS, distillateVolumeMl, headVapourStrengthAbv: value }) => ({
      timeS,
      volumeMl: distillateVolumeMl,
      abv: { value, low: value, high: value },
      stretch: null,
    }));
    const charge = { volumeMl: 250, strengthAbv: 11, standardUncertaintyAbv: 0 };
    const points = recoverySoFar(course, charge);
    const end = points[points.length - 1];
    const last = samples[samples.length - 1];
    // Drops lag the vapour a little, so the simulated receiver is the truth within 1 % vol and 0.01.
    expect(
      Math.abs((end?.meanStrengthAbv.value ?? 0) - (last?.receiver.strengthAbv ?? 0)),
    ).toBeLessThan(1);
    const collectedEthanolMl =
      ((last?.receiver.volumeMl ?? 0) * (last?.receiver.strengthAbv ?? 0)) / 100;
    expect(end?.recovery.value).toBeCloseTo(collectedEthanolMl / 27.5, 2);
    const recoveries = points.map(({ recovery }) => recovery.value);
    expect([...recoveries].sort((a, b) => a - b)).toEqual(recoveries);
  });

  test('gives nothing before anything has come', () => {
    const charge = { volumeMl: 250, strengthAbv: 11, standardUncertaintyAbv: 0.5 };
    const abv = { value: 90, low: 89, high: 91 };
    expect(recoverySoFar([{ timeS: 10, volumeMl: 0, abv, stretch: null }], charge)).toEqual([]);
  });

  test('draws sixty points of a long run, the last of them always', () => {
    const charge = { volumeMl: 250, strengthAbv: 11, standardUncertaintyAbv: 0.5 };
    const abv = { value: 90, low: 89, high: 91 };
    const course = Array.from({ length: 600 }, (_, index) => ({
      timeS: 60 * index,
      volumeMl: index / 10,
      abv,
      stretch: null,
    }));
    const points = recoverySoFar(course, charge);
    expect(points.length).toBe(60);
    expect(points.at(-1)).toMatchObject({ timeS: 60 * 599, volumeMl: 59.9 });
  });
});
