import type { EventBody, Result } from '#shared-core';
import type { ConnectedService } from '../service/index.ts';
import type { BenchStore, RunViewStore } from '../stores/index.ts';
import { createCatchUp } from './catch-up.ts';
import { gatherUntil } from './gather-until.ts';

export interface LiveFeedParts {
  readonly service: ConnectedService;
  readonly bench: BenchStore;
  readonly live: RunViewStore;
  /** Lets the window breathe between slices of long work. */
  readonly breathe: () => Promise<void>;
  /** Calls back in time for the next frame that is painted. */
  readonly beforeNextPaint: (act: () => void) => void;
}

/**
 * Carries what the services say into the stores, once a frame, so that a reading and what is thought of it are
 * drawn in one go and no drawing is thrown away. Inputs are counted: after a lost socket, or when
 * this window joins a run under way, the missing ones are read from the record. The recording says which run is in view;
 * whatever is told of another one is late.
 */
export function startLiveFeed(parts: LiveFeedParts): () => void {
  const { service, bench, live } = parts;
  const catchUp = createCatchUp(parts);
  const tell = gatherUntil(parts.beforeNextPaint);

  let recordingsTold = 0;
  /** Whether events may have passed since this window last knew which run is recorded. */
  let mayHaveMissed = false;

  const refresh = () => {
    const toldBefore = recordingsTold;
    const { dispatch } = bench.getState();
    // Each by itself: what waits for a disk that is asleep keeps nothing else from this window.
    onceTold(service.request('app/describe', {}), (app) => dispatch({ type: 'app', app }));
    onceTold(service.request('ports/list', {}), (listed) =>
      dispatch({ type: 'ports', ports: listed.ports }),
    );
    onceTold(service.request('probe/status', {}), (probe) => dispatch({ type: 'probe', probe }));
    onceTold(service.request('run/status', {}), (recording) => {
      // What was told meanwhile is newer than the answer.
      if (toldBefore === recordingsTold) tell(() => onRecording(recording));
    });
    onceTold(service.request('rigs/list', {}), (rigs) => dispatch({ type: 'rigs', rigs }));
  };

  const onRecording = (recording: EventBody<'recording'>) => {
    bench.getState().dispatch({ type: 'recording', recording });
    const { runId, endedS } = recording;
    const { view, dispatch } = live.getState();
    const hasMissed = mayHaveMissed;
    mayHaveMissed = false;
    if (runId !== null) {
      if (view?.runId === runId && view.endedS === null) {
        // What is told next would show the gap; but a probe that has fallen silent has nothing to tell.
        if (hasMissed) catchUp.read(runId);
        // It is over; what was heard last is still on its way to the disk.
        if (endedS !== undefined) dispatch({ type: 'ended', runId, timeS: endedS });
        return;
      }
      if (view?.runId === runId && endedS !== undefined) return;
      dispatch({ type: 'closed' });
      return catchUp.read(runId);
    }
    // A run that ended before any of it was in view is one for the library.
    if (view === null) return catchUp.leave();
    if (view.endedS !== null) return;
    const timeS = view.snapshot?.timeS ?? view.lastInputS;
    dispatch({ type: 'ended', runId: view.runId, timeS });
    if (hasMissed) catchUp.read(view.runId);
  };

  const onInputs = ({ runId, fromIndex, inputs }: EventBody<'inputs'>) => {
    if (bench.getState().recording?.runId !== runId) return;
    const { view, dispatch } = live.getState();
    if (view?.runId !== runId || catchUp.isReading()) return catchUp.read(runId);
    const seen = view.inputCount - fromIndex;
    if (seen < 0) return catchUp.read(runId);
    if (seen < inputs.length) dispatch({ type: 'inputs', runId, inputs: inputs.slice(seen) });
  };

  /** A fast rehearsal tells the next strength before the last was answered: one question at a time, and the next snapshot asks again. */
  let isAsking = false;
  const readConclusions = async (runId: string) => {
    if (isAsking) return;
    isAsking = true;
    try {
      await catchUp.readConclusions(runId);
    } finally {
      isAsking = false;
    }
  };

  const onSnapshot = ({ runId, snapshot, estimatesTold }: EventBody<'snapshot'>) => {
    const { view, dispatch } = live.getState();
    dispatch({ type: 'snapshot', runId, snapshot });
    // Time passes also while a probe has nothing to tell.
    catchUp.readWhatFailed();
    if (view?.runId !== runId) return;
    const before = view.stages.at(-1);
    // A busy computer or a fast rehearsal may pass over a whole stage between two snapshots: the record names each.
    const hasStageChanged = before !== undefined && before.stage !== snapshot.stage.stage;
    if (hasStageChanged || estimatesTold > view.estimates.length) void readConclusions(runId);
  };

  const endings = [
    service.onConnection((connection) => {
      bench.getState().dispatch({ type: 'connection', connection });
      if (connection !== 'open') return;
      mayHaveMissed = true;
      refresh();
    }),
    service.on('ports', ({ ports }) => bench.getState().dispatch({ type: 'ports', ports })),
    service.on('probe', (probe) => {
      bench.getState().dispatch({ type: 'probe', probe });
    }),
    service.on('recording', (recording) => {
      recordingsTold += 1;
      tell(() => onRecording(recording));
    }),
    service.on('inputs', (body) => tell(() => onInputs(body))),
    service.on('snapshot', (body) => tell(() => onSnapshot(body))),
  ];
  bench.getState().dispatch({ type: 'connection', connection: service.connection() });
  if (service.connection() === 'open') refresh();
  return () => {
    for (const end of endings) end();
  };
}

function onceTold<T>(asked: Promise<Result<T, unknown>>, take: (value: T) => void): void {
  void asked.then((answer) => {
    if (answer.ok) take(answer.value);
  });
}
