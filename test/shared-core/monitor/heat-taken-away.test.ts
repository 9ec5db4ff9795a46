import { describe, expect, test } from 'vitest';
import type { RunInput } from '#shared-core';
import { drawRun } from '../../../scripts/ensemble/draw-run.ts';
import { simulateRun } from '../../../scripts/ensemble/simulate-run.ts';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { head, mark, pearSettings, simulatedReadings } from './support.ts';

const awayFromS = 1300;
const backAtS = 1410;

/** The demonstration run with the heat taken away for nearly two minutes, left boiling past the limit. */
const interrupted = simulatedReadings({
  durationS: 3400,
  extraEvents: [
    { timeS: awayFromS, kind: 'heat-removed' },
    { timeS: backAtS, kind: 'heat-returned' },
  ],
});

const withMarks = (...marks: readonly RunInput[]): RunInput[] =>
  [...interrupted, ...marks].sort((a, b) => a.timeS - b.timeS);

describe('heat taken away and brought back', () => {
  test('does not end a run, even when it was marked off and on again', () => {
    const marked = withMarks(
      mark(awayFromS, 1, { type: 'heat-off' }),
      mark(backAtS + 4, 2, { type: 'heat-on' }),
    );
    const { stages, alarms } = analyseRun(pearSettings, marked, 3400);
    expect(stages.map(({ stage }) => stage)).toEqual([
      'warm-up',
      'first-fraction',
      'main-fraction',
      'tail',
    ]);
    expect(alarms.map(({ alarm }) => alarm)).toContain('plateau-departure');
  });

  test('is taken for the end once vapour stays away after the heat-off mark', () => {
    const ended = simulatedReadings({
      durationS: 2400,
      extraEvents: [{ timeS: awayFromS, kind: 'heat-off' }],
    });
    const marked = [...ended, mark(awayFromS, 1, { type: 'heat-off' })].sort(
      (a, b) => a.timeS - b.timeS,
    );
    expect(analyseRun(pearSettings, marked, 2400).stages.at(-1)?.stage).toBe('cool-down');
  });

  test('is no fault of the probe when vapour heats a quick bulb again', () => {
    const quick = Array.from({ length: 900 }, (_, timeS) => {
      const plateau = 78.5 + 0.02 * Math.sin(timeS * 1.7);
      if (timeS < 600 || timeS > 700) return head(timeS, timeS < 30 ? 40 + timeS : plateau);
      if (timeS < 690) return head(timeS, plateau - Math.min(18, 0.3 * (timeS - 600)));
      return head(timeS, plateau + 4 * Math.exp(-(timeS - 690) / 30));
    });
    const { alarms } = analyseRun(pearSettings, quick, 899);
    expect(alarms.map(({ alarm }) => alarm)).not.toContainEqual(
      expect.stringMatching(/^probe-|^bulb-/),
    );
  });
});

test('heat taken away before the head came to rest is no step of the probe when vapour comes back', () => {
  // A drawn run in which the correction for lag swung through a calm moment just as vapour was back.
  const run = simulateRun(drawRun('1/324'));
  const { alarms, stages } = analyseRun(run.drawn.settings, run.inputs, run.endS);
  expect(alarms.filter(({ because }) => because.includes('probe slips'))).toEqual([]);
  expect(stages.map(({ stage }) => stage)).toContain('main-fraction');
});

describe('a head that is lower than expected', () => {
  test('is still in vapour when the air pressure entered is far too high: the tail is called all the same', () => {
    const settings = {
      ...pearSettings,
      pressure: { ...pearSettings.pressure, pressureKPa: 109.9 },
    };
    const { stages, alarms } = analyseRun(
      settings,
      simulatedReadings({ durationS: 4200, flaws: { biasK: -0.8 } }),
      4200,
    );
    expect(stages.map(({ stage }) => stage)).not.toContain('cool-down');
    expect(alarms.map(({ alarm }) => alarm)).toContain('plateau-departure');
  });

  test('has not lost its vapour when it only gets stronger, as a column does that fills', () => {
    const readings = Array.from({ length: 1200 }, (_, timeS) => {
      const sunkK = Math.min(3, Math.max(0, 0.01 * (timeS - 500)));
      const wet = 82.5 - sunkK + 0.02 * Math.sin(timeS * 1.7);
      return head(timeS, timeS < 60 ? 30 + 0.85 * timeS : wet);
    });
    const { events } = analyseRun(pearSettings, readings, 1199);
    expect(events.map(({ event }) => event)).toContain('vapour-arrived');
    expect(events.map(({ event }) => event)).not.toContain('vapour-receded');
  });
});

test('who marks the heat on again in the tail is not called anew, and told of weak vapour only once it lasts', () => {
  const removals = [2900, 3300, 3700];
  const readings = simulatedReadings({
    durationS: 4200,
    extraEvents: removals.flatMap((timeS) => [
      { timeS, kind: 'heat-removed' as const },
      { timeS: timeS + 60, kind: 'heat-returned' as const },
    ]),
  });
  const marks = removals.flatMap((timeS, index) => [
    mark(timeS, 2 * index + 1, { type: 'heat-off' }),
    mark(timeS + 60, 2 * index + 2, { type: 'heat-on' }),
  ]);
  const inputs = [...readings, ...marks].toSorted((a, b) => a.timeS - b.timeS);
  const { alarms } = analyseRun(pearSettings, inputs, 4200);
  const times = (name: string) =>
    alarms.filter(({ alarm }) => alarm === name).map(({ raisedS }) => raisedS);
  expect(times('plateau-departure')).toHaveLength(1);
  const weak = times('over-limit');
  expect(weak.length).toBeGreaterThanOrEqual(2);
  const sinceHeatOn = weak.map((raisedS) =>
    Math.min(...removals.map((timeS) => raisedS - timeS - 60).filter((sinceS) => sinceS > 0)),
  );
  for (const [index, sinceS] of sinceHeatOn.entries()) {
    expect(sinceS).toBeGreaterThan(15);
    expect(sinceHeatOn.indexOf(sinceS)).toBe(index);
  }
});
