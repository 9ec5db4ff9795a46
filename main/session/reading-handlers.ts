import { type ServiceProblem, succeed } from '#shared-core';
import type { LiveView, RunLibrary } from '../run-library/index.ts';
import type { Recording } from './recording.ts';
import type { RequestHandlers } from './request-handlers.ts';

type RecordRequest = 'runs/read' | 'runs/changes';
type ReadingRequest = 'runs/list' | RecordRequest;

/** What whoever reads runs must know of the one that is being recorded. */
export interface UnderWay {
  current(): { readonly runId: string } | null;
  /** Runs that have ended and that the disk has not taken yet, newest first. */
  notSaved(): readonly { readonly runId: string; readonly view: LiveView }[];
  /** What the library can't read from the files of a run that is in memory. */
  liveView(runId: string): LiveView | undefined;
}

export interface ReadingSetup {
  readonly library: RunLibrary;
  readonly recording: UnderWay;
}

/** Why a run can't be changed now: it goes on, or what is changed of it would be lost with it. */
export function whyUnchangeable(recording: UnderWay, runId: string): ServiceProblem | null {
  if (recording.current()?.runId === runId) return { kind: 'already-recording', runId };
  const isNotSaved = recording.notSaved().some((run) => run.runId === runId);
  return isNotSaved ? { kind: 'run-not-saved', runId } : null;
}

/** Handlers of what reads recorded runs, from their files alone, and changes nothing. */
export function createReadingHandlers({
  library,
  recording,
}: ReadingSetup): Pick<RequestHandlers, ReadingRequest> {
  return {
    async 'runs/list'() {
      const current = recording.current();
      const live = current === null ? undefined : recording.liveView(current.runId);
      const notSaved = recording.notSaved();
      const inMemory = [...(current ? [current] : []), ...notSaved];
      const listed = await library.list(new Set(inMemory.map(({ runId }) => runId)));
      if (!listed.ok) return listed;
      const over = [...notSaved.map(({ view }) => view.known.summary), ...listed.value];
      if (notSaved.length > 0) over.sort((a, b) => (a.runId < b.runId ? 1 : -1));
      return succeed({ runs: [...(live ? [live.known.summary] : []), ...over] });
    },
    'runs/read': ({ runId, fromIndex }) => library.page(runId, fromIndex),
    async 'runs/changes'({ runId }) {
      const read = await library.changes(runId);
      if (!read.ok) return read;
      const { changes, modelVersions } = read.value;
      return succeed({ changes: [...changes], modelVersions: [...modelVersions] });
    },
  };
}

/** A run under way, or not saved yet, is told from memory, so that whoever looks on waits for no disk; any other as it is recorded. */
export function underWayFromMemory(
  { told }: Pick<Recording, 'told'>,
  recorded: Pick<RequestHandlers, RecordRequest>,
): Pick<RequestHandlers, RecordRequest> {
  return {
    async 'runs/read'(body, asker) {
      const run = told(body.runId);
      return run ? succeed(run.page(body.fromIndex)) : recorded['runs/read'](body, asker);
    },
    async 'runs/changes'(body, asker) {
      const run = told(body.runId);
      if (run === null) return recorded['runs/changes'](body, asker);
      const { changes, modelVersions, estimates } = run.conclusions();
      return succeed({
        changes: [...changes],
        modelVersions: [...modelVersions],
        estimates,
      });
    },
  };
}
