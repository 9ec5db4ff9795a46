import { describe, expect, test } from 'vitest';
import { judgeBarometerEntry, OutOfRangeError, pressureAtAltitudeKPa } from '#shared-core';
import { stationPressureFromSeaLevelKPa } from '../../../shared-core/atmosphere/sea-level-reduction.ts';

describe('judgeBarometerEntry', () => {
  test('a weather-report value in the hills is told from a station value, with what it means there', () => {
    const judged = judgeBarometerEntry({ pressureKPa: 101.3, altitudeM: 700 });
    expect(judged).toEqual({
      kind: 'looks-like-sea-level',
      stationPressureKPa: expect.closeTo(93.17, 1),
      sentence:
        '101.3 kPa looks like a weather-report value reduced to sea level. About 93.2 kPa is usual at 700 m. ' +
        'Read a barometer in the room, or enter it as a sea-level value: it then means 93.2 kPa here.',
    });
  });

  test('low in the hills the two cannot be told apart, and it says so', () => {
    const judged = judgeBarometerEntry({ pressureKPa: 101.3, altitudeM: 150 });
    expect(judged.kind).toBe('may-be-sea-level');
    expect(judged.sentence).toContain(
      'possible here, but fits a value reduced to sea level better',
    );
  });

  test('every station value within two standard deviations of the weather passes at every altitude', () => {
    for (let altitudeM = 0; altitudeM <= 4500; altitudeM += 50) {
      for (const weather of [-2, -1, 0, 0.1]) {
        const pressureKPa = pressureAtAltitudeKPa(altitudeM) * (1 + weather / 101.325);
        expect(judgeBarometerEntry({ pressureKPa, altitudeM }).kind).toBe('plausible');
      }
      const high = pressureAtAltitudeKPa(altitudeM) * (1 + 2 / 101.325);
      expect(judgeBarometerEntry({ pressureKPa: high, altitudeM }).kind).toMatch(
        /^(plausible|may-be-sea-level)$/,
      );
    }
  });

  test('near sea level, where both mean the same, no pressure of an inhabited place is accused', () => {
    for (const altitudeM of [0, 10, 20]) {
      for (let pressureKPa = 96; pressureKPa <= 105; pressureKPa += 0.1) {
        expect({
          altitudeM,
          pressureKPa,
          kind: judgeBarometerEntry({ pressureKPa, altitudeM }).kind,
        }).toEqual({ altitudeM, pressureKPa, kind: 'plausible' });
      }
    }
  });

  test('every sea-level value in usual weather is caught from 500 m upwards', () => {
    for (let altitudeM = 500; altitudeM <= 4500; altitudeM += 50) {
      for (const pressureKPa of [99.5, 100.5, 101.325, 102.5, 103.3]) {
        expect(judgeBarometerEntry({ pressureKPa, altitudeM }).kind).toBe('looks-like-sea-level');
      }
    }
  });

  test('the converted value is that of the sea-level conversion', () => {
    for (const pressureKPa of [99.5, 101.3, 103.3]) {
      const judged = judgeBarometerEntry({ pressureKPa, altitudeM: 1500 });
      const exact = stationPressureFromSeaLevelKPa({
        seaLevelPressureKPa: pressureKPa,
        altitudeM: 1500,
      });
      expect('stationPressureKPa' in judged && judged.stationPressureKPa).toBe(exact);
    }
  });

  test.each([
    [1013, 0, 'hPa (mbar)', 101.3],
    [760, 0, 'mmHg', 101.325],
    [29.92, 0, 'inHg', 101.321],
    [101_325, 0, 'Pa', 101.325],
    [1.013, 0, 'bar', 101.3],
    [835, 1600, 'hPa (mbar)', 83.5],
    [626, 1600, 'mmHg', 83.46],
  ])('%d at %d m is recognised as %s', (pressureKPa, altitudeM, unit, stationPressureKPa) => {
    expect(judgeBarometerEntry({ pressureKPa, altitudeM })).toMatchObject({
      kind: 'other-unit',
      unit,
      stationPressureKPa: expect.closeTo(stationPressureKPa, 2),
    });
  });

  test.each([0, -5, 50, 500])('%d kPa at sea level is implausible', (pressureKPa) => {
    expect(judgeBarometerEntry({ pressureKPa, altitudeM: 0 }).kind).toBe('implausible');
  });

  test('of two units the one is meant that comes nearest to what is usual there, or at sea level', () => {
    // 75.6 kPa is usual at 2400 m: 756 hPa or, as reduced to sea level, 760 mmHg.
    expect(
      [756.3, 760].map((pressureKPa) => judgeBarometerEntry({ pressureKPa, altitudeM: 2400 })),
    ).toMatchObject([{ unit: 'hPa (mbar)' }, { unit: 'mmHg' }]);
  });

  test('says in whole sentences what the entry is, and what to do next', () => {
    const entries = [
      [98.6, 200],
      [101.3, 150],
      [1013, 0],
      [50, 0],
    ] as const;
    expect(
      entries.map(
        ([pressureKPa, altitudeM]) => judgeBarometerEntry({ pressureKPa, altitudeM }).sentence,
      ),
    ).toEqual([
      '98.6 kPa is plausible. About 98.9 kPa is usual at 200 m.',
      '101.3 kPa is possible here, but fits a value reduced to sea level better. About 99.5 kPa is usual at 150 m. If it comes from a weather report, enter it as a sea-level value: it then means 99.5 kPa here.',
      '1013 is not a pressure in kPa, but it would be one in hPa (mbar): 101.3 kPa. About 101.3 kPa is usual at 0 m.',
      '50 kPa cannot be the air pressure here. About 101.3 kPa is usual at 0 m. Check the altitude and the barometer.',
    ]);
  });

  test('refuses numbers that are none and places it does not know', () => {
    expect(() => judgeBarometerEntry({ pressureKPa: Number.NaN, altitudeM: 0 })).toThrow(
      'pressure is NaN kPa;',
    );
    expect(() => judgeBarometerEntry({ pressureKPa: 100, altitudeM: 6000 })).toThrow(
      OutOfRangeError,
    );
  });
});
