import {
  fail,
  inputsOfRecord,
  type RequestAnswer,
  type Result,
  type RunInput,
  type ServiceProblem,
  succeed,
} from '#shared-core';
import type { FileLayer } from '../file-layer/index.ts';
import type { PendingRecord } from '../recorder/index.ts';
import { createBookmarks } from './bookmarks.ts';
import { readLateMarks } from './late-marks.ts';
import { noHeaderWords } from './no-header.ts';
import { isStillThere } from './read-run-log.ts';
import { type Bookmark, createRunPager, type RunPager } from './run-pager.ts';
import { runProblem } from './run-problem.ts';
import type { RunToExport } from './run-to-export.ts';
import type { KnownRun } from './summary-store.ts';

/**
 * Inputs in a page: an hour at 1 Hz. Neither the services nor the window stand still for it: a page is written, sent and checked
 * in less time than a person notices, beside a run that is being recorded.
 */
export const pageInputs = 4000;

/** A run that is being recorded: what its files do not tell. */
export interface LiveView {
  readonly known: KnownRun;
  /** Records that may not be in the files yet. */
  readonly unsaved: readonly PendingRecord[];
}

/** Reads runs in pages. Nothing recorded is ever rewritten: whoever asks for a page behind one that was read begins there. */
export interface RunPages {
  page(
    known: KnownRun,
    fromIndex: number,
  ): Promise<Result<RequestAnswer<'runs/read'>, ServiceProblem>>;
  /** A whole run in memory. */
  whole(known: KnownRun, live?: LiveView): Promise<Result<RunToExport, ServiceProblem>>;
}

export function createRunPages(files: FileLayer, folderOf: (runId: string) => string): RunPages {
  const bookmarks = createBookmarks();

  async function pagerNear(runId: string, fromIndex: number): Promise<RunPager> {
    const folder = folderOf(runId);
    const passes = (bookmark: Bookmark) => bookmarks.add(runId, bookmark);
    const near = bookmarks.before(runId, fromIndex);
    if (near !== null && (await isStillThere(files, folder, near.place))) {
      return createRunPager(files, folder, near, passes);
    }
    bookmarks.forget(runId);
    return createRunPager(files, folder, null, passes);
  }

  async function pagerAt(runId: string, fromIndex: number): Promise<RunPager> {
    const pager = await pagerNear(runId, fromIndex);
    while (pager.position() < fromIndex) {
      const left = fromIndex - pager.position();
      const skipped = await pager.next(Math.min(pageInputs, left));
      if (skipped.length === 0) break;
    }
    return pager;
  }

  async function nextPage(
    { summary, header }: KnownRun,
    pager: RunPager,
    live?: LiveView,
  ): Promise<Result<RequestAnswer<'runs/read'>, ServiceProblem>> {
    const { runId, durationS: endS } = summary;
    if (header === null) {
      return fail({ kind: 'run-unreadable', runId, message: noHeaderWords(summary) });
    }
    const inputs = [...(await pager.next(pageInputs))];
    const { problem } = pager.report();
    if (problem !== null) return fail(runProblem(runId, problem));
    const atEnd = inputs.length < pageInputs;
    const nextIndex = atEnd ? null : pager.position();
    if (atEnd) {
      for (const record of live?.unsaved ?? []) {
        if (record.stamp.seq > pager.lastSeq()) inputs.push(...inputsOfRecord(record));
      }
    }
    const late = await readLateMarks(files, folderOf(runId), endS);
    if (!late.ok) return fail(runProblem(runId, late.error));
    const { settings } = header;
    return succeed({ summary, settings, inputs, lateMarks: [...late.value], nextIndex, endS });
  }

  return {
    async page(known, fromIndex) {
      const pager = await pagerAt(known.summary.runId, fromIndex);
      const page = await nextPage(known, pager);
      await pager.close();
      return page;
    },
    async whole(known, live) {
      const inputs: RunInput[] = [];
      const pager = createRunPager(files, folderOf(known.summary.runId));
      let next = await nextPage(known, pager, live);
      while (next.ok) {
        for (const input of next.value.inputs) inputs.push(input);
        const { nextIndex, summary, settings, endS, lateMarks = [] } = next.value;
        if (nextIndex === null) {
          const { appVersion = '', modelVersion = '' } = known.header ?? {};
          return succeed({
            summary,
            settings,
            appVersion,
            modelVersion,
            inputs,
            endS,
            lateMarks,
          });
        }
        next = await nextPage(known, pager, live);
      }
      await pager.close();
      return next;
    },
  };
}
