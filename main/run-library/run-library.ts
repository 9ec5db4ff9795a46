import path from 'node:path';
import {
  fail,
  type LogHeader,
  type MarkBody,
  type RequestAnswer,
  type RequestBody,
  type Result,
  type RunSummary,
  type ServiceProblem,
  succeed,
} from '#shared-core';
import type { Clock } from '../clock/index.ts';
import { type FileLayer, type FileProblem, serviceProblemOf } from '../file-layer/index.ts';
import { segmentNumber } from '../recorder/index.ts';
import { takeTurns } from '../turns/index.ts';
import { createBin, trashFolder } from './bin.ts';
import { cutTornTail } from './cut-torn-tail.ts';
import { addLater, type LaterRecord, startLabels } from './labels.ts';
import { addLateMark } from './late-marks.ts';
import { makeSure } from './make-sure.ts';
import { createChangesReader, type RecordedConclusions } from './read-changes.ts';
import { createRunFolders, type RunFolders } from './run-folders.ts';
import { isRunId } from './run-id.ts';
import { createRunPages, type LiveView } from './run-pages.ts';
import { runProblem } from './run-problem.ts';
import type { RunToExport } from './run-to-export.ts';
import { createSummaryStore, type KnownRun } from './summary-store.ts';
import { unreadableRun } from './unreadable-run.ts';

/** Summaries read at once when listing. */
const listedTogether = 32;

/** The folder in which every run has its own folder. */
export interface RunLibrary {
  /** Newest first, also those that can't be opened; without the runs `except`, of which not all is in their files yet. */
  list(except?: ReadonlySet<string>): Promise<Result<readonly RunSummary[], ServiceProblem>>;
  /** Makes the folder of a run that is recorded as it happens. */
  readonly makeRunFolder: RunFolders['make'];
  /** Makes one in which a run is put together before it is one of the library. */
  readonly makeFolderAside: RunFolders['makeAside'];
  readonly giveName: RunFolders['giveName'];
  /** Adds the second copy of a new run's header. */
  keepHeader(folder: string, header: LogHeader): Promise<Result<void, FileProblem>>;
  summary(runId: string): Promise<Result<KnownRun, ServiceProblem>>;
  /** The newest run that was recorded here and can be opened, or null. */
  lastRecorded(): Promise<KnownRun | null>;
  /** Where the files of a run are, also of one that can't be opened. */
  folder(runId: string): Promise<Result<string, ServiceProblem>>;
  page(
    runId: string,
    fromIndex: number,
  ): Promise<Result<RequestAnswer<'runs/read'>, ServiceProblem>>;
  /** A whole run in memory. `live` describes it while it is being recorded. */
  whole(runId: string, live?: LiveView): Promise<Result<RunToExport, ServiceProblem>>;
  /** What the monitor concluded while the run was recorded. */
  changes(runId: string): Promise<Result<RecordedConclusions, ServiceProblem>>;
  rename(
    runId: string,
    label: { readonly name: string; readonly notes: string },
  ): Promise<Result<RunSummary, ServiceProblem>>;
  /** Puts right what was said wrongly of a run; the record keeps both. */
  correct(
    runId: string,
    correction: RequestBody<'runs/correct'>['correction'],
  ): Promise<Result<RunSummary, ServiceProblem>>;
  /** Adds a measurement made after the run, or withdraws one; answers its number. */
  book(runId: string, mark: MarkBody): Promise<Result<number, ServiceProblem>>;
  trash(runId: string): Promise<Result<void, ServiceProblem>>;
  /** Runs that were taken out, newest first. */
  trashed(): Promise<Result<readonly RunSummary[], ServiceProblem>>;
  /** Puts one back; answers the name it has in the library. */
  restore(runId: string): Promise<Result<string, ServiceProblem>>;
  /** Cuts the torn ends of a run that nobody records any more, and derives its summary anew. */
  recover(runId: string): Promise<Result<KnownRun, ServiceProblem>>;
  /** Recovers every run that has a torn end, and removes what is left of tables whose taking in was cut off. */
  recoverAll(): Promise<void>;
  /** Saves what can be read of runs and is perhaps on no disk; without the run `except`, with which somebody may go on. */
  makeAllSure(except: string | null): Promise<void>;
}

export interface RunLibrarySetup {
  readonly files: FileLayer;
  readonly clock: Clock;
  readonly runsFolder: string;
  /** False in a second instance, which must not touch the folder. */
  readonly mayWrite: () => boolean;
}

export function createRunLibrary(setup: RunLibrarySetup): RunLibrary {
  const { files, clock, runsFolder, mayWrite } = setup;
  const summaries = createSummaryStore(setup);
  const bin = createBin(setup);
  const folders = createRunFolders(setup);
  const folderOf = (runId: string) => path.join(runsFolder, runId);
  const pages = createRunPages(files, folderOf);
  const changes = createChangesReader(files);
  /** What is added to a run goes on from what was added before it. */
  const addInTurn = takeTurns();

  async function runIds(): Promise<Result<readonly string[], FileProblem>> {
    const listed = await files.list(runsFolder);
    if (!listed.ok) return listed;
    const names = listed.value
      .filter(({ name, isFolder }) => isFolder && isRunId(name) && name !== trashFolder)
      .map(({ name }) => name);
    return succeed(names.sort().reverse());
  }

  async function summary(runId: string): Promise<Result<KnownRun, ServiceProblem>> {
    if (!isRunId(runId)) return fail({ kind: 'run-not-found', runId });
    const known = await summaries.get(runId);
    return known.ok ? known : fail(runProblem(runId, known.error));
  }

  async function lineOf(runId: string): Promise<RunSummary | null> {
    const known = await summaries.get(runId);
    return known.ok ? known.value.summary : unreadableRun(files, runsFolder, runId, known.error);
  }

  /** People keep other folders beside their runs: none of them is taken for a run. */
  async function folder(runId: string): Promise<Result<string, ServiceProblem>> {
    const isRun = isRunId(runId) && runId !== trashFolder && (await lineOf(runId)) !== null;
    return isRun ? succeed(folderOf(runId)) : fail({ kind: 'run-not-found', runId });
  }

  async function list(
    except: ReadonlySet<string> = new Set(),
  ): Promise<Result<readonly RunSummary[], ServiceProblem>> {
    const ids = await runIds();
    if (!ids.ok) return fail(serviceProblemOf(ids.error));
    const found: RunSummary[] = [];
    for (let start = 0; start < ids.value.length; start += listedTogether) {
      const together = ids.value
        .slice(start, start + listedTogether)
        .filter((runId) => !except.has(runId));
      for (const line of await Promise.all(together.map(lineOf))) {
        if (line !== null) found.push(line);
      }
    }
    return succeed(found);
  }

  async function recover(runId: string): Promise<Result<KnownRun, ServiceProblem>> {
    const listed = await files.list(folderOf(runId));
    if (!listed.ok) return fail(runProblem(runId, listed.error));
    for (const { name } of listed.value) {
      if (segmentNumber(name) === undefined) continue;
      const cut = await cutTornTail(files, folderOf(runId), name);
      if (!cut.ok) return fail(runProblem(runId, cut.error));
    }
    summaries.forget(runId);
    return summary(runId);
  }

  /** What the disk does not take now is tried again by the next program. */
  async function makeRunSure(runId: string): Promise<void> {
    const known = await summary(runId);
    if (known.ok && known.value.summary.unsure && mayWrite()) {
      await makeSure(setup, folderOf(runId));
    }
  }

  async function addToRun(
    runId: string,
    record: LaterRecord,
  ): Promise<Result<RunSummary, ServiceProblem>> {
    if (!mayWrite()) return fail({ kind: 'folder-in-use', path: runsFolder });
    const known = await summary(runId);
    if (!known.ok) return known;
    const added = await addInTurn(() => addLater(files, clock, folderOf(runId), [record]));
    if (!added.ok) return fail(runProblem(runId, added.error));
    const changed = await summary(runId);
    return changed.ok ? succeed(changed.value.summary) : changed;
  }

  return {
    list,
    summary,
    folder,
    async lastRecorded() {
      const ids = await runIds();
      for (const runId of ids.ok ? ids.value : []) {
        const known = await summary(runId);
        if (known.ok && known.value.header?.origin === 'recorded') return known.value;
      }
      return null;
    },
    async page(runId, fromIndex) {
      const known = await summary(runId);
      return known.ok ? pages.page(known.value, fromIndex) : known;
    },
    async whole(runId, live) {
      const known = live === undefined ? await summary(runId) : succeed(live.known);
      return known.ok ? pages.whole(known.value, live) : known;
    },
    async changes(runId) {
      if (!isRunId(runId)) return fail({ kind: 'run-not-found', runId });
      const concluded = await changes.read(folderOf(runId));
      return concluded.ok ? concluded : fail(runProblem(runId, concluded.error));
    },
    recover,
    async recoverAll() {
      await folders.sweep();
      const ids = await runIds();
      for (const runId of ids.ok ? ids.value : []) {
        const known = await summary(runId);
        if (known.ok && known.value.hasTornEnd) await recover(runId);
      }
    },
    async makeAllSure(except) {
      const ids = await runIds();
      for (const runId of ids.ok ? ids.value : []) {
        if (runId !== except) await makeRunSure(runId);
      }
    },
    makeRunFolder: folders.make,
    makeFolderAside: folders.makeAside,
    giveName: folders.giveName,
    keepHeader: (folder, header) => startLabels(files, clock, folder, header),
    rename: (runId, label) => addToRun(runId, { kind: 'label', ...label }),
    correct: (runId, correction) => addToRun(runId, { kind: 'correction', correction }),
    // The turn is taken before anything is awaited: measurements stand in the order in which they were kept.
    book: (runId, mark) =>
      addInTurn(async () => {
        if (!mayWrite()) return fail({ kind: 'folder-in-use', path: runsFolder });
        const known = await summary(runId);
        if (!known.ok) return known;
        return addLateMark(setup, { runId, folder: folderOf(runId) }, mark);
      }),
    async trash(runId) {
      if (!mayWrite()) return fail({ kind: 'folder-in-use', path: runsFolder });
      const from = await folder(runId);
      if (!from.ok) return from;
      const taken = await bin.take(runId, from.value);
      if (taken.ok) summaries.forget(runId);
      return taken;
    },
    trashed: () => bin.list(),
    async restore(runId) {
      const restored = await bin.giveBack(runId);
      if (restored.ok) await makeRunSure(restored.value);
      return restored;
    },
  };
}
