import { describe, expect, test } from 'vitest';
import { createStagingLog } from '../../../../shared-core/monitor/conclude/staging-log.ts';
import type { MonitorFacts } from '../../../../shared-core/monitor/monitor-facts.ts';
import type { ForecastView } from '../../../../shared-core/stages/index.ts';
import { factsOf, headAt } from '../words/facts.ts';

/** The log after these seconds, one after the other. */
function logged(...seconds: readonly MonitorFacts[]) {
  const staging = createStagingLog();
  for (const [index, now] of seconds.entries()) {
    const before = seconds[index - 1];
    if (before !== undefined) staging.second(before, now, [], null, null);
  }
  return staging.log.parts();
}

const events = (...seconds: readonly MonitorFacts[]) =>
  logged(...seconds).events.map(({ event, timeS }) => `${timeS} ${event}`);

describe('what the log holds', () => {
  test('begins with the warm-up, and each stage ends the one before', () => {
    const first = factsOf({ timeS: 901, stage: 'first-fraction', stageSinceS: 901 });
    const main = factsOf({ timeS: 1201, stage: 'main-fraction', stageSinceS: 1200 });
    const { stages } = logged(factsOf({ timeS: 900, stage: 'warm-up' }), first, first, main);
    expect(stages.map(({ stage, fromS, toS }) => [stage, fromS, toS])).toEqual([
      ['warm-up', 0, 901],
      ['first-fraction', 901, 1200],
      ['main-fraction', 1200, null],
    ]);
    expect(stages.map(({ because }) => because.slice(0, 30))).toEqual([
      'The run begins with the warm-u',
      'Vapour bathes the bulb at 78.2',
      'The head is at 78.2 °C, 4.6 K ',
    ]);
  });

  test('tells when the first fraction has ended, but not of a still that cooled down in it', () => {
    const first = factsOf({ timeS: 1199, stage: 'first-fraction' });
    expect([
      events(first, factsOf({ timeS: 1200, stage: 'main-fraction' })),
      events(first, factsOf({ timeS: 1200, stage: 'tail' })),
      events(first, factsOf({ timeS: 1200, stage: 'cool-down' })),
      events(factsOf({ stage: 'main-fraction' }), factsOf({ timeS: 1200, stage: 'tail' })),
    ]).toEqual([['1200 first-fraction-ended'], ['1200 first-fraction-ended'], [], []]);
  });

  test('tells when vapour arrives, goes and comes back, each once', () => {
    const at = (timeS: number, arrivedS: number | null, recededSinceS: number | null) =>
      factsOf({ timeS }, { situation: { arrivedS, recededSinceS } });
    expect(
      events(
        at(1, null, null),
        at(2, 2, null),
        at(3, 2, null),
        at(4, 2, 4),
        at(5, 2, 4),
        at(6, 2, null),
        at(7, 2, null),
      ),
    ).toEqual(['2 vapour-arrived', '4 vapour-receded', '6 vapour-returned']);
  });

  test('tells of a departure from the plateau in first and main fraction only', () => {
    const departing = (stage: MonitorFacts['stage']) => {
      const at = (timeS: number, departedS: number | null) =>
        factsOf({ timeS, stage }, { head: headAt(79), situation: { departedS } });
      return events(at(1, null), at(2, 2), at(3, 2));
    };
    const stages = ['warm-up', 'first-fraction', 'main-fraction', 'tail', 'cool-down'] as const;
    expect(stages.map(departing)).toEqual([[], ['2 plateau-ending'], ['2 plateau-ending'], [], []]);
  });

  test('holds a fault of the probe from its first second to its last, and whether staging waited for it', () => {
    const { problems } = logged(
      factsOf({ timeS: 1 }),
      factsOf({ timeS: 2, fault: 'silent' }),
      factsOf({ timeS: 3, fault: 'silent' }),
      factsOf({ timeS: 4, fault: 'hotter-than-pot' }),
      factsOf({ timeS: 5 }),
      factsOf({ timeS: 6 }),
    );
    expect(problems).toEqual([
      { problem: 'The probe sends nothing; staging waited.', fromS: 2, toS: 4 },
      { problem: 'The head reads hotter than the pot that feeds it.', fromS: 4, toS: 5 },
    ]);
  });

  test('holds each new forecast that tells an end, by the minute it was made from', () => {
    const forecast = (madeS: number, isTold: boolean): ForecastView => ({
      madeS,
      mainFractionEndS: isTold ? { value: 3000, low: 2500, high: 3500 } : null,
      mainFractionEndIfEasedS: null,
      distillateMlAtEnd: null,
      potStrengthAbv: null,
      potVolumeMl: null,
      collectedMl: null,
      wouldHelp: null,
      doubt: null,
    });
    const [untold, told] = [forecast(60, false), forecast(120, true)];
    expect(
      logged(
        factsOf({ timeS: 59 }),
        factsOf({ timeS: 61, forecast: untold }),
        factsOf({ timeS: 121, forecast: told }),
        factsOf({ timeS: 122, forecast: told }),
      ).forecasts,
    ).toEqual([{ madeS: 120, mainFractionEndS: told.mainFractionEndS }]);
  });

  test('holds the strength of the vapour once a minute, or that none can be told', () => {
    const second = (timeS: number, parts: Parameters<typeof factsOf>[1] = {}) =>
      factsOf({ timeS }, parts);
    const { estimates } = logged(
      second(59),
      second(60, { situation: { bathedS: null } }),
      second(61),
      second(120),
      second(180, { head: { wet: 0.2 } }),
      { ...second(240), stage: 'cool-down' },
    );
    expect(estimates).toEqual([
      {
        timeS: 120,
        headVapourAbv: {
          value: expect.any(Number),
          low: expect.any(Number),
          high: expect.any(Number),
        },
      },
      { timeS: 180, headVapourAbv: null },
    ]);
  });
});
