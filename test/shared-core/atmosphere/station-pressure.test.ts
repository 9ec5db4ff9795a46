import { describe, expect, test } from 'vitest';
import {
  createRandom,
  OutOfRangeError,
  pressureAtAltitudeKPa,
  stationPressure,
} from '#shared-core';
import type { PressureEvidence } from '../../../shared-core/atmosphere/pressure-evidence.ts';
import { stationPressureFromSeaLevelKPa } from '../../../shared-core/atmosphere/sea-level-reduction.ts';

describe('stationPressure', () => {
  test('a barometer reading stands as it is, with its doubts named', () => {
    const found = stationPressure({ kind: 'barometer', stationPressureKPa: 98.6, ageH: 1 });
    // Limits ± 0.1/√3, step 0.1/√12, 0.1 kPa in 3 h for 1 h.
    const expected = Math.sqrt(0.1 ** 2 / 3 + 0.1 ** 2 / 12 + (0.1 / 3) ** 2);
    expect({ ...found, components: found.components.map(({ name }) => name) }).toEqual({
      kind: 'station',
      source: 'barometer',
      pressureKPa: 98.6,
      standardUncertaintyKPa: expect.closeTo(expected, 12),
      expandedUncertaintyKPa: expect.closeTo(2 * expected, 12),
      components: [
        'error of the barometer',
        'weather since the reading',
        'smallest step of the barometer',
      ],
      sentence:
        'Air pressure at the still: 98.6 kPa ± 0.1 kPa (k = 2), from a barometer reading; the largest doubt is the error of the barometer.',
    });
  });

  test('better evidence is never less certain: channel, barometer, weather report, altitude', () => {
    const evidence: readonly PressureEvidence[] = [
      { kind: 'channel', stationPressureKPa: 95 },
      { kind: 'barometer', stationPressureKPa: 95 },
      { kind: 'sea-level-report', seaLevelPressureKPa: 101, altitudeM: 500 },
      { kind: 'altitude', altitudeM: 500 },
    ];
    const doubts = evidence.map((known) => stationPressure(known).standardUncertaintyKPa);
    expect(doubts).toEqual([...doubts].sort((a, b) => a - b));
  });

  test('the altitude alone is good for about ± 2 kPa near sea level and says that the weather is the cause', () => {
    const found = stationPressure({ kind: 'altitude', altitudeM: 50 });
    expect(found.expandedUncertaintyKPa).toBeCloseTo(2, 1);
    expect(found.sentence).toContain('from the altitude alone; the largest doubt is the weather');
  });

  test('a known outdoor temperature makes a weather report more certain on a mountain', () => {
    const report = {
      kind: 'sea-level-report',
      seaLevelPressureKPa: 101.8,
      altitudeM: 1800,
    } as const;
    const blind = stationPressure(report).standardUncertaintyKPa;
    const informed = stationPressure({ ...report, temperatureC: 4 }).standardUncertaintyKPa;
    expect(informed).toBeLessThan(0.7 * blind);
  });

  test('the stated doubt of a weather report is what drawing its altitude and column gives', () => {
    const temperatureC = 10;
    const stated = stationPressure({
      kind: 'sea-level-report',
      seaLevelPressureKPa: 101.5,
      altitudeM: 1500,
      altitudeToleranceM: 60,
      temperatureC,
      ageH: 0,
    });
    const random = createRandom('sea-level draw');
    const draws = Array.from({ length: 20_000 }, () =>
      stationPressureFromSeaLevelKPa({
        seaLevelPressureKPa: 101.5 + 0.1 * random.normal(),
        altitudeM: 1500 + 60 * (2 * random.uniform() - 1),
        temperatureC: temperatureC + 3 * random.normal(),
      }),
    );
    const mean = draws.reduce((sum, value) => sum + value, 0) / draws.length;
    const spread = Math.sqrt(
      draws.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (draws.length - 1),
    );
    expect(stated.standardUncertaintyKPa / spread).toBeGreaterThan(0.95);
    expect(stated.standardUncertaintyKPa / spread).toBeLessThan(1.05);
  });

  describe('tells of each doubt where it comes from and what it does', () => {
    const of = (evidence: PressureEvidence) =>
      stationPressure(evidence).components.map(
        ({ name, reason, sensitivity, standardUncertainty }) => [
          name,
          reason,
          sensitivity,
          standardUncertainty,
        ],
      );
    const near = (value: number) => expect.closeTo(value, 4);
    const root3 = Math.sqrt(3);
    const report = { kind: 'sea-level-report', seaLevelPressureKPa: 101, altitudeM: 500 } as const;
    const weather = (ageH: number) => `${ageH} h at a usual change of 0.1 kPa in 3 h; from memory`;
    const column = (kelvins: number) =>
      `the air column may be ${kelvins} °C off what was assumed; round figure, no source`;
    // g/(R T) = 9.80665/(287.05287 × 288.15) per metre (ISO 2533), of the pressure there.
    const perM = 1.18559e-4;

    test('of a sensor beside the still, its limits, stated or assumed', () => {
      const channel = { kind: 'channel', stationPressureKPa: 95 } as const;
      expect([...of(channel), ...of({ ...channel, toleranceKPa: 0.05 })]).toEqual([
        [
          'error of the barometer',
          'limits ± 0.1 kPa assumed, as usual for small digital barometers; from memory',
          1,
          near(0.1 / root3),
        ],
        ['error of the barometer', 'stated limits ± 0.05 kPa', 1, near(0.05 / root3)],
      ]);
    });

    test('of a barometer, its limits, its steps and the hours since', () => {
      const barometer = { kind: 'barometer', stationPressureKPa: 95 } as const;
      const drift = near(0.1 / 3);
      expect([
        ...of({ ...barometer, toleranceKPa: 0.2, resolutionKPa: 0.5, ageH: 1 }),
        ...of(barometer),
      ]).toEqual([
        ['smallest step of the barometer', 'steps of 0.5 kPa', 1, near(0.25 / root3)],
        ['error of the barometer', 'stated limits ± 0.2 kPa', 1, near(0.2 / root3)],
        ['weather since the reading', weather(1), drift, near(0.1 / 3)],
        ['weather since the reading', weather(2), drift, near(0.2 / 3)],
        [
          'error of the barometer',
          'limits ± 0.1 kPa assumed, as usual for small digital barometers; from memory',
          1,
          near(0.1 / root3),
        ],
        ['smallest step of the barometer', 'steps of 0.1 kPa', 1, near(0.05 / root3)],
      ]);
    });

    test('of a weather report, the way to the station, the hours since, the altitude and the air between', () => {
      const pressureKPa = stationPressureFromSeaLevelKPa(report);
      const perAltitude = -pressureKPa * perM;
      const perColumn = (pressureKPa * perM * 500) / 288.15;
      expect(stationPressure(report).pressureKPa).toBe(pressureKPa);
      expect(of(report)).toEqual([
        [
          'temperature of the air below the still',
          column(10),
          near(perColumn),
          near(10 * perColumn),
        ],
        [
          'altitude of the still',
          'limits ± 20 m',
          near(perAltitude),
          near((20 / root3) * -perAltitude),
        ],
        ['weather since the reading', weather(3), near(0.1 / 3), near(0.1)],
        [
          'distance to the weather station and rounding',
          'a usual change over 100 km; no source',
          near(pressureKPa / 101),
          near((0.1 * pressureKPa) / 101),
        ],
      ]);
      const known = of({ ...report, temperatureC: 10, altitudeToleranceM: 5, ageH: 1 });
      expect(known.map(([name, reason]) => [name, reason])).toEqual([
        ['distance to the weather station and rounding', 'a usual change over 100 km; no source'],
        ['temperature of the air below the still', column(3)],
        ['weather since the reading', weather(1)],
        ['altitude of the still', 'limits ± 5 m'],
      ]);
    });

    test('of an altitude alone, the weather above all', () => {
      const pressureKPa = pressureAtAltitudeKPa(500);
      const spread = 'day-to-day spread of sea-level pressure in middle latitudes; from memory';
      expect(of({ kind: 'altitude', altitudeM: 500, altitudeToleranceM: 100 })).toEqual([
        ['weather', spread, near(pressureKPa / 101.325), near(pressureKPa / 101.325)],
        [
          'altitude of the still',
          'limits ± 100 m',
          near(-pressureKPa * perM),
          near((100 / root3) * pressureKPa * perM),
        ],
        [
          'temperature of the air below the still',
          column(10),
          near((pressureKPa * perM * 500) / 288.15),
          near((pressureKPa * perM * 5000) / 288.15),
        ],
      ]);
      expect(of({ kind: 'altitude', altitudeM: 500 })[2]?.[1]).toBe('limits ± 20 m');
    });

    test('and in one sentence the value, where it is from and the largest', () => {
      const sentences = [
        { kind: 'channel', stationPressureKPa: 95 },
        { ...report, temperatureC: 10 },
        { kind: 'altitude', altitudeM: 500 },
      ] as const;
      expect(sentences.map((evidence) => stationPressure(evidence).sentence)).toEqual([
        'Air pressure at the still: 95.0 kPa ± 0.1 kPa (k = 2), from the pressure sensor; the largest doubt is the error of the barometer.',
        'Air pressure at the still: 95.1 kPa ± 0.4 kPa (k = 2), from a weather report converted to this altitude; the largest doubt is the altitude of the still.',
        'Air pressure at the still: 95.5 kPa ± 1.9 kPa (k = 2), from the altitude alone; the largest doubt is the weather.',
      ]);
    });
  });

  test.each<PressureEvidence>([
    { kind: 'barometer', stationPressureKPa: 1013 },
    { kind: 'channel', stationPressureKPa: Number.NaN },
    { kind: 'altitude', altitudeM: 9000 },
    { kind: 'barometer', stationPressureKPa: 98, ageH: -1 },
    { kind: 'barometer', stationPressureKPa: 98, toleranceKPa: Number.NaN },
  ])('refuses nonsense: %o', (evidence) => {
    expect(() => stationPressure(evidence)).toThrow(OutOfRangeError);
  });
});
