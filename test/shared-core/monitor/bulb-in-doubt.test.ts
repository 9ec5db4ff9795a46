import { describe, expect, test } from 'vitest';
import { createMonitor } from '#shared-core';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { head, mark, pearSettings, simulatedReadings } from './support.ts';

/** A head that vapour reached, at 78.5 °C, and which then reads as told. */
const headThen = (endS: number, readC: (sinceS: number) => number) =>
  Array.from({ length: endS + 1 }, (_, timeS) => {
    const flicker = 0.02 * Math.sin(timeS * 1.7);
    if (timeS < 60) return head(timeS, 30 + 0.8 * timeS + flicker);
    return head(timeS, (timeS < 600 ? 78.5 : readC(timeS - 600)) + flicker);
  });

describe('a bulb that reads what vapour cannot give', () => {
  test('is told of, in plain words, while the stages go on', () => {
    const settings = {
      ...pearSettings,
      pressure: { ...pearSettings.pressure, pressureKPa: 109.9 },
    };
    const monitor = createMonitor(settings);
    for (const reading of simulatedReadings({ durationS: 1900, flaws: { biasK: -0.8 } })) {
      monitor.push(reading);
    }
    const { stage, alarms, vapour, sentence, act } = monitor.snapshot();
    expect(sentence).toContain('cannot be relied on');
    expect(act).toBe(
      'Check the air pressure entered and, by eye, the bulb; heat off and cold before you touch it.',
    );
    expect(stage).toMatchObject({ stage: 'main-fraction', condition: 'probe-suspect' });
    expect(vapour).not.toBeNull();
    expect(alarms.map(({ alarm }) => alarm)).toEqual(['bulb-doubted']);
    expect(alarms[0]?.because).toMatch(/azeotrope at 109\.9 kPa/);
    monitor.push(mark(1901, 1, { type: 'alarm-acknowledged', alarm: 'bulb-doubted' }));
    expect(monitor.advanceTo(1904).sentence).toContain('plateau is ending');
    // Whoever has answered for the bulb is called again once the probe sends nothing at all.
    const gone = monitor.advanceTo(1920);
    expect(gone.sentence).toContain('cannot be read');
    expect(gone.alarms).toMatchObject([
      { alarm: 'probe-lost', state: 'unacknowledged' },
      { alarm: 'bulb-doubted', state: 'acknowledged' },
    ]);
    expect(gone.alarms[0]?.because).toContain('sends nothing');
  });

  test('may be off by what probe and pressure explain', () => {
    const { alarms } = analyseRun(
      pearSettings,
      headThen(1800, () => 77.3),
      1800,
    );
    expect(alarms).toEqual([]);
  });

  test('does not end the run while it stays warm, and ends it when it cools', () => {
    const last = (readC: (sinceS: number) => number) =>
      analyseRun(pearSettings, headThen(2000, readC), 2000).stages.at(-1)?.stage;
    const fallen = (sinceS: number): number => 78.5 - Math.min(4, 0.2 * sinceS);
    expect(last(fallen)).toBe('main-fraction');
    expect(last((sinceS) => 20 + 58.5 * Math.exp(-sinceS / 600))).toBe('cool-down');
  });

  test('is told of in the sentence when it neither cools nor comes back', () => {
    const monitor = createMonitor(pearSettings, { forecasts: false });
    for (const input of headThen(1400, (sinceS) => 78.5 - Math.min(4, 0.2 * sinceS))) {
      monitor.push(input);
    }
    const { sentence, act, stage } = monitor.snapshot();
    expect(stage.condition).toBe('vapour-receded');
    expect(sentence).toBe('Vapour has left the thermometer: the head has sunk to 74.5 °C.');
    expect(act).toBe('See whether the pot still boils.');
  });
});

test('heat brought back in the tail is told of once, with a reminder after minutes', () => {
  const inputs = simulatedReadings({
    durationS: 5400,
    extraEvents: [3900, 4300, 4700].flatMap((timeS) => [
      { timeS, kind: 'heat-removed' as const },
      { timeS: timeS + 60, kind: 'heat-returned' as const },
    ]),
  });
  const { stages, alarms } = analyseRun(pearSettings, inputs, 5400);
  const tailS = stages.find(({ stage }) => stage === 'tail')?.fromS ?? Number.POSITIVE_INFINITY;
  const after = (alarm: string) =>
    alarms.filter((record) => record.alarm === alarm && record.raisedS > tailS);
  expect(tailS).toBeLessThan(3900);
  expect(after('plateau-departure')).toEqual([]);
  expect(after('over-limit').length).toBeLessThanOrEqual(2);
});
