import { describe, expect, test } from 'vitest';
import {
  createMonitor,
  createProbeSignal,
  createRandom,
  defaultRunSettings,
  pearFermentSetup,
  type RunInput,
  type RunSettings,
  simulateBatch,
} from '#shared-core';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { snapshotSchema } from '../../../shared-core/snapshot/snapshot.ts';
import { verdictsSchema } from '../../../shared-core/snapshot/verdicts.ts';

const setup = pearFermentSetup();
const settings: RunSettings = {
  ...defaultRunSettings,
  charge: { volumeMl: 330, strengthAbv: 10.5, standardUncertaintyAbv: 0.5 },
  pressure: { ...defaultRunSettings.pressure, pressureKPa: 99.4 },
  attentionCheckS: null,
};
const run = simulateBatch(setup, { durationS: 3600 });
const truth = run.truth;

function readings(everyS: number, seed: number): RunInput[] {
  const probe = createProbeSignal({
    random: createRandom(seed),
    whiteNoiseK: 0.04,
    slowNoiseK: 0.04,
    biasK: 0.1,
  });
  const inputs: RunInput[] = [];
  for (const sample of run.samples) {
    if (sample.timeS % everyS !== 0) continue;
    const value = probe.read(sample.timeS, sample.bulbTemperatureC);
    if (value === null) continue;
    inputs.push({
      kind: 'reading',
      timeS: sample.timeS,
      channel: 'head',
      value,
      unit: '°C',
      quality: 'good',
    });
  }
  return inputs;
}

describe('createMonitor', () => {
  test('calls the stages of a simulated run near their true times, forward only', () => {
    const verdicts = analyseRun(settings, readings(1, 1), 3600);
    expect(verdicts.stages.map(({ stage }) => stage)).toEqual([
      'warm-up',
      'first-fraction',
      'main-fraction',
      'tail',
    ]);
    const [, first, main, tail] = verdicts.stages;
    expect(Math.abs((first?.fromS ?? 0) - (truth.vapourArrivalS ?? 0))).toBeLessThan(30);
    expect((main?.fromS ?? 0) - (first?.fromS ?? 0)).toBeGreaterThanOrEqual(120);
    expect(Math.abs((tail?.fromS ?? 0) - (truth.limitReachedS ?? 0))).toBeLessThan(60);
  });

  test('calls the heat off within the reaction time before, or shortly after, the limit', () => {
    const { alarms } = analyseRun(settings, readings(1, 2), 3600);
    const call = alarms.find(({ alarm }) => alarm === 'plateau-departure');
    const early = (truth.limitReachedS ?? 0) - (call?.raisedS ?? 0);
    expect(early).toBeGreaterThan(-30);
    expect(early).toBeLessThan(90);
  });

  test('reads the same run from one reading in five seconds', () => {
    const { alarms, verdict } = analyseRun(settings, readings(5, 3), 3600);
    expect([alarms[0]?.alarm, verdict.mainFraction]).toEqual(['plateau-departure', true]);
  });

  test('gives the same bytes live and replayed, silence included', () => {
    const inputs = readings(1, 4).filter(({ timeS }) => timeS < 1500 || timeS > 1540);
    const live = createMonitor(settings);
    const liveChanges: string[] = [];
    let next = 0;
    for (let tenth = 0; tenth <= 36_000; tenth += 1) {
      for (; (inputs[next]?.timeS ?? Infinity) <= tenth / 10; next += 1) {
        live.push(inputs[next] as RunInput);
      }
      live.advanceTo(tenth / 10);
      liveChanges.push(...live.takeChanges().map((change) => JSON.stringify(change)));
    }
    const replay = createMonitor(settings);
    for (const input of inputs) replay.push(input);
    replay.advanceTo(3600);
    expect(JSON.stringify(replay.verdicts())).toBe(JSON.stringify(live.verdicts()));
    expect(replay.takeChanges().map((change) => JSON.stringify(change))).toEqual(liveChanges);
  });

  test('notices a silent probe, waits, and goes on at the stage it was at', () => {
    const inputs = readings(1, 5).filter(
      ({ timeS }) => timeS < 1500 || (timeS > 1560 && timeS < 2400),
    );
    const { alarms, stages, problems } = analyseRun(settings, inputs, 2400);
    expect(alarms.map(({ alarm, priority }) => ({ alarm, priority }))).toEqual([
      { alarm: 'probe-lost', priority: 'high' },
    ]);
    expect(alarms[0]?.raisedS).toBeLessThan(1510);
    expect(alarms[0]?.clearedS).toBeLessThan(1580);
    expect(stages[stages.length - 1]?.stage).toBe('main-fraction');
    expect(problems.length).toBe(1);
  });

  test('snapshots and verdicts keep to the contract at every minute', () => {
    const monitor = createMonitor(settings);
    for (const input of readings(1, 6)) {
      const snapshot = monitor.push(input);
      if (input.timeS % 60 === 0) snapshotSchema.parse(JSON.parse(JSON.stringify(snapshot)));
    }
    expect(verdictsSchema.safeParse(monitor.verdicts()).success).toBe(true);
  });

  test('whoever looks at a snapshot, at any time, sees the same part, which is made once', () => {
    const monitor = createMonitor(settings);
    for (const input of readings(1, 6)) monitor.push(input);
    const parts = ['stage', 'head', 'plateau', 'vapour', 'alarms', 'events'] as const;
    const snapshot = monitor.snapshot();
    const before = parts.map((part) => snapshot[part]);
    const asTold = JSON.stringify(before);
    monitor.advanceTo(3600);
    for (const [index, part] of parts.entries()) expect(snapshot[part]).toBe(before[index]);
    expect(JSON.stringify(parts.map((part) => snapshot[part]))).toBe(asTold);
  });

  test('impossible readings and times change nothing', () => {
    const monitor = createMonitor(settings);
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, -127, 4000]) {
      monitor.push({
        kind: 'reading',
        timeS: 1,
        channel: 'head',
        value,
        unit: '°C',
        quality: 'good',
      });
    }
    monitor.advanceTo(Number.NaN);
    expect(monitor.snapshot().head).toBeNull();
  });
});
