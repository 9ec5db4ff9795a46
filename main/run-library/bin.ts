import path from 'node:path';
import { fail, type Result, type RunSummary, type ServiceProblem, succeed } from '#shared-core';
import { type FileProblem, foundOrNone, serviceProblemOf } from '../file-layer/index.ts';
import { isRunId } from './run-id.ts';
import { runProblem } from './run-problem.ts';
import { createSummaryStore, type SummaryStoreSetup } from './summary-store.ts';
import { unreadableRun } from './unreadable-run.ts';

/** Its folder stands beside the runs. */
export const trashFolder = 'trash';

/** Runs taken out of the library: nothing is deleted, and each may be put back. */
export interface Bin {
  /** Newest first. */
  list(): Promise<Result<readonly RunSummary[], ServiceProblem>>;
  /** Moves a run's folder here, under another name where its own is taken. */
  take(runId: string, folder: string): Promise<Result<void, ServiceProblem>>;
  /** Moves it back; answers the name that it has in the library, another one where its own is taken. */
  giveBack(runId: string): Promise<Result<string, ServiceProblem>>;
}

export function createBin(setup: SummaryStoreSetup): Bin {
  const { files, runsFolder, mayWrite } = setup;
  const trash = path.join(runsFolder, trashFolder);
  const summaries = createSummaryStore({ ...setup, runsFolder: trash });

  async function lineOf(runId: string): Promise<RunSummary | null> {
    const known = await summaries.get(runId);
    return known.ok ? known.value.summary : unreadableRun(files, trash, runId, known.error);
  }

  async function runsIn(folder: string): Promise<Result<readonly string[], FileProblem>> {
    const listed = await foundOrNone(files, folder, await files.list(folder));
    if (!listed.ok) return listed;
    return succeed(
      (listed.value ?? []).flatMap(({ name, isFolder }) =>
        isFolder && isRunId(name) ? [name] : [],
      ),
    );
  }

  /** A folder moves under its own name, or under one with a number where that is taken. */
  async function move(
    runId: string,
    from: string,
    into: string,
  ): Promise<Result<string, FileProblem>> {
    const there = await runsIn(into);
    if (!there.ok) return there;
    const taken = new Set(there.value);
    let target = runId;
    for (let number = 2; taken.has(target); number += 1) target = `${runId}-${number}`;
    const to = path.join(into, target);
    const moved = await files.rename(from, to);
    if (!moved.ok) return moved;
    const left = await files.syncFolder(trash);
    const kept = left.ok ? await files.syncFolder(runsFolder) : left;
    if (kept.ok) return succeed(target);
    // What is told as not done must not show as done.
    await files.rename(to, from);
    return kept;
  }

  return {
    async list() {
      const ids = await runsIn(trash);
      if (!ids.ok) return fail(serviceProblemOf(ids.error));
      const found: RunSummary[] = [];
      for (const runId of ids.value.toSorted().reverse()) {
        const line = await lineOf(runId);
        if (line !== null) found.push(line);
      }
      return succeed(found);
    },
    async take(runId, folder) {
      const made = await files.makeFolder(trash);
      const moved = made.ok ? await move(runId, folder, trash) : made;
      return moved.ok ? succeed(undefined) : fail(runProblem(runId, moved.error));
    },
    async giveBack(runId) {
      if (!mayWrite()) return fail({ kind: 'folder-in-use', path: runsFolder });
      if (!isRunId(runId) || (await lineOf(runId)) === null) {
        return fail({ kind: 'run-not-found', runId });
      }
      const moved = await move(runId, path.join(trash, runId), runsFolder);
      if (!moved.ok) return fail(runProblem(runId, moved.error));
      summaries.forget(runId);
      return moved;
    },
  };
}
