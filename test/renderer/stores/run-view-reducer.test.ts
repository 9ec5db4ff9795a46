import { describe, expect, test } from 'vitest';
import { createMonitor, defaultRunSettings, pointAt, type RunInput } from '#shared-core';
import { benchMarks, type RunView, runViewAfter } from '../../../renderer/stores/index.ts';
import { runOpened } from '../support/opened-run.ts';

const { run } = runOpened;
const opened = runViewAfter(null, runOpened);
const head = (
  timeS: number,
  value: number,
  quality: 'good' | 'suspect' | 'bad' = 'good',
): RunInput => ({
  kind: 'reading',
  timeS,
  channel: 'head',
  value,
  unit: '°C',
  quality,
});
const mark = (markId: number, timeS: number, body: object): RunInput =>
  ({ kind: 'mark', timeS, markId, mark: body }) as RunInput;
const link = (timeS: number, state: 'lost' | 'back'): RunInput => ({
  kind: 'link',
  timeS,
  state,
  reason: 'unplugged',
});
const withInputs = (view: RunView | null, ...inputs: RunInput[]) =>
  runViewAfter(view, { type: 'inputs', runId: 'r1', inputs });

describe('runViewAfter', () => {
  test('counts every input but draws no bad reading', () => {
    const view = withInputs(opened, head(0, 20), head(1, 85, 'bad'), head(2, 21));
    expect(view && [view.inputCount, view.lastInputS, view.tracks.head?.series.length]).toEqual([
      3, 2, 2,
    ]);
  });

  test('opens a record whose moments run back, and draws no line back', () => {
    const view = withInputs(opened, head(0, 20), head(2, 21), head(1, 22), head(3, 23));
    const more = withInputs(view, head(2.5, 24), head(4, 25), head(4, 25, 'suspect'));
    const still = withInputs(more, head(3, 26, 'suspect'));
    expect(
      still && [still.inputCount, still.tracks.head?.series.length, still.doubtful.length],
    ).toEqual([8, 4, 1]);
  });

  test('keeps a doubtful reading of the head apart from those that are drawn as a line', () => {
    const view = withInputs(opened, head(0, 20), head(1, 85, 'suspect'), head(2, 21));
    expect(view && [view.tracks.head?.series.length, pointAt(view.doubtful, -1)]).toEqual([
      2,
      { timeS: 1, value: 85 },
    ]);
  });

  test('corrects the head by its calibration, as the monitor does, and no other channel', () => {
    const probe = { ...defaultRunSettings.probe, offsetK: 0.5, gain: 1.01 };
    const calibrated = runViewAfter(null, {
      type: 'opened',
      run: { ...run, settings: { ...defaultRunSettings, probe } },
    });
    const pot: RunInput = { ...head(0, 90), channel: 'pot' } as RunInput;
    const view = withInputs(calibrated, head(0, 80), pot, head(1, 85, 'suspect'));
    const shown = createMonitor({ ...defaultRunSettings, probe }).push(head(0, 80));
    expect(view?.tracks.head && pointAt(view.tracks.head.series, -1)?.value).toBeCloseTo(81.3, 9);
    expect(shown.head?.temperatureC).toBeCloseTo(81.3, 9);
    expect(view?.tracks.pot && pointAt(view.tracks.pot.series, -1)?.value).toBe(90);
    expect(view && pointAt(view.doubtful, -1)?.value).toBeCloseTo(86.35, 9);
  });

  test('keeps channels it has never heard of', () => {
    const odd: RunInput = { ...head(0, 5), channel: 'jacket' } as RunInput;
    expect(Object.keys(withInputs(opened, odd)?.tracks ?? {})).toEqual(['jacket']);
  });

  test('a lost probe opens one gap, which its return closes', () => {
    const view = withInputs(opened, link(5, 'lost'), link(6, 'lost'), link(9, 'back'));
    expect(view?.gaps).toEqual([{ fromS: 5, toS: 9, reason: 'unplugged' }]);
  });

  test.each(['program-closed', 'reader-stopped'] as const)(
    'a probe that was lost before whoever listened to it was (%s) has two gaps, one after the other',
    (reason) => {
      const closed: RunInput = { kind: 'link', timeS: 6, state: 'lost', reason };
      const view = withInputs(opened, link(5, 'lost'), closed, link(9, 'back'));
      expect(view?.gaps).toEqual([
        { fromS: 5, toS: 6, reason: 'unplugged' },
        { fromS: 6, toS: 9, reason },
      ]);
    },
  );

  test('an earlier view is not changed by what comes later: replay can go back to it', () => {
    const early = withInputs(opened, head(0, 20));
    withInputs(early, head(1, 30));
    expect(early && [early.inputCount, pointAt(early.tracks.head!.series, -1)]).toEqual([
      1,
      { timeS: 0, value: 20 },
    ]);
  });

  test('stages follow the snapshots: the last one is closed when the next begins', () => {
    const monitor = createMonitor(defaultRunSettings);
    const first = monitor.push(head(0, 20));
    const later = { ...first, timeS: 900, stage: { ...first.stage, stage: 'tail', sinceS: 880 } };
    const view = runViewAfter(
      runViewAfter(opened, { type: 'snapshot', runId: 'r1', snapshot: first }),
      {
        type: 'snapshot',
        runId: 'r1',
        snapshot: later as typeof first,
      },
    );
    expect(view?.stages.map(({ stage, fromS, toS }) => [stage, fromS, toS])).toEqual([
      ['warm-up', 0, 880],
      ['tail', 880, null],
    ]);
  });

  test('what is told of another run changes nothing', () => {
    const view = withInputs(opened, head(0, 20), mark(1, 1, { type: 'heat-on' }));
    const snapshot = createMonitor(defaultRunSettings).push(head(0, 99));
    const runId = 'r0';
    const told = [
      { type: 'inputs', runId, inputs: [head(5, 99)] },
      { type: 'snapshot', runId, snapshot },
      { type: 'stages-known', runId, stages: [] },
      { type: 'ended', runId, timeS: 9 },
    ] as const;
    expect(told.map((event) => runViewAfter(view, event) === view)).toEqual(told.map(() => true));
  });

  test('nothing changes a view that is not open', () => {
    expect(withInputs(null, head(0, 20))).toBeNull();
  });
});

describe('benchMarks', () => {
  test('leaves out withdrawn marks, their withdrawals and the answers to prompts', () => {
    const view = withInputs(
      opened,
      mark(1, 1, { type: 'heat-on' }),
      mark(2, 2, { type: 'heat-off' }),
      mark(3, 3, { type: 'mark-withdrawn', withdrawnMarkId: 2 }),
      mark(4, 4, { type: 'alarm-acknowledged', alarm: 'surging' }),
    );
    expect(benchMarks(view?.marks ?? []).map(({ markId }) => markId)).toEqual([1]);
  });
});
