import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  createMonitor,
  defaultRunSettings,
  type EventBody,
  type EventName,
  type RequestName,
  type RunInput,
  type Snapshot,
  succeed,
} from '#shared-core';
import { startLiveFeed } from '../../../renderer/feed/index.ts';
import type { ConnectedService } from '../../../renderer/service/index.ts';
import { createBenchStore, createRunViewStore } from '../../../renderer/stores/index.ts';
import { plainSnapshot } from '../../support/plain-snapshot.ts';

/** Each run reads in a band of its own, so that a reading, a mark or a snapshot tells whose it is. */
const bandK = 1000;
const bandOf = (runId: string) => bandK * Number(runId.slice(1));

const inputOf = (runId: string, index: number): RunInput =>
  index % 3 === 2
    ? { kind: 'mark', timeS: index, markId: bandOf(runId) + index, mark: { type: 'heat-on' } }
    : {
        kind: 'reading',
        timeS: index,
        channel: 'head',
        value: bandOf(runId) + index,
        unit: '°C',
        quality: 'good',
      };

const base = plainSnapshot(createMonitor(defaultRunSettings).advanceTo(1));
const snapshotOf = (runId: string, timeS: number): Snapshot => ({
  ...base,
  timeS,
  sentence: runId,
  head: { temperatureC: bandOf(runId), expandedUncertaintyK: 0.5, rateKPerMin: 0, ageS: 0 },
});

type Told = { [N in 'recording' | 'inputs' | 'snapshot']: [N, EventBody<N>] }[
  | 'recording'
  | 'inputs'
  | 'snapshot'];

const recordingOf = (runId: string | null): Told => [
  'recording',
  {
    state: runId === null ? 'idle' : 'recording',
    runId,
    startedAtIso: runId && '2026-01-01T09:00:00.000Z',
    savedToS: null,
    problem: null,
  },
];

/** What the services tell of some runs, one after the other, and what their record holds meanwhile. */
function bench(lengths: readonly number[], s: fc.Scheduler) {
  const record = new Map<string, RunInput[]>();
  let recorded: Told = recordingOf(null);
  const listeners = new Map<EventName, (body: never) => void>();
  const tell = ([name, body]: Told) => listeners.get(name)?.(body as never);
  const tellLate = (runId: string) => {
    tell(['inputs', { runId, fromIndex: 0, inputs: [inputOf(runId, 0)] }]);
    tell(['snapshot', { runId, snapshot: snapshotOf(runId, 0), estimatesTold: 0 }]);
  };
  const steps: (() => void)[] = [];
  for (const [number, length] of lengths.entries()) {
    const runId = `r${number + 1}`;
    steps.push(() => {
      record.set(runId, []);
      recorded = recordingOf(runId);
      tell(recorded);
    });
    for (let index = 0; index < length; index += 1) {
      steps.push(() => {
        record.get(runId)?.push(inputOf(runId, index));
        tell(['inputs', { runId, fromIndex: index, inputs: [inputOf(runId, index)] }]);
        tell(['snapshot', { runId, snapshot: snapshotOf(runId, index), estimatesTold: 0 }]);
      });
    }
    if (number > 0) steps.push(() => tellLate(`r${number}`));
    steps.push(() => {
      recorded = recordingOf(null);
      tell(recorded);
    });
  }
  // The last run goes on.
  steps.pop();

  const answers: Partial<Record<RequestName, (body: never) => unknown>> = {
    'run/status': () => recorded[1],
    'runs/changes': () => ({ changes: [], modelVersions: [] }),
    'runs/read': ({ runId, fromIndex }: { runId: string; fromIndex: number }) => {
      const known = record.get(runId) ?? [];
      const inputs = known.slice(fromIndex, fromIndex + 2);
      const next = fromIndex + inputs.length;
      return {
        summary: { runId, name: runId, startedAtIso: null },
        settings: defaultRunSettings,
        inputs,
        nextIndex: next < known.length ? next : null,
        endS: 0,
      };
    },
  };
  const service: ConnectedService = {
    connection: () => 'open',
    onConnection: () => () => {},
    on: (name, listener) => {
      listeners.set(name, listener as (body: never) => void);
      return () => listeners.delete(name);
    },
    // Made when asked, told when its turn comes: that is how an answer gets to be late.
    request: async (name, body) => {
      const answer = answers[name];
      const made = answer
        ? succeed(answer(body as never))
        : { ok: false, error: { kind: 'disconnected' } };
      return s.schedule(Promise.resolve(made)) as never;
    },
  };
  return { service, steps, record };
}

test('whatever comes late, the view holds one run: nothing of another, and in the end all of its own', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.nat({ max: 7 }), { minLength: 1, maxLength: 4 }),
      fc.scheduler(),
      async (lengths, s) => {
        const { service, steps, record } = bench(lengths, s);
        const live = createRunViewStore();
        const strangers: string[] = [];
        live.subscribe(({ view }) => {
          if (view === null) return;
          const { runId, tracks, marks, snapshot } = view;
          const low = bandOf(runId);
          const values = [
            ...(tracks.head?.series.storage.values.slice(0, tracks.head.series.length) ?? []),
            ...marks.map(({ markId }) => markId),
          ];
          const isOwn = values.every((value) => value >= low && value < low + bandK);
          if (!isOwn || (snapshot && snapshot.sentence !== runId)) strangers.push(runId);
        });
        const stop = startLiveFeed({
          service,
          bench: createBenchStore(),
          live,
          breathe: () => s.schedule(Promise.resolve()),
          beforeNextPaint: (act) => void s.schedule(Promise.resolve()).then(act),
        });
        s.scheduleSequence(steps.map((step) => async () => step()));
        await s.waitIdle();
        stop();
        const last = `r${lengths.length}`;
        const { view } = live.getState();
        expect([strangers, view?.runId, view?.endedS, view?.inputCount]).toEqual([
          [],
          last,
          null,
          record.get(last)?.length,
        ]);
      },
    ),
    { numRuns: 300 },
  );
});
