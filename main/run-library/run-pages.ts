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
import { takeTurns } from '../turns/index.ts';
import { headerLostWords } from './header-lost.ts';
import { readLateMarks } from './late-marks.ts';
import { createRunPager, type RunPager } from './run-pager.ts';
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

/** Reads runs in pages; going on where the last page ended costs no new reading. */
export interface RunPages {
  page(
    known: KnownRun,
    fromIndex: number,
    live?: LiveView,
  ): Promise<Result<RequestAnswer<'runs/read'>, ServiceProblem>>;
  /** A whole run in memory. */
  whole(known: KnownRun, live?: LiveView): Promise<Result<RunToExport, ServiceProblem>>;
  close(): Promise<void>;
}

export function createRunPages(files: FileLayer, folderOf: (runId: string) => string): RunPages {
  let open: { readonly runId: string; readonly pager: RunPager } | null = null;
  /** All requests share one open reader, so they take turns. */
  const inTurn = takeTurns();

  async function close(): Promise<void> {
    await open?.pager.close();
    open = null;
  }

  async function pagerAt(runId: string, fromIndex: number): Promise<RunPager> {
    if (open?.runId === runId && open.pager.position() === fromIndex) return open.pager;
    await close();
    const pager = createRunPager(files, folderOf(runId));
    open = { runId, pager };
    while (pager.position() < fromIndex) {
      const left = fromIndex - pager.position();
      const skipped = await pager.next(Math.min(pageInputs, left));
      if (skipped.length === 0) break;
    }
    return pager;
  }

  async function page(
    { summary, header }: KnownRun,
    fromIndex: number,
    live?: LiveView,
  ): Promise<Result<RequestAnswer<'runs/read'>, ServiceProblem>> {
    const { runId } = summary;
    if (header === null) {
      return fail({ kind: 'run-unreadable', runId, message: headerLostWords() });
    }
    const pager = await pagerAt(runId, fromIndex);
    const inputs = [...(await pager.next(pageInputs))];
    const { problem } = pager.report();
    if (problem !== null) {
      // A reader that failed once answers nothing else; the next question deserves a new one.
      await close();
      return fail(runProblem(runId, problem));
    }
    const atEnd = inputs.length < pageInputs;
    const nextIndex = atEnd ? null : pager.position();
    if (atEnd) {
      for (const record of live?.unsaved ?? []) {
        if (record.stamp.seq > pager.lastSeq()) inputs.push(...inputsOfRecord(record));
      }
      // A run that is being recorded has grown by the next time.
      await close();
    }
    const endS = summary.durationS;
    const late = await readLateMarks(files, folderOf(runId), endS);
    if (!late.ok) return fail(runProblem(runId, late.error));
    const { settings } = header;
    return succeed({ summary, settings, inputs, lateMarks: [...late.value], nextIndex, endS });
  }

  async function whole(
    known: KnownRun,
    live?: LiveView,
  ): Promise<Result<RunToExport, ServiceProblem>> {
    const inputs: RunInput[] = [];
    let next = await page(known, 0, live);
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
      next = await page(known, nextIndex, live);
    }
    return next;
  }

  return {
    page: (known, fromIndex, live) => inTurn(() => page(known, fromIndex, live)),
    whole: (known, live) => inTurn(() => whole(known, live)),
    close: () => inTurn(close),
  };
}
