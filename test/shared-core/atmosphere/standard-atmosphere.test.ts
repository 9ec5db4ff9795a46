import { describe, expect, test } from 'vitest';
import { OutOfRangeError, pressureAtAltitudeKPa } from '#shared-core';
import { referenceTable } from '../../reference-table.ts';

describe('pressureAtAltitudeKPa', () => {
  test('agrees with the ISO 2533 table within 0.1 hPa from −200 to 5000 m', () => {
    // Source: ISO 2533:1975 / ICAO Doc 7488; see the header of the table.
    const worstHPa = Math.max(
      ...referenceTable('isa_pressure.csv').map(({ H_m = Number.NaN, p_Pa = Number.NaN }) =>
        Math.abs(pressureAtAltitudeKPa(H_m) * 10 - p_Pa / 100),
      ),
    );
    expect(worstHPa).toBeLessThan(0.01);
  });

  test('gives 22.632 kPa at the tropopause, 11 km', () => {
    // Source: ISO 2533:1975 table, 11 000 m: 226.32 hPa; from memory.
    expect(pressureAtAltitudeKPa(11_000)).toBeCloseTo(22.632, 3);
  });

  test.each([-501, 11_001, Number.NaN, Number.POSITIVE_INFINITY])('refuses %d m', (altitudeM) => {
    expect(() => pressureAtAltitudeKPa(altitudeM)).toThrow(OutOfRangeError);
  });
});
