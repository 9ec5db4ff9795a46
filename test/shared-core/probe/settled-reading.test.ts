import { describe, expect, test } from 'vitest';
import { createRandom, settledReading } from '#shared-core';

const bath = (count: number, temperatureAt: (timeS: number) => number) =>
  Array.from({ length: count }, (_, timeS) => ({ timeS, temperatureC: temperatureAt(timeS) }));

describe('settledReading', () => {
  test('is the mean, with scatter, drift and step in its doubt', () => {
    const slope = 0.0005;
    const settled = settledReading(
      bath(60, (timeS) => 0.2 + slope * timeS),
      0.1,
    );
    expect(settled).toEqual({
      ok: true,
      value: {
        readingC: expect.closeTo(0.2 + slope * 29.5, 9),
        standardUncertaintyK: expect.closeTo(Math.hypot(slope * 59, 0.1) / Math.sqrt(12), 9),
        driftKPerMin: expect.closeTo(0.03, 9),
      },
    });
  });

  test('its doubt is the spread of the means of noisy baths', () => {
    const random = createRandom('baths');
    const settled = Array.from({ length: 2000 }, () =>
      settledReading(
        bath(40, () => 99.2 + 0.05 * random.normal()),
        0,
      ),
    ).flatMap((found) => (found.ok ? [found.value] : []));
    const rms = (values: readonly number[]) =>
      Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / values.length);
    const spread = rms(settled.map(({ readingC }) => readingC - 99.2));
    const stated = rms(settled.map(({ standardUncertaintyK }) => standardUncertaintyK));
    // Noise also looks like a little drift, so the statement is on the safe side by up to √2.
    expect(settled).toHaveLength(2000);
    expect(stated / spread).toBeGreaterThan(0.95);
    expect(stated / spread).toBeLessThan(1.5);
  });

  test.each<[string, ReturnType<typeof bath>, object]>([
    ['nothing', [], { kind: 'too-short', count: 0, spanS: 0, leastSpanS: 30 }],
    ['ten seconds', bath(11, () => 0), { kind: 'too-short', count: 11, spanS: 10, leastSpanS: 30 }],
    [
      'a bath still warming',
      bath(60, (timeS) => 0.01 * timeS),
      { kind: 'still-drifting', driftKPerMin: expect.closeTo(0.6, 9), limitKPerMin: 0.1 },
    ],
    [
      'a probe on its way from the room into the ice, as drifting and not as shaken',
      bath(40, (timeS) => 21 * Math.exp(-Math.max(0, timeS - 30) / 5)),
      { kind: 'still-drifting', driftKPerMin: expect.any(Number), limitKPerMin: 0.1 },
    ],
    [
      'a loose contact',
      bath(60, (timeS) => (timeS % 2 === 0 ? 0 : 2)),
      { kind: 'too-noisy', noiseK: expect.closeTo(1, 1), limitK: 0.3 },
    ],
    ['a gap in the numbers', bath(60, () => Number.NaN), { kind: 'not-a-number' }],
  ])('refuses %s', (_, readings, error) => {
    expect(settledReading(readings, 0.01)).toEqual({ ok: false, error });
  });
});

describe('the least that counts as settled', () => {
  /** So many readings within so long, rising and shaken to and fro, an hour after the program began. */
  const bathOf = (count: number, spanS: number, { kPerMin = 0, shakenK = 0 } = {}) =>
    Array.from({ length: count }, (_, index) => {
      const timeS = (spanS * index) / (count - 1);
      const shake = index % 2 === 0 ? shakenK : -shakenK;
      return { timeS: 3600 + timeS, temperatureC: 20 + (kPerMin * timeS) / 60 + shake };
    });

  test('is ten readings over half a minute', () => {
    expect(settledReading(bathOf(10, 30), 0.1).ok).toBe(true);
    expect([settledReading(bathOf(9, 40), 0.1), settledReading(bathOf(30, 29), 0.1)]).toEqual([
      { ok: false, error: { kind: 'too-short', count: 9, spanS: 40, leastSpanS: 30 } },
      { ok: false, error: { kind: 'too-short', count: 30, spanS: 29, leastSpanS: 30 } },
    ]);
  });

  test('is a drift that does not stand out of its noise', () => {
    const kind = (kPerMin: number, shakenK: number) => {
      const found = settledReading(bathOf(31, 60, { kPerMin, shakenK }), 0.1);
      return found.ok ? 'settled' : found.error.kind;
    };
    expect([kind(1, 0.01), kind(0.2, 0.25), kind(0.09, 0.01), kind(0, 0.35)]).toEqual([
      'still-drifting',
      'settled',
      'settled',
      'too-noisy',
    ]);
  });

  test('is not told of a step that is no number or below nothing', () => {
    for (const resolutionK of [-0.1, Number.NaN])
      expect(settledReading(bathOf(10, 30), resolutionK)).toEqual({
        ok: false,
        error: { kind: 'not-a-number' },
      });
    expect(settledReading(bathOf(10, 30), 0).ok).toBe(true);
  });
});
