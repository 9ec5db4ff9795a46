import type { Service } from '#shared-core';
import { type RunViewStore, stagesOfRecord } from '../stores/index.ts';
import { readWholeRun } from './read-whole-run.ts';

export interface CatchUpParts {
  readonly service: Service;
  readonly live: RunViewStore;
  readonly breathe: () => Promise<void>;
}

/** Brings a run that this window has not followed from its beginning into view. */
export interface CatchUp {
  /** Reads what is missing; asked again meanwhile, it looks once more when it is through. */
  read(runId: string): void;
  /** Reads once more what could not be read: a disk that was away, a part of the program that was killed. */
  readWhatFailed(): void;
  /** Takes what was concluded so far: what passed unseen is in it, a snapshot only tells the stage and the strength of now. */
  readConclusions(runId: string): Promise<void>;
  /** What is still being read is not wanted any more. */
  leave(): void;
  isReading(): boolean;
}

export function createCatchUp({ service, live, breathe }: CatchUpParts): CatchUp {
  let wanted: string | null = null;
  /** The reading under way; one of a run that is no longer wanted ends by itself and hinders nobody. */
  let reading: { readonly runId: string } | null = null;
  let looksAgain = false;
  let hasFailed = false;

  const readOnce = async (runId: string, isWanted: () => boolean) => {
    const { view } = live.getState();
    const known = view?.runId === runId ? view.inputCount : 0;
    let endS: number | null = null;
    const problem = await readWholeRun({ service, breathe, isWanted }, runId, known, (page) => {
      const { dispatch } = live.getState();
      const { settings, summary, inputs } = page;
      if (page.fromIndex === 0) {
        const { name, startedAtIso } = summary;
        dispatch({ type: 'opened', run: { origin: 'live', runId, name, startedAtIso, settings } });
      }
      dispatch({ type: 'inputs', runId, inputs });
      endS = page.endS;
      if (page.endSnapshot === undefined || page.nextIndex !== null) return;
      dispatch({ type: 'snapshot', runId, snapshot: page.endSnapshot });
      dispatch({ type: 'ended', runId, timeS: page.endS });
    });
    if (!isWanted()) return;
    hasFailed = problem !== null;
    await readConclusions(runId);
    tellItsEnd(runId, endS);
  };

  /** A run that ended unseen ended where its record does, later than this window knew. */
  const tellItsEnd = (runId: string, endS: number | null) => {
    const { view, dispatch } = live.getState();
    const isEnded = view?.runId === runId && view.endedS !== null;
    if (isEnded && endS !== null) dispatch({ type: 'ended', runId, timeS: endS });
  };

  /** Whoever has another run in view takes none of it. */
  const readConclusions = async (runId: string) => {
    const recorded = await service.request('runs/changes', { runId });
    if (!recorded.ok) return;
    const stages = stagesOfRecord(recorded.value.changes);
    const { dispatch } = live.getState();
    dispatch({ type: 'stages-known', runId, stages });
    const { estimates } = recorded.value;
    if (estimates !== undefined) dispatch({ type: 'estimates-known', runId, estimates });
  };

  const run = async (runId: string) => {
    const own = { runId };
    reading = own;
    const isWanted = () => reading === own && wanted === runId;
    while (looksAgain && isWanted()) {
      looksAgain = false;
      await readOnce(runId, isWanted);
    }
    if (reading === own) reading = null;
  };

  const read = (runId: string) => {
    wanted = runId;
    looksAgain = true;
    hasFailed = false;
    if (reading?.runId !== runId) void run(runId);
  };

  return {
    read,
    readWhatFailed() {
      if (hasFailed && reading === null && wanted !== null) read(wanted);
    },
    readConclusions,
    leave() {
      wanted = null;
      reading = null;
      hasFailed = false;
    },
    isReading: () => reading !== null,
  };
}
