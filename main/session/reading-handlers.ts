import { succeed } from '#shared-core';
import type { LiveView, RunLibrary } from '../run-library/index.ts';
import type { RequestHandlers } from './request-handlers.ts';

type ReadingRequest = 'runs/list' | 'runs/read' | 'runs/changes';

/** What whoever reads runs must know of the one that is being recorded. */
export interface UnderWay {
  current(): { readonly runId: string } | null;
  /** What the library can't read from the files of the running run. */
  liveView(runId: string): LiveView | undefined;
}

export interface ReadingSetup {
  readonly library: RunLibrary;
  readonly recording: UnderWay;
}

/** Handlers of what reads recorded runs and changes nothing. */
export function createReadingHandlers({
  library,
  recording,
}: ReadingSetup): Pick<RequestHandlers, ReadingRequest> {
  return {
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
      const read = await library.changes(runId, recording.liveView(runId));
      if (!read.ok) return read;
      const { changes, modelVersions } = read.value;
      return succeed({ changes: [...changes], modelVersions: [...modelVersions] });
    },
  };
}
