import { describe, expect, test } from 'vitest';
import { createRandom, OutOfRangeError, stationPressure, steamPoint } from '#shared-core';
import { saturationTemperatureC } from '../../../shared-core/equilibrium/saturation-temperature.ts';
import {
  type CalibrationPoint,
  calibrateAtOnePoint,
  calibrateAtTwoPoints,
} from '../../../shared-core/probe/calibrate.ts';
import { applyCalibration, type Calibration } from '../../../shared-core/probe/calibration.ts';
import { icePoint } from '../../../shared-core/probe/reference-point.ts';

const ice: CalibrationPoint = {
  readingC: 0.4,
  readingStandardUncertaintyK: 0.03,
  referenceC: 0,
  referenceStandardUncertaintyK: 0.05,
};
const steam: CalibrationPoint = {
  readingC: 98.1,
  readingStandardUncertaintyK: 0.04,
  referenceC: 99.21,
  referenceStandardUncertaintyK: 0.06,
};

function madeBy(low: CalibrationPoint, high: CalibrationPoint): Calibration {
  const made = calibrateAtTwoPoints(low, high);
  if (!made.ok) throw new Error(made.error.kind);
  return made.value;
}

describe('calibrateAtTwoPoints', () => {
  test('gives back the references at their readings, with the doubt of each point', () => {
    const calibration = madeBy(ice, steam);
    const at = (readingC: number) => applyCalibration(calibration, readingC);
    const { gain } = calibration;
    expect([at(ice.readingC), at(steam.readingC)]).toEqual([
      {
        temperatureC: expect.closeTo(0, 12),
        standardUncertaintyK: expect.closeTo(Math.hypot(0.05, gain * 0.03), 9),
      },
      {
        temperatureC: expect.closeTo(99.21, 12),
        standardUncertaintyK: expect.closeTo(Math.hypot(0.06, gain * 0.04), 9),
      },
    ]);
  });

  test('the stated doubt at the plateau is the spread of calibrations drawn from the points', () => {
    const random = createRandom('two points');
    const shifted = (point: CalibrationPoint): CalibrationPoint => ({
      ...point,
      readingC: point.readingC + point.readingStandardUncertaintyK * random.normal(),
      referenceC: point.referenceC + point.referenceStandardUncertaintyK * random.normal(),
    });
    for (const readingC of [20, 78, 105]) {
      const draws = Array.from(
        { length: 20_000 },
        () => applyCalibration(madeBy(shifted(ice), shifted(steam)), readingC).temperatureC,
      );
      const mean = draws.reduce((sum, value) => sum + value, 0) / draws.length;
      const spread = Math.sqrt(
        draws.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (draws.length - 1),
      );
      const stated = applyCalibration(madeBy(ice, steam), readingC).standardUncertaintyK;
      expect(Math.abs(stated / spread - 1)).toBeLessThan(0.03);
    }
  });

  const { readingC: iceReadingC } = ice;
  test.each<[string, CalibrationPoint, CalibrationPoint, object]>([
    [
      'two points close together',
      ice,
      { ...steam, readingC: 30, referenceC: 30 },
      { kind: 'points-too-close', spanK: 30, leastK: 40 },
    ],
    ['ice and steam mixed up in the form', steam, ice, { kind: 'points-swapped' }],
    [
      'a probe that shows less where it is hotter',
      { ...ice, readingC: 98 },
      { ...steam, readingC: 1 },
      { kind: 'points-swapped' },
    ],
    [
      'the same reading twice',
      ice,
      { ...steam, readingC: iceReadingC },
      { kind: 'points-swapped' },
    ],
    [
      'a probe 8 K off',
      { ...ice, readingC: -8 },
      { ...steam, readingC: 92 },
      { kind: 'correction-too-large', referenceC: 0, correctionK: 8, limitK: 5 },
    ],
    [
      'a gain beyond 5 %',
      { ...ice, readingC: 3 },
      { ...steam, readingC: 95.21 },
      {
        kind: 'gain-implausible',
        gain: expect.closeTo(99.21 / 92.21, 9),
        low: 0.95,
        high: 1.05,
      },
    ],
    [
      'points too uncertain to help',
      ice,
      { ...steam, referenceStandardUncertaintyK: 2 },
      { kind: 'too-uncertain', standardUncertaintyK: expect.closeTo(2, 2), limitK: 1 },
    ],
    ['a missing number', ice, { ...steam, readingC: Number.NaN }, { kind: 'not-a-number' }],
    [
      'a negative uncertainty',
      { ...ice, readingStandardUncertaintyK: -0.1 },
      steam,
      { kind: 'not-a-number' },
    ],
  ])('refuses %s', (_, low, high, error) => {
    expect(calibrateAtTwoPoints(low, high)).toEqual({ ok: false, error });
  });
});

const sure = (referenceC: number, readingC: number): CalibrationPoint => ({
  referenceC,
  readingC,
  referenceStandardUncertaintyK: 0,
  readingStandardUncertaintyK: 0,
});

test.each([
  ['points 40 K apart', sure(0, 0), sure(40, 40)],
  ['a probe 5 K low', sure(5, 0), sure(105, 100)],
  ['a probe 5 K high', sure(0, 5), sure(95, 100)],
  ['a gain of 0.95', sure(0, 0), sure(95, 100)],
  ['a gain of 1.05', sure(0, 0), sure(105, 100)],
])('what is just possible is accepted: %s', (_, low, high) => {
  expect(calibrateAtTwoPoints(low, high).ok).toBe(true);
});

test.each([
  ['points less than 40 K apart', sure(0, 0), sure(39.9, 39.9), 'points-too-close'],
  ['a probe more than 5 K low', sure(5.1, 0), sure(105.1, 100), 'correction-too-large'],
  ['a probe more than 5 K high', sure(0, 5.1), sure(94.9, 100), 'correction-too-large'],
  ['a gain below 0.95', sure(0, -3), sure(90, 94), 'gain-implausible'],
  ['a gain above 1.05', sure(0, 3), sure(94, 90), 'gain-implausible'],
  [
    'a reference in doubt by less than nothing',
    { ...ice, referenceStandardUncertaintyK: -0.1 },
    steam,
    'not-a-number',
  ],
])('what is no more possible is refused: %s', (_, low, high, kind) => {
  expect(calibrateAtTwoPoints(low, high)).toMatchObject({ ok: false, error: { kind } });
});

describe('calibrateAtOnePoint', () => {
  test('shifts by the offset and grows less certain away from the point', () => {
    const made = calibrateAtOnePoint(steam, 0.003);
    const calibration = made.ok ? made.value : undefined;
    expect(calibration).toMatchObject({ gain: 1, offsetK: expect.closeTo(1.11, 12) });
    const doubtAt = (readingC: number) =>
      calibration && applyCalibration(calibration, readingC).standardUncertaintyK;
    const atPoint = Math.hypot(0.04, 0.06);
    expect([doubtAt(98.1), doubtAt(78.1)]).toEqual([
      expect.closeTo(atPoint, 9),
      expect.closeTo(Math.hypot(atPoint, 20 * 0.003), 9),
    ]);
  });

  test.each([
    ['a gain in no doubt', 0, true],
    ['a gain in doubt by 5 %', 0.05, true],
    ['a gain in doubt by more', 0.051, false],
    ['a doubt below nothing', -0.001, false],
  ])('of %s is accepted or not: %d', (_, gainDoubt, isAccepted) => {
    expect(calibrateAtOnePoint({ ...ice, readingC: 0 }, gainDoubt).ok).toBe(isAccepted);
  });

  test.each([
    [1, true],
    [1.001, false],
  ])(
    'whose point is in doubt by %d K is accepted or not',
    (referenceStandardUncertaintyK, isAccepted) => {
      const point = { referenceC: 0, readingC: 0, readingStandardUncertaintyK: 0 };
      expect(calibrateAtOnePoint({ ...point, referenceStandardUncertaintyK }).ok).toBe(isAccepted);
    },
  );

  test('refuses a point far off and a gain that is no number', () => {
    expect(calibrateAtOnePoint({ ...steam, readingC: 90 })).toMatchObject({
      ok: false,
      error: { kind: 'correction-too-large' },
    });
    expect(calibrateAtOnePoint(steam, Number.NaN)).toEqual({
      ok: false,
      error: { kind: 'not-a-number' },
    });
  });
});

describe('reference points', () => {
  test('the steam point follows the pressure of the day and carries its doubt', () => {
    const pressure = stationPressure({ kind: 'altitude', altitudeM: 500 });
    const point = steamPoint(pressure);
    // 0.28 K a kPa near 95 kPa from the IAPWS saturation line.
    expect(point).toEqual({
      point: 'steam',
      temperatureC: saturationTemperatureC('water', pressure.pressureKPa),
      standardUncertaintyK: expect.closeTo(0.29 * pressure.standardUncertaintyKPa, 1),
    });
    expect(point.standardUncertaintyK).toBeGreaterThan(0.2);
  });

  test('a pressure that was never converted from sea level is no steam point', () => {
    // @ts-expect-error a bare number or a sea-level value has no kind 'station'
    const wrong = () => steamPoint({ pressureKPa: 101.3, standardUncertaintyKPa: 0.1 });
    expect(wrong).toBeTypeOf('function');
  });

  test('tap water makes a less certain ice point than distilled', () => {
    expect(icePoint('tap').standardUncertaintyK).toBeCloseTo(
      2 * icePoint('distilled').standardUncertaintyK,
      12,
    );
  });

  test('NaN is refused', () => {
    const kind = 'station';
    expect(() =>
      steamPoint({ kind, pressureKPa: Number.NaN, standardUncertaintyKPa: 0.1 }),
    ).toThrow(OutOfRangeError);
    expect(() =>
      steamPoint({ kind, pressureKPa: 100, standardUncertaintyKPa: Number.NaN }),
    ).toThrow(OutOfRangeError);
    expect(() => applyCalibration(madeBy(ice, steam), Number.NaN)).toThrow(OutOfRangeError);
  });
});
