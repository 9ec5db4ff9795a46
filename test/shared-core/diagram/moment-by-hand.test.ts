import { describe, expect, test } from 'vitest';
import { bubblePoint, createMonitor, defaultRunSettings, dewPoint, type Mark } from '#shared-core';
import { moleFractionFromStrength } from '../../../shared-core/alcoholometry/strength-and-mole-fraction.ts';
import { dripRateAt } from '../../../shared-core/diagram/collected-course.ts';
import type { FollowedRun } from '../../../shared-core/diagram/followed-run.ts';
import { potEstimate } from '../../../shared-core/diagram/pot-estimate.ts';
import { potStrengthFromBalance } from '../../../shared-core/diagram/pot-from-balance.ts';
import { presentReflux } from '../../../shared-core/diagram/present-reflux.ts';
import { recoverySoFar } from '../../../shared-core/diagram/recovery-so-far.ts';
import { stillMomentAt } from '../../../shared-core/diagram/still-moment.ts';
import { appendToSeries } from '../../../shared-core/series/append-to-series.ts';
import { emptySeries } from '../../../shared-core/series/series.ts';
import type { Snapshot } from '../../../shared-core/snapshot/snapshot.ts';
import type { StageSpan } from '../../../shared-core/stages/stage.ts';
import { plainSnapshot } from '../../support/plain-snapshot.ts';

const pressureKPa = 99.4;
const settings = {
  ...defaultRunSettings,
  charge: {
    volumeMl: 350,
    strengthAbv: 9,
    standardUncertaintyAbv: 0,
    standardUncertaintyMl: 0,
  },
  pressure: {
    pressureKPa,
    standardUncertaintyKPa: 0.1,
    source: 'barometer',
    altitudeM: null,
  },
  rig: { ...defaultRunSettings.rig, columnLossW: 35 },
} as const;
const headOf90C = dewPoint({
  ethanolMoleFraction: moleFractionFromStrength(90),
  pressureKPa,
}).temperatureC;
const track = (valueC: number, toS: number) => ({
  series: appendToSeries(
    emptySeries(),
    Array.from({ length: toS / 10 + 1 }, (_, index) => ({ timeS: 10 * index, value: valueC })),
  ),
});
const span = (stage: StageSpan['stage'], fromS: number, toS: number | null): StageSpan => ({
  stage,
  fromS,
  toS,
  because: '',
});
const booked: readonly Mark[] = [
  { kind: 'mark', timeS: 900, markId: 1, mark: { type: 'volume-read', volumeMl: 5 } },
  { kind: 'mark', timeS: 1500, markId: 2, mark: { type: 'volume-read', volumeMl: 14 } },
  { kind: 'mark', timeS: 2400, markId: 3, mark: { type: 'volume-read', volumeMl: 20 } },
];

const around = (value: number) => ({ value, low: value - 1.5, high: value + 1 });
/** Told each minute while vapour bathes the bulb: 90 % vol, and at the end less by two a minute. */
const estimates = Array.from({ length: 33 }, (_, index) => ({
  timeS: 660 + 60 * index,
  headVapourAbv: around(90 - 2 * Math.max(0, index - 25)),
}));

/** A head that stood at one height from 600 s on, with what was told of it; no snapshot of the monitor's. */
function followed(changed: Partial<FollowedRun> = {}): FollowedRun {
  return {
    settings,
    tracks: { head: track(headOf90C, 3000) },
    marks: booked,
    snapshot: null,
    stages: [
      span('warm-up', 0, 600),
      span('first-fraction', 600, 800),
      span('main-fraction', 800, 2600),
      span('cool-down', 2600, null),
    ],
    estimates,
    ...changed,
  };
}
const moment = (timeS: number, changed: Partial<FollowedRun> = {}) =>
  stillMomentAt(followed(changed), timeS);

describe('a moment of a run that is looked back at', () => {
  test('has the strength that was told, the bookings until then and the drip rate between them', () => {
    const { headC, vapour, bookings, recovery, dripRateMlPerMin, pot, stage } = moment(1500);
    expect(stage).toBe('main-fraction');
    expect(headC).toEqual({
      value: headOf90C,
      low: expect.closeTo(headOf90C - 0.5, 9),
      high: expect.closeTo(headOf90C + 0.5, 9),
    });
    expect(vapour?.strengthAbv).toEqual(around(90));
    expect(bookings).toEqual([
      { timeS: 600, volumeMl: 0 },
      { timeS: 900, volumeMl: 5 },
      { timeS: 1500, volumeMl: 14 },
    ]);
    // 14 mL of 90 % vol out of 31.5 mL of ethanol.
    expect(recovery.at(-1)).toMatchObject({
      timeS: 1500,
      volumeMl: 14,
      meanStrengthAbv: {
        value: expect.closeTo(90, 9),
        low: expect.closeTo(88.5, 9),
        high: expect.closeTo(91, 9),
      },
      recovery: { value: expect.closeTo((14 * 0.9) / 31.5, 9) },
    });
    expect(recovery.at(-1)?.recovery.low).toBeLessThan((14 * 0.9) / 31.5);
    expect(dripRateMlPerMin?.value).toBeCloseTo(0.9, 9);
    expect(pot?.basis).toBe('balance');
  });

  test('has no vapour before it came nor while it cools, and drips no more then', () => {
    expect(moment(300)).toMatchObject({ stage: 'warm-up', vapour: null, bookings: [] });
    expect(moment(2700)).toMatchObject({
      stage: 'cool-down',
      vapour: null,
      dripRateMlPerMin: null,
      reflux: null,
    });
    expect(moment(2500).dripRateMlPerMin?.value).toBeCloseTo(0.4, 9);
    expect([moment(600).vapour, moment(660).vapour?.strengthAbv]).toEqual([null, around(90)]);
  });

  test('goes straight from one told strength to the next, and has none where none was told at one of them', () => {
    const strengthAt = (timeS: number, changed: Partial<FollowedRun> = {}) =>
      moment(timeS, changed).vapour?.strengthAbv ?? null;
    expect(strengthAt(2220)).toEqual(around(88));
    expect(strengthAt(2235)).toEqual(around(87.5));
    // What a temperature alone says does not matter: another probe error, the same strength.
    const tracks = { head: track(headOf90C + 1, 3000) };
    expect(strengthAt(2235, { tracks })).toEqual(around(87.5));
    const untold = estimates.map((told) =>
      told.timeS === 2220 ? { ...told, headVapourAbv: null } : told,
    );
    expect(
      [2165, 2215, 2275, 2280].map((timeS) => strengthAt(timeS, { estimates: untold })),
    ).toEqual([null, null, null, around(84 + 2)]);
    expect(strengthAt(1500, { estimates: [] })).toBeNull();
    expect(moment(1500, { estimates: [] }).recovery).toEqual([]);
  });

  test('has no vapour from where the head fell into the cool-down on, though a strength was told of the falling bulb', () => {
    const falling = {
      series: appendToSeries(
        track(headOf90C, 2400).series,
        Array.from({ length: 20 }, (_, index) => ({
          timeS: 2410 + 10 * index,
          value: headOf90C - index,
        })),
      ),
    };
    const strengths = [2400, 2470].map(
      (timeS) => moment(timeS, { tracks: { head: falling } }).vapour,
    );
    expect(strengths).toEqual([expect.anything(), null]);
    const goesOn = moment(2470, {
      tracks: { head: falling },
      stages: followed().stages.slice(0, 3),
    });
    expect(goesOn.vapour).not.toBeNull();
  });

  test('has no head where the last reading is older than twenty seconds, whatever strength was told', () => {
    const tracks = { head: track(headOf90C, 1000) };
    expect(moment(1020, { tracks }).headC?.value).toBe(headOf90C);
    expect(moment(1021, { tracks }).headC).toBeNull();
    const cold = { head: track(70, 3000) };
    expect(moment(1500, { tracks: cold })).toMatchObject({ headC: { value: 70 } });
    expect(moment(1500, { tracks: {} })).toMatchObject({ headC: null });
  });

  test('has the reflux that the column’s loss makes beside that drip rate', () => {
    const { reflux, dripRateMlPerMin } = moment(1500);
    const { refluxRatio } = presentReflux({
      rig: settings.rig,
      dripRateMlPerMin,
      headStrengthAbv: 90,
    })!;
    expect(reflux?.refluxRatio).toEqual(refluxRatio);
  });
});

describe('the present moment', () => {
  const present = (changed: Partial<Snapshot>): Snapshot => {
    const first = plainSnapshot(createMonitor(settings).snapshot());
    return {
      ...first,
      timeS: 1500,
      head: { temperatureC: 78.4, expandedUncertaintyK: 0.3, rateKPerMin: 0, ageS: 0 },
      vapour: {
        kind: 'ethanol-water',
        alcoholByVolume: { value: 91, low: 88, high: 93 },
        ethanolMassPercent: { value: 87, low: 84, high: 90 },
        explanation: '',
      },
      ...changed,
    };
  };

  test('is the monitor’s own: its head, its vapour, within two seconds of it', () => {
    const snapshot = present({});
    expect(moment(1502, { snapshot })).toMatchObject({
      headC: { value: 78.4, low: expect.closeTo(78.1, 9), high: expect.closeTo(78.7, 9) },
      vapour: { strengthAbv: { value: 91, low: 88, high: 93 } },
    });
    // 91 % vol is 86.97 % by mass by OIML R 22; of that (w/46.069)/(w/46.069 + (1 − w)/18.015).
    expect(moment(1500, { snapshot }).vapour?.ethanolMoleFraction.value).toBeCloseTo(0.723, 3);
    expect(moment(1503, { snapshot }).headC?.value).toBe(headOf90C);
  });

  test('has no vapour where the monitor tells no strength, as while it has receded or is unsettled', () => {
    const { stage, vapour } = present({});
    const untold = { ...vapour!, kind: 'unsettled', alcoholByVolume: null } as const;
    const unsettled = present({
      stage: { ...stage, condition: 'vapour-receded' },
      vapour: untold,
    });
    expect(moment(1500, { snapshot: unsettled }).vapour).toBeNull();
    expect(moment(1500, { snapshot: present({ vapour: null }) }).vapour).toBeNull();
    // Between the last that was told and a present that tells none nothing is known either.
    const short = { estimates: estimates.slice(0, 14) };
    expect(moment(1470, { ...short, snapshot: present({}) }).vapour).toEqual(expect.anything());
    expect(moment(1470, { ...short, snapshot: unsettled }).vapour).toBeNull();
    expect(moment(1500, { snapshot: present({ head: null }) }).headC?.value).toBe(headOf90C);
  });
});

describe('the pot by hand', () => {
  const exactly = (value: number) => ({ value, low: value, high: value });

  test('has what was not taken out of it, half of what column and head may hold aside', () => {
    const taken = {
      timeS: 0,
      volumeMl: 20,
      meanStrengthAbv: { value: 90, low: 88, high: 92 },
      recovery: exactly(0.5),
    };
    const strength = (takenAbv: number, heldMl: number, heldEthanolMl: number) =>
      (100 * (31.5 - 0.2 * takenAbv - heldEthanolMl)) / (330 - heldMl);
    expect(potStrengthFromBalance(settings.charge, taken)).toEqual({
      value: expect.closeTo(strength(90, 5, 4), 9),
      low: expect.closeTo(strength(92, 10, 8), 9),
      high: expect.closeTo(strength(88, 0, 0), 9),
    });
    expect(potStrengthFromBalance(settings.charge, { ...taken, volumeMl: 330 })).not.toBeNull();
    expect(potStrengthFromBalance(settings.charge, { ...taken, volumeMl: 331 })).toBeNull();
  });

  test('is as strong as a liquid that boils there, to twice the doubt of probe and bulb', () => {
    const boils = (strengthAbv: number) =>
      bubblePoint({
        ethanolMoleFraction: moleFractionFromStrength(strengthAbv),
        pressureKPa,
      }).temperatureC;
    const clues = {
      charge: settings.charge,
      pressureKPa,
      potTemperatureC: boils(5),
      probeStandardUncertaintyK: 0.4,
      balanceAbv: null,
      hasDistilled: true,
    };
    const pot = potEstimate(clues)!;
    expect(pot.strengthAbv.value).toBeCloseTo(5, 2);
    // 2 √(0.4² + 0.3²) = 1 K.
    expect(pot.boilsAtC.low).toBeCloseTo(boils(5) - 1, 9);
    expect(pot.boilsAtC.high).toBeCloseTo(boils(5) + 1, 9);
    expect(boils(pot.strengthAbv.high)).toBeCloseTo(boils(5) - 1, 2);
    const colder = (byK: number) =>
      potEstimate({ ...clues, hasDistilled: false, potTemperatureC: boils(9) - byK })!;
    expect([colder(0.9).isBoiling, colder(1.1).isBoiling]).toEqual([true, false]);
    expect(potEstimate({ ...clues, potTemperatureC: null, balanceAbv: exactly(5) })!).toMatchObject(
      {
        basis: 'balance',
        isBoiling: true,
        boilsAtC: { value: expect.closeTo(boils(5), 6) },
      },
    );
  });
});

describe('reflux and recovery by hand', () => {
  test('the column’s loss is known to a fifth, the heat into the vapour to between a half and nine tenths', () => {
    const dripRateMlPerMin = { value: 1, low: 0.8, high: 1.25 };
    const rig = { description: '', plates: null, heatW: 60, columnLossW: 30 };
    const byLoss = presentReflux({ rig, dripRateMlPerMin, headStrengthAbv: 92 })!.refluxRatio;
    expect(byLoss.low / byLoss.value).toBeCloseTo(0.8 / 1.25, 9);
    expect(byLoss.high / byLoss.value).toBeCloseTo(1.2 / 0.8, 9);
    const byHeat = presentReflux({
      rig: { ...rig, columnLossW: null },
      dripRateMlPerMin,
      headStrengthAbv: 92,
    })!.refluxRatio;
    // R = Q/(ΔH D) by loss, so (R + 1) by heat is 0.7 · 60 W over it.
    expect(byHeat.value + 1).toBeCloseTo((byLoss.value * 0.7 * 60) / 30, 9);
    expect(byHeat.high + 1).toBeCloseTo((byLoss.value * 0.9 * 60) / 30 / 0.8, 9);
    expect(byHeat.low).toBeCloseTo(Math.max(0, (byLoss.value * 0.5 * 60) / 30 / 1.25 - 1), 9);
    const none = { value: 1, low: 0, high: 2 };
    expect(presentReflux({ rig, dripRateMlPerMin: none, headStrengthAbv: 92 })).toBeNull();
  });

  test('the mean of what is collected counts each millilitre at its strength, the recovery the doubts of charge and receiver', () => {
    const point = (timeS: number, volumeMl: number, value: number) => ({
      timeS,
      volumeMl,
      abv: { value, low: value - 2, high: value + 1 },
      stretch: null,
    });
    const points = recoverySoFar([point(0, 0, 95), point(100, 10, 85), point(200, 30, 75)], {
      volumeMl: 300,
      strengthAbv: 10,
      standardUncertaintyAbv: 0.5,
      standardUncertaintyMl: 0,
    });
    expect(points.map(({ timeS, volumeMl }) => [timeS, volumeMl])).toEqual([
      [100, 10],
      [200, 30],
    ]);
    // 10 mL of 90 % vol and 20 mL of 80 % vol.
    const mean = (9 + 16) / 0.3;
    expect(points[1]?.meanStrengthAbv).toEqual({
      value: expect.closeTo(mean, 9),
      low: expect.closeTo(mean - 2, 9),
      high: expect.closeTo(mean + 1, 9),
    });
    // 30 mL of ethanol in the charge to a twentieth; V mL in a cylinder to 0.5 mL and 0.5 %.
    const doubtAt = (volumeMl: number) => 2 * Math.hypot(1 / 20, Math.hypot(0.5 / volumeMl, 0.005));
    expect(points.map(({ recovery }) => recovery)).toEqual([
      {
        value: expect.closeTo(9 / 30, 9),
        low: expect.closeTo(8.8 / (30 * (1 + doubtAt(10))), 9),
        high: expect.closeTo(9.1 / (30 * (1 - doubtAt(10))), 9),
      },
      {
        value: expect.closeTo(25 / 30, 9),
        low: expect.closeTo(24.4 / (30 * (1 + doubtAt(30))), 9),
        high: expect.closeTo(25.3 / (30 * (1 - doubtAt(30))), 9),
      },
    ]);
  });

  test('a drip rate is as sure as a cylinder is read, to a quarter of it at worst; none without time or drops', () => {
    const course = [
      { timeS: 0, volumeMl: 0 },
      { timeS: 60, volumeMl: 2 },
      { timeS: 60, volumeMl: 2 },
      { timeS: 120, volumeMl: 2 },
    ];
    const reach = Math.SQRT2 * 0.5;
    expect(dripRateAt(course.slice(0, 2), 30)).toEqual({
      value: 2,
      low: expect.closeTo(2 - reach, 9),
      high: expect.closeTo(2 + reach, 9),
    });
    expect(
      dripRateAt(
        [
          { timeS: 0, volumeMl: 0 },
          { timeS: 60, volumeMl: 0.8 },
        ],
        30,
      )?.low,
    ).toBe(0.2);
    expect(dripRateAt(course, 100)).toBeNull();
    expect(dripRateAt(course.slice(1, 3), 60.5)).toBeNull();
    expect(dripRateAt(course.slice(0, 1), 0)).toBeNull();
    expect(dripRateAt(course, -5)?.value).toBe(2);
  });
});
