import {
  fail,
  type ProbeSource,
  type RequestAnswer,
  type Result,
  type ServiceProblem,
  succeed,
} from '#shared-core';
import type { FileLayer } from '../file-layer/index.ts';
import { type ProbeHub, sourceAsNow } from '../probe/index.ts';
import { type RunLibrary, type RunSoFar, readRunSoFar } from '../run-library/index.ts';
import type { ClockReading } from './clock-watch.ts';
import type { Continuation } from './live-run.ts';
import { timeClosed } from './time-closed.ts';

export type UnfinishedRun = NonNullable<RequestAnswer<'run/unfinished'>['run']>;

/** Chosen here: after an hour the still is another one, and a new run tells more of it [s]. */
const longestClosedS = 3600;

export interface UnfinishedSetup {
  readonly files: FileLayer;
  readonly library: RunLibrary;
  readonly probeHub: ProbeHub;
  readonly mayWrite: () => boolean;
  readonly app: { readonly version: string; readonly modelVersion: string };
  readonly readClocks: () => ClockReading;
}

/** A run that can go on at once: its record is whole, its probe connected. */
export interface ReadyRun {
  readonly past: RunSoFar;
  readonly folder: string;
  readonly source: ProbeSource;
  /** When it goes on: as it was asked for, or before its probe was connected, so that the first line of it belongs to the run. */
  readonly clocks: ClockReading;
}

/** The run that was under way when the program was last ended. */
export interface Unfinished {
  find(): Promise<UnfinishedRun | null>;
  /** Reads its record to the end and connects its probe. */
  ready(runId: string): Promise<Result<ReadyRun, ServiceProblem>>;
  /** Going on with it, as the record says it. */
  continuation(ready: ReadyRun): Continuation;
}

export function createUnfinished(setup: UnfinishedSetup): Unfinished {
  const { files, library, probeHub, readClocks } = setup;

  /** Rehearsals and imports are nothing that stands at the bench; nor is any run but the last. */
  async function read(): Promise<{ past: RunSoFar; folder: string; name: string } | null> {
    if (!setup.mayWrite()) return null;
    const last = await library.lastRecorded();
    if (last === null || last.header === null) return null;
    const { runId, ended, name } = last.summary;
    if (ended !== 'cut-off' || last.header.rehearsal) return null;
    const folder = await library.folder(runId);
    if (!folder.ok) return null;
    const past = await readRunSoFar(files, folder.value);
    if (!past.ok || past.value === null) return null;
    const { closedS } = timeClosed(past.value.written, readClocks());
    return closedS > longestClosedS ? null : { past: past.value, folder: folder.value, name };
  }

  /** The person's own choice of a probe counts; a simulated still is none. */
  async function connect(
    header: RunSoFar['header'],
    asked: ClockReading,
  ): Promise<Result<Pick<ReadyRun, 'source' | 'clocks'>, ServiceProblem>> {
    const { source } = probeHub.status();
    if (source !== null && source.kind !== 'demo' && source.timeScale === header.timeScale) {
      return succeed({ source, clocks: asked });
    }
    if (header.source === null) return fail({ kind: 'no-probe' });
    const now = sourceAsNow(header.source, await probeHub.listPorts());
    // Nothing that another says meanwhile may be taken for its own.
    if (source !== null) await probeHub.disconnect();
    const clocks = readClocks();
    const connected = await probeHub.connect(now);
    return connected.ok ? succeed({ source: now, clocks }) : connected;
  }

  return {
    async find() {
      const found = await read();
      if (found === null) return null;
      const { header, written, endS } = found.past;
      return {
        runId: header.runId,
        name: found.name,
        startedAtIso: header.startedAtIso,
        brokeOffAtIso: new Date(written.wallMs).toISOString(),
        durationS: endS,
      };
    },
    async ready(runId) {
      const asked = readClocks();
      const found = await read();
      if (found?.past.header.runId !== runId) return fail({ kind: 'run-over', runId });
      const connected = await connect(found.past.header, asked);
      if (!connected.ok) return connected;
      // A torn end that could not be put aside when the program started.
      const known = await library.summary(runId);
      const recovered = known.ok && known.value.hasTornEnd ? await library.recover(runId) : known;
      if (!recovered.ok) return recovered;
      const { past, folder } = found;
      return succeed({ past, folder, ...connected.value });
    },
    continuation({ past, source, clocks }) {
      const found = timeClosed(past.written, clocks);
      const closedS = Math.max(0, found.closedS);
      const record = {
        kind: 'continued',
        timeS: Math.max(milliseconds(past.writtenAtS + closedS), past.endS),
        closedS: milliseconds(closedS),
        clockS: clocks.monoS,
        appVersion: setup.app.version,
        modelVersion: setup.app.modelVersion,
        source,
      } as const;
      return { past, record, isClosedTimeKnown: found.isKnown };
    },
  };
}

/** The record is kept to milliseconds. */
function milliseconds(timeS: number): number {
  return Math.round(timeS * 1000) / 1000;
}
