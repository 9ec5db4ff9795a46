import { fail, type Result, type ServiceProblem } from '#shared-core';
import type { Scheduler } from '../clock/index.ts';
import { type FileLayer, serviceProblemOf } from '../file-layer/index.ts';
import type { lockFolder } from '../run-library/index.ts';
import type { KnownFolders } from './known-folders.ts';

export interface FolderHoldSetup {
  readonly files: FileLayer;
  readonly runsFolder: string;
  readonly takeFolder: typeof lockFolder;
  readonly scheduler: Scheduler;
  /** Folders that have been there. */
  readonly known: KnownFolders;
}

/** The folder of runs as this program has it: from the start, or from when it is there and nobody else has it. */
export interface FolderHold {
  mayWrite(): boolean;
  /**
   * Goes on asking for a folder that could not be had: its drive may not be plugged in yet, another program may have it. What `first` does
   * is done before anything else may be written, and what `then` does as soon as it may.
   */
  keepAsking(first: () => Promise<void>, then: () => Promise<void>): void;
  /** A refusal as it is, or because the folder can't be reached where that is why. */
  explained(result: Result<unknown, ServiceProblem>): Promise<Result<unknown, ServiceProblem>>;
  release(): Promise<void>;
}

/** What is answered of a folder that is gone, too: nothing is found in it, and who has it can't be told. */
const sayNothingOfTheFolder: ReadonlySet<ServiceProblem['kind']> = new Set([
  'folder-in-use',
  'run-not-found',
  'run-over',
]);

/** Somebody who has just plugged a drive in waits for it, and a drive of the network is not asked all the time [s]. */
const askEveryS = 5;

export async function createFolderHold(setup: FolderHoldSetup): Promise<FolderHold> {
  const { files, runsFolder, takeFolder, scheduler, known } = setup;
  let lock = await take();
  let isAsking = false;
  let isReleased = false;
  let stop = () => {};

  async function take(): ReturnType<typeof lockFolder> {
    // One that has been there is on a drive that is away: made in its place, it would be out of sight once that is back, with the runs in it.
    const isThere = (await files.list(runsFolder)).ok;
    if (!isThere && (await known.has(runsFolder))) return null;
    const made = await files.makeFolder(runsFolder);
    const taken = made.ok ? await takeFolder(runsFolder, scheduler) : null;
    if (taken !== null) await known.note(runsFolder);
    return taken;
  }

  async function ask(first: () => Promise<void>, then: () => Promise<void>): Promise<void> {
    const taken = await take();
    if (taken === null) return;
    stop();
    try {
      if (!isReleased) await first();
    } finally {
      if (isReleased) await taken.release();
      else lock = taken;
    }
    if (!isReleased) await then();
  }

  return {
    mayWrite: () => lock?.isHeld() ?? false,
    keepAsking(first, then) {
      if (lock !== null) return;
      stop = scheduler.every(askEveryS, () => {
        if (isAsking) return;
        isAsking = true;
        // A try that fails is made up for by the next one.
        void ask(first, then)
          .catch(() => undefined)
          .finally(() => {
            isAsking = false;
          });
      });
    },
    async explained(result) {
      if (result.ok || !sayNothingOfTheFolder.has(result.error.kind)) return result;
      const listed = await files.list(runsFolder);
      return listed.ok ? result : fail(serviceProblemOf(listed.error));
    },
    async release() {
      isReleased = true;
      stop();
      await lock?.release();
      lock = null;
    },
  };
}
