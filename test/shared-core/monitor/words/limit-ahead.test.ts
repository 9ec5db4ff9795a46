import { describe, expect, test } from 'vitest';
import {
  aheadWords,
  byRate,
  followLimitAhead,
  forecastInStep,
  type LimitAhead,
} from '../../../../shared-core/monitor/words/limit-ahead.ts';
import type { ForecastView } from '../../../../shared-core/stages/index.ts';
import { factsOf } from './facts.ts';

const noBias = { meanK: 0, sdK: 0.3, offsetsK: [0], weights: [1] };

/** Told by the twin at 1750 s: the limit within 2400 to 3600 s. */
const forecast: ForecastView = {
  madeS: 1750,
  mainFractionEndS: { value: 3000, low: 2400, high: 3600 },
  mainFractionEndIfEasedS: { value: 3300, low: 2600, high: 4000 },
  distillateMlAtEnd: { value: 40, low: 38, high: 42 },
  potStrengthAbv: null,
  potVolumeMl: null,
  collectedMl: null,
  wouldHelp: 'Read the volume.',
  doubt: 'The still is slow.',
};

/** At 1800 s a head that rises at ten times the doubt of its rate, with so far to go by it; the reaction time is 45 s. */
function rising(
  etaS: number | null,
  changes: Parameters<typeof factsOf>[0] = {},
  parts: Parameters<typeof factsOf>[1] = {},
) {
  return factsOf(
    { forecast, bias: noBias, ...changes },
    {
      situation: { ...parts.situation },
      head: { rateKPerS: 0.01, rateSdKPerS: 0.001, vapourSdK: 0.4, ...parts.head },
      outlook: { etaS, ...parts.outlook },
    },
  );
}

const told = (before: LimitAhead | null, facts = rising(500), isLeaving = true) => {
  const ahead = followLimitAhead(before, facts, isLeaving);
  return ahead && { by: ahead.by, bySinceS: ahead.bySinceS, madeS: ahead.madeS };
};

const byForecast = { by: 'forecast', bySinceS: 1800, madeS: 1750 };
const byLine = { by: 'rate', bySinceS: 1800, madeS: 1800 };
const line = (madeS: number): LimitAhead => ({
  by: 'rate',
  bySinceS: 1700,
  madeS,
  expectedS: { value: 2000, low: 1950, high: 2050 },
});

describe('where the straight line meets the limit', () => {
  test('is doubted by level, rate and bend together, by hand calculation', () => {
    // Level √(0.3² + 0.4²)/0.01 = 50 s, rate 300 · 0.001/0.01 = 30 s, bend 0.25 · 300 = 75 s, least 30 s: 99.62 s in all.
    const sdS = Math.sqrt(50 ** 2 + 30 ** 2 + 75 ** 2 + 30 ** 2);
    expect(byRate(rising(300), 1700)).toEqual({
      by: 'rate',
      bySinceS: 1700,
      madeS: 1800,
      expectedS: {
        value: 2100,
        low: expect.closeTo(2100 - 1.645 * sdS, 6),
        high: expect.closeTo(2100 + 1.645 * sdS, 6),
      },
    });
  });

  test('is never before now, and a level that a slow head says little of counts for two minutes at most', () => {
    const slow = rising(0, {}, { head: { rateKPerS: 0.001, rateSdKPerS: 0 } });
    expect(byRate(slow, 1800).expectedS).toEqual({
      value: 1800,
      low: 1800,
      high: expect.closeTo(1800 + 1.645 * Math.hypot(120, 30), 6),
    });
  });
});

describe('who tells when the limit comes', () => {
  test('is the forecast from afar, as it was made, and nobody where there is none', () => {
    expect(followLimitAhead(null, rising(135), true)).toEqual({
      ...byForecast,
      expectedS: forecast.mainFractionEndS,
    });
    expect(told(null, rising(135, { forecast: null }))).toBeNull();
    const endless = { ...forecast, mainFractionEndS: null };
    expect(told(null, rising(135, { forecast: endless }))).toBeNull();
  });

  test('is the line within three reaction times of a rise of three standard deviations', () => {
    const rate = (sds: number) => rising(134, {}, { head: { rateKPerS: sds * 0.001 } });
    expect([told(null, rising(134)), told(null, rate(3.1)), told(null, rate(2.9))]).toEqual([
      byLine,
      byLine,
      byForecast,
    ]);
  });

  test('is the line wherever the heat-off call is due, however far or slow the rise', () => {
    const due = { outlook: { heatOffDue: true }, head: { rateKPerS: 0 } };
    expect([told(null, rising(null, {}, due)), told(null, rising(900, {}, due))]).toEqual([
      byLine,
      byLine,
    ]);
  });

  test('is no line while the head does not leave its plateau, vapour is away or no meeting is foreseen', () => {
    const away = rising(60, {}, { situation: { recededSinceS: 1795 } });
    expect([told(null, rising(60), false), told(null, away), told(null, rising(null))]).toEqual([
      byForecast,
      byForecast,
      byForecast,
    ]);
  });

  test('stays the line up to six reaction times and down to one standard deviation, drawn anew each quarter of a minute', () => {
    const before = line(1786);
    const slower = rising(269, {}, { head: { rateKPerS: 0.0011 } });
    expect(followLimitAhead(before, slower, true)).toBe(before);
    expect(told(line(1785), slower)).toEqual({ by: 'rate', bySinceS: 1700, madeS: 1800 });
  });

  test('stays the line for a minute after it was last near, but not once the head has fallen back', () => {
    const before = line(1741);
    expect(followLimitAhead(before, rising(270), true)).toBe(before);
    expect([told(line(1740), rising(270)), told(before, rising(270), false)]).toEqual([
      byForecast,
      byForecast,
    ]);
    const standing = rising(200, {}, { head: { rateKPerS: 0.0009 } });
    expect(told(line(1740), standing)).toEqual(byForecast);
  });

  test('is the same forecast until there is another, and tells since when it has spoken', () => {
    const first = followLimitAhead(null, rising(500), true);
    expect(followLimitAhead(first, rising(500, { timeS: 1810 }), true)).toBe(first);
    const next = {
      ...forecast,
      madeS: 1810,
      mainFractionEndS: { value: 3000, low: 2500, high: 3500 },
    };
    expect(followLimitAhead(first, rising(500, { timeS: 1815, forecast: next }), true)).toEqual({
      by: 'forecast',
      bySinceS: 1800,
      madeS: 1810,
      expectedS: next.mainFractionEndS,
    });
  });

  test('is no forecast that holds the limit for passed: its whole range lies before now, or within half a minute of when it was made', () => {
    const until = (high: number, madeS: number) =>
      told(
        null,
        rising(500, {
          forecast: { ...forecast, madeS, mainFractionEndS: { value: 1700, low: 1600, high } },
        }),
      );
    expect([until(1800, 1700), until(1801, 1700)?.by]).toEqual([null, 'forecast']);
    expect([until(1820, 1790), until(1821, 1790)?.by]).toEqual([null, 'forecast']);
  });

  test('is nobody before the first fraction and after the main one', () => {
    const stages = ['warm-up', 'first-fraction', 'main-fraction', 'tail', 'cool-down'] as const;
    expect(stages.map((stage) => told(null, rising(60, { stage }))?.by)).toEqual([
      undefined,
      'rate',
      'rate',
      undefined,
      undefined,
    ]);
  });
});

describe('the limit in words', () => {
  const ahead = (by: LimitAhead['by'], lowS: number, highS: number) =>
    aheadWords(
      {
        by,
        bySinceS: 0,
        madeS: 0,
        expectedS: { value: 1800 + lowS, low: 1800 + lowS, high: 1800 + highS },
      },
      1800,
    );

  test('is within whole minutes by the line, never less than one', () => {
    expect([ahead('rate', 0, 121), ahead('rate', 0, 120), ahead('rate', 0, -30)]).toEqual([
      'within 3 min',
      'within 2 min',
      'within 1 min',
    ]);
  });

  test('is a range of whole minutes by the forecast, which holds what was foreseen and has some width', () => {
    expect([
      ahead('forecast', 299, 541),
      ahead('forecast', 300, 301),
      ahead('forecast', -90, 30),
    ]).toEqual(['in about 4 to 10 min', 'in about 5 to 6 min', 'in about 1 to 2 min']);
  });
});

describe('the forecast beside the sentence', () => {
  const byRateUntil = (low: number, high: number): LimitAhead => ({
    by: 'rate',
    bySinceS: 1700,
    madeS: 1800,
    expectedS: { value: (low + high) / 2, low, high },
  });

  test('is the twin’s own while nothing else tells the limit', () => {
    const asTold = followLimitAhead(null, rising(500), true);
    expect([
      forecastInStep(forecast, null),
      forecastInStep(forecast, asTold),
      forecastInStep(null, byRateUntil(1900, 2000)),
    ]).toEqual([forecast, forecast, null]);
  });

  test('gives way to the line: its end, and no volume where the two contradict each other', () => {
    const inStep = (ahead: LimitAhead, distillateMlAtEnd: ForecastView['distillateMlAtEnd']) => ({
      ...forecast,
      mainFractionEndS: ahead.expectedS,
      mainFractionEndIfEasedS: null,
      distillateMlAtEnd,
      wouldHelp: null,
      doubt: null,
    });
    for (const [low, high, agrees] of [
      [1900, 2400, true],
      [1900, 2399, false],
      [3600, 3700, true],
      [3601, 3700, false],
    ] as const) {
      const ahead = byRateUntil(low, high);
      expect(forecastInStep(forecast, ahead)).toEqual(
        inStep(ahead, agrees ? forecast.distillateMlAtEnd : null),
      );
    }
    const endless = { ...forecast, mainFractionEndS: null };
    expect(forecastInStep(endless, byRateUntil(1900, 2000))?.distillateMlAtEnd).toBeNull();
  });
});
