import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { OutOfRangeError } from '#shared-core';
import {
  thermocoupleEmfMv,
  thermocoupleTemperatureC,
} from '../../../shared-core/probe/thermocouple.ts';
import published from '../../reference/nist_its90_KT.json' with { type: 'json' };
import { referenceTable } from '../../reference-table.ts';

// Source: NIST ITS-90 Thermocouple Database, SRD 60; see the headers of the files.
const checks = referenceTable('nist_its90_KT_check.csv') as readonly {
  t_C: number;
  E_K_mV: number;
  E_T_mV: number;
}[];

const evaluate = (coefficients: readonly number[], x: number) =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);

const types = [
  ['K', 'E_K_mV', published.type_K['inverse_0_500C_0_20.644mV']],
  ['T', 'E_T_mV', published.type_T['inverse_0_400C_0_20.872mV']],
] as const;

describe.each(types)('type %s', (type, column, inverse) => {
  test('the voltage agrees with the ITS-90 check values to the last printed digit', () => {
    for (const row of checks) {
      expect(Math.abs(thermocoupleEmfMv(type, row.t_C) - row[column])).toBeLessThan(5.1e-5);
    }
  });

  test('the temperature lies within ± 0.05 °C of the published inverse polynomial', () => {
    for (let emfMv = 0; emfMv <= 20.6; emfMv += 0.05) {
      expect(
        Math.abs(thermocoupleTemperatureC(type, emfMv) - evaluate(inverse, emfMv)),
      ).toBeLessThan(0.05);
    }
  });

  test('the two directions are inverse to 1e-6 K, below zero as well', () => {
    fc.assert(
      fc.property(fc.double({ min: -200, max: 400, noNaN: true }), (temperatureC) => {
        const back = thermocoupleTemperatureC(type, thermocoupleEmfMv(type, temperatureC));
        expect(Math.abs(back - temperatureC)).toBeLessThan(1e-6);
      }),
    );
  });

  test('the branches meet at 0 °C', () => {
    expect(Math.abs(thermocoupleEmfMv(type, 0))).toBeLessThan(1e-6);
    expect(Math.abs(thermocoupleEmfMv(type, -1e-9) - thermocoupleEmfMv(type, 0))).toBeLessThan(
      1e-6,
    );
  });

  test.each([-7, 25, Number.NaN])('%d mV is refused', (emfMv) => {
    expect(() => thermocoupleTemperatureC(type, emfMv)).toThrow(OutOfRangeError);
  });
});

test.each([
  ['K', -200, -5.891],
  ['K', -100, -3.554],
  ['T', -200, -5.603],
  ['T', -100, -3.379],
] as const)('type %s at %d °C gives %d mV', (type, temperatureC, emfMv) => {
  // Source: NIST SRD 60 tables, from memory; the ends are also the limits of the inverse ranges.
  expect(thermocoupleEmfMv(type, temperatureC)).toBeCloseTo(emfMv, 3);
});
