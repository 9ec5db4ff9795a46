import { fail, type Result, type ServiceProblem, succeed } from '#shared-core';
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
  /** Told when the folder is found gone, and when it is there again. */
  readonly onChange?: () => void;
}

/** The folder of runs as this program has it: from the start, or from when it is there and nobody else has it. */
export interface FolderHold {
  mayWrite(): boolean;
  /**
   * Goes on asking for a folder that could not be had: its drive may not be plugged in yet, another program may have it. What `first` does
   * is done before anything else may be written, and what `then` does as soon as it may.
   */
  keepAsking(first: () => Promise<void>, then: () => Promise<void>): void;
  /** The folder was there, as far as this computer knows, and is not any more. */
  isGone(): boolean;
  /** Makes it where it is gone: a person says so. What is done once it is had is done as with one that has come back. */
  makeAnew(): Promise<Result<void, ServiceProblem>>;
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
/** Whoever deletes a folder by mistake is told while the bin is still at hand [s]. */
const lookEveryS = 2;

export async function createFolderHold(setup: FolderHoldSetup): Promise<FolderHold> {
  const { files, runsFolder, takeFolder, scheduler, known } = setup;
  let lock = await take();
  let isAsking = false;
  let isReleased = false;
  let stop = () => {};
  let isGone = false;
  let isLooking = false;
  let whenHad: readonly [first: () => Promise<void>, then: () => Promise<void>] | null = null;

  async function take(): ReturnType<typeof lockFolder> {
    // One that has been there is on a drive that is away: made in its place, it would be out of sight once that is back, with the runs in it.
    const isThere = (await files.list(runsFolder)).ok;
    if (!isThere && (await known.has(runsFolder))) return null;
    const made = await files.makeFolder(runsFolder);
    const taken = made.ok ? await takeFolder(runsFolder, scheduler) : null;
    if (taken !== null) await known.note(runsFolder);
    return taken;
  }

  /** A disk that holds its answer is not asked again. */
  async function look(): Promise<void> {
    if (isLooking) return;
    isLooking = true;
    const listed = await files.list(runsFolder);
    isLooking = false;
    // What can't be read for another reason may well be there.
    const isMissing = !listed.ok && listed.error.kind === 'missing';
    if (isMissing === isGone || isReleased) return;
    isGone = isMissing;
    setup.onChange?.();
  }

  /** One asking at a time. */
  async function askOnce(): Promise<void> {
    if (isAsking || lock !== null) return;
    isAsking = true;
    await ask().finally(() => {
      isAsking = false;
    });
  }

  async function ask(): Promise<void> {
    const taken = await take();
    if (taken === null || whenHad === null) return;
    const [first, then] = whenHad;
    stop();
    try {
      if (!isReleased) await first();
    } finally {
      if (isReleased) await taken.release();
      else lock = taken;
    }
    if (!isReleased) await then();
  }

  await look();
  const stopLooking = scheduler.every(lookEveryS, () => void look());

  return {
    mayWrite: () => lock?.isHeld() ?? false,
    isGone: () => isGone,
    keepAsking(first, then) {
      if (lock !== null) return;
      whenHad = [first, then];
      // A try that fails is made up for by the next one.
      stop = scheduler.every(askEveryS, () => void askOnce().catch(() => undefined));
    },
    async makeAnew() {
      const made = await files.makeFolder(runsFolder);
      if (!made.ok) return fail(serviceProblemOf(made.error));
      await askOnce();
      await look();
      return succeed(undefined);
    },
    async explained(result) {
      if (result.ok || !sayNothingOfTheFolder.has(result.error.kind)) return result;
      const listed = await files.list(runsFolder);
      return listed.ok ? result : fail(serviceProblemOf(listed.error));
    },
    async release() {
      isReleased = true;
      stop();
      stopLooking();
      await lock?.release();
      lock = null;
    },
  };
}
