import { fail, succeed } from '#shared-core';
import type { NewRunSetup } from '../run-library/index.ts';
import { createReadingHandlers, whyUnchangeable } from './reading-handlers.ts';
import type { Recording } from './recording.ts';
import type { RequestHandlers } from './request-handlers.ts';

type RunRequest = Exclude<
  Extract<keyof RequestHandlers, `run/${string}` | `runs/${string}`>,
  'runs/book'
>;

export interface RunHandlersSetup extends NewRunSetup {
  readonly recording: Recording;
}

/** Handlers of everything about runs: recording one, and the library of the others. */
export function createRunHandlers(setup: RunHandlersSetup): Pick<RequestHandlers, RunRequest> {
  const { library, recording } = setup;

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
    ...createReadingHandlers(setup),
    async 'runs/rename'({ runId, name, notes }) {
      const because = whyUnchangeable(recording, runId);
      if (because !== null) return fail(because);
      return library.rename(runId, { name, notes });
    },
    async 'runs/correct'({ runId, correction }) {
      const because = whyUnchangeable(recording, runId);
      if (because !== null) return fail(because);
      return library.correct(runId, correction);
    },
    async 'runs/trash'({ runId }) {
      const because = whyUnchangeable(recording, runId);
      if (because !== null) return fail(because);
      const trashed = await library.trash(runId);
      return trashed.ok ? succeed({}) : trashed;
    },
    async 'runs/trashed'() {
      const runs = await library.trashed();
      return runs.ok ? succeed({ runs: [...runs.value] }) : runs;
    },
    async 'runs/restore'({ runId }) {
      const restored = await library.restore(runId);
      return restored.ok ? succeed({ runId: restored.value }) : restored;
    },
  };
}
