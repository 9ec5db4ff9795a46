import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  OutOfRangeError,
  platinumTemperatureC,
  sensorStandardUncertaintyK,
  sensorToleranceK,
} from '#shared-core';
import {
  platinumResistanceOhm,
  platinumSlopeOhmPerK,
} from '../../../shared-core/probe/platinum.ts';
import { referenceTable } from '../../reference-table.ts';

// Source: IEC 60751; see the header of the table.
const table = referenceTable('iec60751_pt100.csv') as readonly {
  t_C: number;
  R_Pt100: number;
  R_Pt1000: number;
  tolA_K: number;
  tolB_K: number;
  dRdt_Pt100: number;
}[];

const worst = (misses: readonly number[]) => Math.max(...misses.map(Math.abs));
const temperature = fc.double({ min: -200, max: 850, noNaN: true });

describe('platinum thermometer', () => {
  test('the resistance agrees with the IEC 60751 table within 0.001 Ω, Pt100 and Pt1000', () => {
    expect(worst(table.map((row) => platinumResistanceOhm(row.t_C) - row.R_Pt100))).toBeLessThan(
      1e-4,
    );
    expect(
      worst(table.map((row) => platinumResistanceOhm(row.t_C, 1000) - row.R_Pt1000)),
    ).toBeLessThan(1e-3);
  });

  test('the temperature agrees with the IEC 60751 table within 0.5 mK', () => {
    expect(
      worst(table.map((row) => platinumTemperatureC(row.R_Pt100, 100) - row.t_C)),
    ).toBeLessThan(5e-4);
  });

  test.each([
    [-200, 18.52],
    [-100, 60.26],
    [400, 247.09],
    [850, 390.48],
  ])('far from the still it holds too: %d °C is %d Ω', (temperatureC, ohm) => {
    // Source: IEC 60751 table 1, from memory.
    expect(platinumResistanceOhm(temperatureC)).toBeCloseTo(ohm, 2);
  });

  test('the two directions are inverse to 1e-9 K over the whole range and any nominal value', () => {
    fc.assert(
      fc.property(temperature, fc.constantFrom(100, 500, 1000), (temperatureC, r0) => {
        const back = platinumTemperatureC(platinumResistanceOhm(temperatureC, r0), r0);
        expect(Math.abs(back - temperatureC)).toBeLessThan(1e-9);
      }),
    );
  });

  test('the slope is the derivative of the resistance and agrees with the table', () => {
    // The table's slope leaves out C, which matters below 0 °C only.
    const aboveZero = table.filter((row) => row.t_C >= 0);
    expect(
      worst(aboveZero.map((row) => platinumSlopeOhmPerK(row.t_C) - row.dRdt_Pt100)),
    ).toBeLessThan(6e-6);
    fc.assert(
      fc.property(fc.double({ min: -199, max: 849, noNaN: true }), (temperatureC) => {
        const numeric =
          (platinumResistanceOhm(temperatureC + 0.01) -
            platinumResistanceOhm(temperatureC - 0.01)) /
          0.02;
        expect(Math.abs(platinumSlopeOhmPerK(temperatureC) - numeric)).toBeLessThan(1e-7);
      }),
    );
  });

  test.each([
    [0, 100],
    [Number.NaN, 100],
    [391, 100],
    [Number.POSITIVE_INFINITY, 100],
    [100, 0],
    [100, Number.NaN],
  ])('an open, shorted or missing sensor is refused: %d Ω of %d Ω', (ohm, r0) => {
    expect(() => platinumTemperatureC(ohm, r0)).toThrow(OutOfRangeError);
  });

  test.each([-201, 851, Number.NaN])('%d °C is refused', (temperatureC) => {
    expect(() => platinumResistanceOhm(temperatureC)).toThrow(OutOfRangeError);
    expect(() => platinumSlopeOhmPerK(temperatureC)).toThrow(OutOfRangeError);
  });
});

describe('sensorToleranceK', () => {
  test('classes A and B agree with the table', () => {
    for (const row of table) {
      const of = (toleranceClass: 'A' | 'B') =>
        sensorToleranceK({ kind: 'platinum', toleranceClass }, row.t_C);
      expect([of('A'), of('B')]).toEqual([
        expect.closeTo(row.tolA_K, 3),
        expect.closeTo(row.tolB_K, 3),
      ]);
    }
  });

  test('classes AA and C follow IEC 60751 at 80 °C', () => {
    // AA 0.1 + 0.0017 |t|, C 0.6 + 0.01 |t|.
    const at80 = (toleranceClass: 'AA' | 'C') =>
      sensorToleranceK({ kind: 'platinum', toleranceClass }, 80);
    expect([at80('AA'), at80('C')]).toEqual([expect.closeTo(0.236, 9), expect.closeTo(1.4, 9)]);
  });

  test('a digital thermometer promises less above 85 °C, where the tail of a run lies', () => {
    const digital = { kind: 'one-wire' } as const;
    expect([sensorToleranceK(digital, 85), sensorToleranceK(digital, 85.1)]).toEqual([0.5, 2]);
    expect([sensorToleranceK(digital, -10), sensorToleranceK(digital, -10.1)]).toEqual([0.5, 2]);
  });

  test('a thermocouple takes the larger of its two limits', () => {
    const typeK = { kind: 'thermocouple', type: 'K', toleranceClass: 1 } as const;
    expect([sensorToleranceK(typeK, 78), sensorToleranceK({ ...typeK, type: 'T' }, 200)]).toEqual([
      1.5, 0.8,
    ]);
  });

  test('a promise of limits is an even spread between them', () => {
    expect(sensorStandardUncertaintyK({ kind: 'stated', toleranceK: 0.3 }, 20)).toBeCloseTo(
      0.3 / Math.sqrt(3),
      12,
    );
  });

  test('outside its class, and for NaN, there is no promise', () => {
    const classAa = { kind: 'platinum', toleranceClass: 'AA' } as const;
    expect(() => sensorToleranceK(classAa, 251)).toThrow(OutOfRangeError);
    expect(() => sensorToleranceK(classAa, Number.NaN)).toThrow(OutOfRangeError);
    expect(() => sensorToleranceK({ kind: 'stated', toleranceK: 0 }, 20)).toThrow(OutOfRangeError);
  });
});
