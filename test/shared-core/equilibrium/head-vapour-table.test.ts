import { describe, expect, test } from 'vitest';
import { azeotrope, dewPoint, headVapourTable, OutOfRangeError } from '#shared-core';

describe('headVapourTable', () => {
  test('differs from the full solve by less than 1 mK and never rises with temperature', () => {
    for (const pressureKPa of [20, 60, 98.6, 110, 200]) {
      const table = headVapourTable(pressureKPa);
      const spanK = table.waterBoilingTemperatureC - table.azeotropeTemperatureC;
      let last = 1;
      let worstK = 0;
      for (let index = 0; index <= 3000; index++) {
        // Squares crowd the points at the azeotrope, where the curve is steepest.
        const temperatureC = table.azeotropeTemperatureC + spanK * (index / 3000) ** 2;
        const y = table.ethanolMoleFractionAt(temperatureC);
        expect(y).toBeLessThanOrEqual(last);
        last = y;
        const full = dewPoint({ ethanolMoleFraction: y, pressureKPa }).temperatureC;
        worstK = Math.max(worstK, Math.abs(full - temperatureC));
      }
      expect(worstK).toBeLessThan(1e-5);
    }
  });

  test('answers with the nearer end outside the branch', () => {
    const table = headVapourTable(101.325);
    expect(table.ethanolMoleFractionAt(60)).toBeCloseTo(azeotrope(101.325).ethanolMoleFraction, 12);
    expect(table.ethanolMoleFractionAt(105)).toBe(0);
  });

  test('is the same table when the pressure comes again, and the same numbers when it is built anew', () => {
    const first = headVapourTable(97.1);
    expect(headVapourTable(97.1)).toBe(first);
    const before = first.ethanolMoleFractionAt(85);
    for (let index = 0; index < 40; index++) headVapourTable(90 + index / 10);
    const anew = headVapourTable(97.1);
    expect(anew.ethanolMoleFractionAt(85)).toBe(before);
  });

  test('refuses pressures and temperatures outside its range, NaN included', () => {
    expect(() => headVapourTable(Number.NaN)).toThrow(OutOfRangeError);
    expect(() => headVapourTable(19)).toThrow(OutOfRangeError);
    expect(() => headVapourTable(100).ethanolMoleFractionAt(Number.NaN)).toThrow(OutOfRangeError);
  });
});
