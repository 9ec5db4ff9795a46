import { fail, succeed } from '#shared-core';
import type { ImportSetup } from '../run-library/index.ts';
import type { Recording } from './recording.ts';
import type { RequestHandlers } from './request-handlers.ts';

type RunRequest = Exclude<
  Extract<keyof RequestHandlers, `run/${string}` | `runs/${string}`>,
  'runs/book'
>;

export interface RunHandlersSetup extends ImportSetup {
  readonly recording: Recording;
}

/** Handlers of everything about runs: recording one, and the library of the others. */
export function createRunHandlers(setup: RunHandlersSetup): Pick<RequestHandlers, RunRequest> {
  const { library, recording } = setup;
  const isRunning = (runId: string) => recording.current()?.runId === runId;

  return {
    'run/status': async () => succeed(recording.status()),
    'run/start': ({ settings }) => recording.start(settings),
    'run/unfinished': async () => succeed({ run: await recording.unfinished() }),
    'run/continue': ({ runId }) => recording.goOn(runId),
    'run/stop': () => recording.stop(),
    async 'run/mark'({ mark }) {
      const marked = await recording.mark(mark);
      if (!marked.ok) return marked;
      const { markId, timeS } = marked.value;
      return succeed({ markId, timeS });
    },
    async 'runs/list'() {
      const current = recording.current();
      const live = current === null ? undefined : recording.liveView(current.runId);
      const listed = await library.list(current?.runId ?? null);
      if (!listed.ok) return listed;
      return succeed({ runs: [...(live ? [live.known.summary] : []), ...listed.value] });
    },
    'runs/read': ({ runId, fromIndex }) =>
      library.page(runId, fromIndex, recording.liveView(runId)),
    async 'runs/changes'({ runId }) {
      const read = await library.changes(runId);
      return read.ok ? succeed({ changes: [...read.value] }) : read;
    },
    async 'runs/rename'({ runId, name, notes }) {
      if (isRunning(runId)) return fail({ kind: 'already-recording', runId });
      return library.rename(runId, { name, notes });
    },
    async 'runs/correct'({ runId, correction }) {
      if (isRunning(runId)) return fail({ kind: 'already-recording', runId });
      return library.correct(runId, correction);
    },
    async 'runs/trash'({ runId }) {
      if (isRunning(runId)) return fail({ kind: 'already-recording', runId });
      const trashed = await library.trash(runId);
      return trashed.ok ? succeed({}) : trashed;
    },
  };
}
