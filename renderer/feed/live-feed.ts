import type { EventBody, RecordingStatus } from '#shared-core';
import type { ConnectedService } from '../service/index.ts';
import { type BenchStore, type RunViewStore, stagesOfRecord } from '../stores/index.ts';
import { gatherUntil } from './gather-until.ts';
import { type RunReader, readWholeRun } from './read-whole-run.ts';

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
 * this window joins a run under way, the missing ones are read from the record.
 */
export function startLiveFeed(parts: LiveFeedParts): () => void {
  const { service, bench, live } = parts;
  const catchUp = createCatchUp(parts);
  const tell = gatherUntil(parts.beforeNextPaint);

  const refresh = async () => {
    const [app, ports, probe, recording] = await Promise.all([
      service.request('app/describe', {}),
      service.request('ports/list', {}),
      service.request('probe/status', {}),
      service.request('run/status', {}),
    ]);
    const { dispatch } = bench.getState();
    if (app.ok) dispatch({ type: 'app', app: app.value });
    if (ports.ok) dispatch({ type: 'ports', ports: ports.value.ports });
    if (probe.ok) dispatch({ type: 'probe', probe: probe.value });
    if (recording.ok) onRecording(recording.value);
  };

  const onRecording = (recording: RecordingStatus) => {
    bench.getState().dispatch({ type: 'recording', recording });
    const { view, dispatch } = live.getState();
    if (recording.state === 'recording' && recording.runId !== null) {
      if (view?.runId !== recording.runId || view.endedS !== null) catchUp(recording.runId);
    } else if (recording.state === 'idle' && view !== null && view.endedS === null) {
      dispatch({ type: 'ended', timeS: view.snapshot?.timeS ?? view.lastInputS });
    }
  };

  const onInputs = ({ runId, fromIndex, inputs }: EventBody<'inputs'>) => {
    const { view, dispatch } = live.getState();
    if (view?.runId !== runId || catchUp.isReading()) return catchUp(runId);
    const seen = view.inputCount - fromIndex;
    if (seen < 0) return catchUp(runId);
    if (seen < inputs.length) dispatch({ type: 'inputs', inputs: inputs.slice(seen) });
  };

  const endings = [
    service.onConnection((connection) => {
      bench.getState().dispatch({ type: 'connection', connection });
      if (connection === 'open') void refresh();
    }),
    service.on('ports', ({ ports }) => bench.getState().dispatch({ type: 'ports', ports })),
    service.on('probe', (probe) => bench.getState().dispatch({ type: 'probe', probe })),
    service.on('recording', (recording) => tell(() => onRecording(recording))),
    service.on('inputs', (body) => tell(() => onInputs(body))),
    service.on('snapshot', (snapshot) =>
      tell(() => live.getState().dispatch({ type: 'snapshot', snapshot })),
    ),
  ];
  bench.getState().dispatch({ type: 'connection', connection: service.connection() });
  if (service.connection() === 'open') void refresh();
  return () => {
    for (const end of endings) end();
  };
}

interface CatchUp {
  (runId: string): void;
  readonly isReading: () => boolean;
}

/** Reads what is missing; asked again meanwhile, it looks once more when it is through. */
function createCatchUp({ service, live, breathe }: LiveFeedParts): CatchUp {
  let reading = false;
  let wanted: string | null = null;

  const reader: RunReader = { service, breathe };
  const readOnce = async (runId: string) => {
    const { view } = live.getState();
    const known = view?.runId === runId && view.endedS === null ? view.inputCount : 0;
    await readWholeRun(reader, runId, known, (page) => {
      const { dispatch } = live.getState();
      const { settings, summary } = page;
      if (page.fromIndex === 0) {
        const { name, startedAtIso } = summary;
        dispatch({ type: 'opened', run: { origin: 'live', runId, name, startedAtIso, settings } });
      }
      dispatch({ type: 'inputs', inputs: page.inputs });
    });
    // What passed unseen is in the record; the snapshot only tells the stage of now.
    const recorded = await service.request('runs/changes', { runId });
    const { view: now, dispatch } = live.getState();
    if (recorded.ok && now?.runId === runId) {
      dispatch({ type: 'stages-known', stages: stagesOfRecord(recorded.value.changes) });
    }
  };

  const run = async () => {
    reading = true;
    while (wanted !== null) {
      const runId = wanted;
      wanted = null;
      await readOnce(runId);
    }
    reading = false;
  };

  const catchUp = (runId: string) => {
    wanted = runId;
    if (!reading) void run();
  };
  return Object.assign(catchUp, { isReading: () => reading });
}
