import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { OutOfRangeError, pressureAtAltitudeKPa } from '#shared-core';
import { stationPressureFromSeaLevelKPa } from '../../../shared-core/atmosphere/sea-level-reduction.ts';

const altitude = fc.double({ min: -430, max: 5000, noNaN: true });
const seaLevel = fc.double({ min: 85, max: 110, noNaN: true });
const temperature = fc.option(fc.double({ min: -50, max: 50, noNaN: true }), { nil: undefined });

describe('stationPressureFromSeaLevelKPa', () => {
  test('at sea level changes nothing', () => {
    fc.assert(
      fc.property(seaLevel, temperature, (seaLevelPressureKPa, temperatureC) => {
        const report = { seaLevelPressureKPa, altitudeM: 0 };
        const converted = stationPressureFromSeaLevelKPa(
          temperatureC === undefined ? report : { ...report, temperatureC },
        );
        expect(converted).toBeCloseTo(seaLevelPressureKPa, 9);
      }),
    );
  });

  test('turns the standard sea-level pressure into the standard pressure of the altitude', () => {
    fc.assert(
      fc.property(altitude, (altitudeM) => {
        expect(
          stationPressureFromSeaLevelKPa({ seaLevelPressureKPa: 101.325, altitudeM }),
        ).toBeCloseTo(pressureAtAltitudeKPa(altitudeM), 9);
      }),
    );
  });

  test('with the standard temperature of the altitude, the column and the standard atmosphere agree', () => {
    // The column's arithmetic mean temperature against the exact layer: a few Pa at 1500 m.
    const altitudeM = 1500;
    const temperatureC = 15 - 0.0065 * altitudeM;
    expect(
      stationPressureFromSeaLevelKPa({ seaLevelPressureKPa: 101.325, altitudeM, temperatureC }),
    ).toBeCloseTo(pressureAtAltitudeKPa(altitudeM), 2);
  });

  test('warm air makes the pressure fall more slowly with altitude', () => {
    const at = (temperatureC: number) =>
      stationPressureFromSeaLevelKPa({ seaLevelPressureKPa: 101.3, altitudeM: 2000, temperatureC });
    expect(at(30)).toBeGreaterThan(at(-10));
  });

  test.each([
    { seaLevelPressureKPa: 1013, altitudeM: 0 },
    { seaLevelPressureKPa: 101, altitudeM: 5001 },
    { seaLevelPressureKPa: 101, altitudeM: 0, temperatureC: 60 },
    { seaLevelPressureKPa: Number.NaN, altitudeM: 0 },
    { seaLevelPressureKPa: 101, altitudeM: Number.NaN },
    { seaLevelPressureKPa: 101, altitudeM: 0, temperatureC: Number.NaN },
  ])('refuses $seaLevelPressureKPa kPa, $altitudeM m, $temperatureC °C', (report) => {
    expect(() => stationPressureFromSeaLevelKPa(report)).toThrow(OutOfRangeError);
  });
});
