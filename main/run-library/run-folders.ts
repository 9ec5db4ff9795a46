import path from 'node:path';
import { type Result, succeed } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { newRunId, startOfRunId } from './run-id.ts';

export interface RunFolder {
  readonly runId: string;
  readonly folder: string;
}

/** What the folder of a run is called while it is put together: no name that a run can have. */
const asideEnding = '.part';

/** The folders of new runs, each under a name that nothing else has. */
export interface RunFolders {
  /** Makes the folder of a run that is recorded as it happens; under none of the names `besides`, whose own folders may be gone. */
  make(wallMs: number, besides?: readonly string[]): Promise<Result<RunFolder, FileProblem>>;
  /** Makes one that is no run of the library before it has its name. */
  makeAside(wallMs: number): Promise<Result<RunFolder, FileProblem>>;
  /** Gives a folder made aside its name, whole or not at all: where the disk does not keep the name, the folder goes. */
  giveName(made: RunFolder): Promise<Result<void, FileProblem>>;
  /** Removes what an end of the program left aside; while nobody puts a run together. */
  sweep(): Promise<void>;
}

export function createRunFolders({
  files,
  runsFolder,
}: {
  readonly files: FileLayer;
  readonly runsFolder: string;
}): RunFolders {
  const folderOf = (name: string) => path.join(runsFolder, name);

  /** The names of runs that are taken, each as often as there is a folder for it. */
  async function takenIds(): Promise<Result<readonly string[], FileProblem>> {
    const listed = await files.list(runsFolder);
    if (!listed.ok) return listed;
    return succeed(listed.value.map(({ name }) => idOfAside(name) ?? name));
  }

  async function take(
    wallMs: number,
    ending: string,
    besides: readonly string[] = [],
  ): Promise<Result<RunFolder, FileProblem>> {
    for (;;) {
      // A library that is gone is not made anew: it is on a drive, and what stood in its place would be out of sight once that is back.
      const taken = await takenIds();
      if (!taken.ok) return taken;
      const runId = newRunId(wallMs, new Set([...taken.value, ...besides]));
      const folder = folderOf(`${runId}${ending}`);
      // An import and a recording that begin in the same second must never share one.
      const claimed = await files.claimFolder(folder);
      if (!claimed.ok && claimed.error.kind === 'exists') continue;
      if (!claimed.ok) return claimed;
      // Nor a name: of two that claim it, one in each form, the later sees the other.
      const claims = await takenIds();
      const isShared = claims.ok && claims.value.filter((id) => id === runId).length > 1;
      const named = claims.ok && !isShared ? await files.syncFolder(runsFolder) : claims;
      if (named.ok && !isShared) return succeed({ runId, folder });
      await files.remove(folder);
      if (!named.ok) return named;
    }
  }

  return {
    make: (wallMs, besides) => take(wallMs, '', besides),
    makeAside: (wallMs) => take(wallMs, asideEnding),
    async giveName({ runId, folder }) {
      const renamed = await files.rename(folder, folderOf(runId));
      const kept = renamed.ok ? await files.syncFolder(runsFolder) : renamed;
      if (!kept.ok) await files.remove(renamed.ok ? folderOf(runId) : folder);
      return kept;
    },
    async sweep() {
      const listed = await files.list(runsFolder);
      for (const { name, isFolder } of listed.ok ? listed.value : []) {
        if (isFolder && idOfAside(name) !== null) await files.remove(folderOf(name));
      }
    },
  };
}

/** Which run a folder is put together for; null for any other folder, also of people's own. */
function idOfAside(name: string): string | null {
  const runId = name.slice(0, -asideEnding.length);
  return name.endsWith(asideEnding) && startOfRunId(runId) !== null ? runId : null;
}
