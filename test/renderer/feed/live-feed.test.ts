import { describe, expect, test } from 'vitest';
import {
  createMonitor,
  defaultRunSettings,
  type EventBody,
  type EventName,
  type RequestName,
  type RunInput,
  type Stage,
  type StageSpan,
  succeed,
} from '#shared-core';
import { startLiveFeed } from '../../../renderer/feed/index.ts';
import type { ConnectedService } from '../../../renderer/service/index.ts';
import {
  createBenchStore,
  createRunViewStore,
  mayCommand,
} from '../../../renderer/stores/index.ts';
import { plainSnapshot } from '../../support/plain-snapshot.ts';
import { nothingRecorded } from '../support/nothing-recorded.ts';

const reading = (timeS: number): RunInput => ({
  kind: 'reading',
  timeS,
  channel: 'head',
  value: 20 + timeS,
  unit: '°C',
  quality: 'good',
});

const span = (stage: Stage, fromS: number): StageSpan => ({ stage, fromS, toS: null, because: '' });

const summary = {
  runId: 'r1',
  name: 'Pear-juice ferment',
  notes: '',
  startedAtIso: '2026-01-01T09:00:00.000Z',
  durationS: 10,
  readings: 10,
  ended: 'recording',
  rehearsal: true,
  plateau: null,
  heatOffCalledS: null,
  damagedRecords: 0,
  unreadable: null,
} as const;

function bench(
  record: RunInput[],
  pageLength = 4,
  named = [span('first-fraction', 6)],
  neverAnswered: readonly RequestName[] = [],
) {
  const listeners = new Map<EventName, (body: never) => void>();
  const asked: [RequestName, unknown][] = [];
  const answers: Partial<Record<RequestName, (body: never) => unknown>> = {
    'app/describe': () => ({ mayCommand: true }),
    'run/status': () => ({
      state: 'recording',
      runId: 'r1',
      startedAtIso: summary.startedAtIso,
      savedToS: 1,
      problem: null,
    }),
    'runs/changes': () => ({
      modelVersions: [],
      changes: named.map((entered) => ({
        kind: 'stage-entered',
        timeS: entered.fromS,
        span: entered,
      })),
    }),
    'runs/read': ({ fromIndex }: { fromIndex: number }) => {
      const inputs = record.slice(fromIndex, fromIndex + pageLength);
      const next = fromIndex + inputs.length;
      return {
        summary,
        settings: defaultRunSettings,
        inputs,
        nextIndex: next < record.length ? next : null,
        endS: 10,
      };
    },
  };
  let onConnection = (_now: 'open' | 'lost') => {};
  const service: ConnectedService = {
    connection: () => 'open',
    onConnection: (listener) => {
      onConnection = listener;
      return () => {};
    },
    on: (name, listener) => {
      listeners.set(name, listener as (body: never) => void);
      return () => listeners.delete(name);
    },
    request: async (name, body) => {
      asked.push([name, body]);
      if (neverAnswered.includes(name)) return new Promise(() => {});
      const answer = answers[name];
      return answer
        ? (succeed(answer(body as never)) as never)
        : ({ ok: false, error: { kind: 'disconnected' } } as never);
    },
  };
  const live = createRunViewStore();
  const known = createBenchStore();
  const stop = startLiveFeed({
    service,
    bench: known,
    live,
    breathe: async () => {},
    beforeNextPaint: (act) => act(),
  });
  return {
    live,
    known,
    asked,
    answers,
    connection: (now: 'open' | 'lost') => onConnection(now),
    stop,
    emit: <N extends EventName>(name: N, body: EventBody<N>) =>
      listeners.get(name)?.(body as never),
    settled: () => new Promise((resolve) => setTimeout(resolve, 5)),
    times: () => {
      const view = live.getState().view;
      const series = view?.tracks.head?.series;
      return { count: view?.inputCount, drawn: series?.length };
    },
  };
}

describe('startLiveFeed', () => {
  test('a window that joins a run under way reads it from the first input, page by page', async () => {
    const { times, settled, stop } = bench(Array.from({ length: 10 }, (_, i) => reading(i)));
    await settled();
    expect(times()).toEqual({ count: 10, drawn: 10 });
    stop();
  });

  test('a window whose set-ups lie on a disk that is asleep shows the run and may command', async () => {
    const record = [reading(0), reading(1)];
    const { live, known, stop, settled } = bench(record, 4, [], ['rigs/list']);
    const whenOpened = [live.getState().view, mayCommand(known.getState())];
    await settled();
    const { view } = live.getState();
    expect(whenOpened).toEqual([null, false]);
    expect([view?.inputCount, mayCommand(known.getState())]).toEqual([2, true]);
    stop();
  });

  test('a window that joins late knows the stages that passed before it looked', async () => {
    const { live, settled, stop } = bench([reading(0), reading(1)]);
    await settled();
    expect(live.getState().view?.stages).toEqual([
      { ...span('warm-up', 0), toS: 6, because: 'The run began.' },
      span('first-fraction', 6),
    ]);
    stop();
  });

  test('a stage that passed between two snapshots is taken from the record', async () => {
    const named: StageSpan[] = [];
    const { live, emit, settled, stop } = bench([reading(0), reading(1)], 4, named);
    await settled();
    const warm = plainSnapshot(createMonitor(defaultRunSettings).advanceTo(1));
    emit('snapshot', { runId: 'r1', snapshot: warm, estimatesTold: 0 });
    named.push(span('first-fraction', 6), span('main-fraction', 8));
    const stage = { ...warm.stage, stage: 'main-fraction', sinceS: 8 } as const;
    emit('snapshot', { runId: 'r1', snapshot: { ...warm, timeS: 9, stage }, estimatesTold: 0 });
    await settled();
    expect(live.getState().view?.stages.map(({ stage, fromS }) => [stage, fromS])).toEqual([
      ['warm-up', 0],
      ['first-fraction', 6],
      ['main-fraction', 8],
    ]);
    stop();
  });

  test('strengths that were told before this window joined, and each minute since, are in its view', async () => {
    const { answers, live, emit, settled, stop } = bench([reading(0), reading(1)]);
    const told = [{ timeS: 600, headVapourAbv: { value: 90, low: 88, high: 92 } }];
    answers['runs/changes'] = () => ({ modelVersions: [], changes: [], estimates: [...told] });
    await settled();
    expect(live.getState().view?.estimates).toEqual(told);
    told.push({ timeS: 660, headVapourAbv: { value: 89, low: 87, high: 91 } });
    const snapshot = plainSnapshot(createMonitor(defaultRunSettings).advanceTo(660));
    emit('snapshot', { runId: 'r1', snapshot, estimatesTold: 2 });
    await settled();
    expect(live.getState().view?.estimates).toEqual(told);
    stop();
  });

  test('inputs missed while the socket was lost are read from the record, none twice', async () => {
    const record = Array.from({ length: 6 }, (_, i) => reading(i));
    const { emit, times, settled, asked, stop } = bench(record);
    await settled();
    record.push(reading(6), reading(7), reading(8));
    emit('inputs', { runId: 'r1', fromIndex: 8, inputs: [reading(8)] });
    await settled();
    expect([times(), asked.findLast(([name]) => name === 'runs/read')]).toEqual([
      { count: 9, drawn: 9 },
      ['runs/read', { runId: 'r1', fromIndex: 6 }],
    ]);
    stop();
  });

  test('inputs missed while the socket was lost are read when it is back, though nothing more is told', async () => {
    const record = Array.from({ length: 6 }, (_, i) => reading(i));
    const { connection, times, settled, asked, stop } = bench(record);
    await settled();
    connection('lost');
    record.push(reading(6), reading(7));
    connection('open');
    await settled();
    expect([times(), asked.findLast(([name]) => name === 'runs/read')]).toEqual([
      { count: 8, drawn: 8 },
      ['runs/read', { runId: 'r1', fromIndex: 6 }],
    ]);
    stop();
  });

  test('what could not be read is read as time passes, though the probe has nothing more to tell', async () => {
    const { answers, emit, times, settled, stop } = bench([reading(0), reading(1)]);
    const { 'runs/read': read, ...others } = answers;
    delete answers['runs/read'];
    await settled();
    expect(times()).toEqual({ count: undefined, drawn: undefined });
    Object.assign(answers, others, { 'runs/read': read });
    const snapshot = plainSnapshot(createMonitor(defaultRunSettings).advanceTo(2));
    emit('snapshot', { runId: 'r1', snapshot, estimatesTold: 0 });
    await settled();
    expect(times()).toEqual({ count: 2, drawn: 2 });
    stop();
  });

  test('a run that ended while the socket was lost is read to its end, and ends where its record does', async () => {
    const record = Array.from({ length: 6 }, (_, i) => reading(i));
    const { connection, answers, live, times, settled, stop } = bench(record);
    await settled();
    connection('lost');
    record.push(reading(6), reading(7));
    answers['run/status'] = () => nothingRecorded;
    connection('open');
    await settled();
    expect([times(), live.getState().view?.endedS]).toEqual([{ count: 8, drawn: 8 }, 10]);
    stop();
  });

  test('what is told of a run in view is taken as it comes, without asking for the record', async () => {
    const { emit, answers, asked, settled, stop } = bench([reading(0)]);
    await settled();
    const before = asked.length;
    emit('recording', answers['run/status']?.({} as never) as EventBody<'recording'>);
    await settled();
    expect(asked.length).toBe(before);
    stop();
  });

  test('inputs that were read already are not taken again', async () => {
    const { emit, times, settled, stop } = bench([reading(0), reading(1)]);
    await settled();
    emit('inputs', { runId: 'r1', fromIndex: 1, inputs: [reading(1), reading(2)] });
    expect(times()).toEqual({ count: 3, drawn: 3 });
    stop();
  });

  test('the view ends with the run, though a slow disk is still taking what was heard last', async () => {
    const { emit, live, settled, stop } = bench([reading(0), reading(1)]);
    await settled();
    const saving = {
      ...nothingRecorded,
      state: 'recording',
      runId: 'r1',
      savedToS: 1,
      endedS: 7,
    } as const;
    emit('recording', saving);
    expect(live.getState().view?.endedS).toBe(7);
    emit('recording', { ...saving, savedToS: 5 });
    await settled();
    emit('recording', nothingRecorded);
    expect(live.getState().view?.endedS).toBe(7);
    stop();
  });

  test('a window that is opened while a run that is over is still being saved shows it as over, as it stood at its end', async () => {
    const { answers, live, settled, stop } = bench(Array.from({ length: 6 }, (_, i) => reading(i)));
    const read = answers['runs/read'] as (body: { readonly fromIndex: number }) => object;
    const endSnapshot = plainSnapshot(createMonitor(defaultRunSettings).advanceTo(7));
    answers['runs/read'] = (body) => ({ ...read(body), endS: 7, endSnapshot });
    const status = answers['run/status']?.({} as never) as object;
    answers['run/status'] = () => ({ ...status, endedS: 7 });
    await settled();
    const { inputCount, endedS, snapshot } = live.getState().view ?? {};
    expect({ inputCount, endedS, snapshot }).toEqual({
      inputCount: 6,
      endedS: 7,
      snapshot: endSnapshot,
    });
    stop();
  });

  test('the view ends with the recording', async () => {
    const { emit, live, settled, stop } = bench([reading(0), reading(1)]);
    await settled();
    emit('recording', nothingRecorded);
    expect(live.getState().view?.endedS).toBe(1);
    stop();
  });
});
