import { describe, expect, test } from 'vitest';
import { createRandom, OutOfRangeError, stationPressure } from '#shared-core';
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
