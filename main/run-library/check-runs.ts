import path from 'node:path';
import type { DamagedStretch } from '#shared-core';
import type { FileLayer } from '../file-layer/index.ts';
import { trashFolder } from './bin.ts';
import { createTimeJudge, type TimeDoubt } from './judge-times.ts';
import type { LostReadings, Unread } from './left-out.ts';
import { noHeaderWords } from './no-header.ts';
import { isRunId } from './run-id.ts';
import { summariseRun } from './summarise-run.ts';
import { unreadableRun } from './unreadable-run.ts';

/** What an integrity check found in one run's folder. */
export interface RunCheck {
  readonly runId: string;
  /** `whole`, `torn` (a cut-off end or beginning, harmless), `damaged` (records are lost) or `unreadable`. */
  readonly state: 'whole' | 'torn' | 'damaged' | 'unreadable';
  readonly readings: number;
  readonly missingRecords: number;
  /** Whole, but written by a newer version in a way that this one does not know. */
  readonly unknownRecords: number;
  readonly damage: readonly (DamagedStretch & { readonly file: string })[];
  readonly torn: readonly (DamagedStretch & { readonly file: string })[];
  /** What cannot have been when it is said to have been, though every byte of it is whole. */
  readonly timeDoubts: readonly TimeDoubt[];
  /** Readings that found no room, by where they were lost. */
  readonly lost: readonly LostReadings[];
  /** When the part of the program that reads the probe had stopped [s]: what the probe sent then is lost. */
  readonly unread: readonly Unread[];
  /** When the program was closed in mid-run [s]: no readings, and none lost of those recorded. */
  readonly closed: readonly { readonly fromS: number; readonly toS: number }[];
  readonly problem: string | null;
}

/** Reads every byte of every run in the folder; changes nothing. */
export async function* checkRuns(files: FileLayer, runsFolder: string): AsyncGenerator<RunCheck> {
  const listed = await files.list(runsFolder);
  const entries = listed.ok ? listed.value : [];
  const runIds = entries.filter(({ name, isFolder }) => isFolder && isRunId(name));
  for (const { name: runId } of runIds.sort((a, b) => a.name.localeCompare(b.name))) {
    const check = runId === trashFolder ? null : await checkRun(files, runsFolder, runId);
    if (check !== null) yield check;
  }
}

/** Null for what the library does not take for a run either. */
async function checkRun(
  files: FileLayer,
  runsFolder: string,
  runId: string,
): Promise<RunCheck | null> {
  const times = createTimeJudge();
  const summarised = await summariseRun(files, path.join(runsFolder, runId), runId, times.add);
  if (!summarised.ok) {
    const { message } = summarised.error;
    if ((await unreadableRun(files, runsFolder, runId, summarised.error)) === null) return null;
    const nothing = { readings: 0, missingRecords: 0, unknownRecords: 0, damage: [], torn: [] };
    const noTimes = { timeDoubts: [], closed: [], lost: [], unread: [] };
    return { runId, state: 'unreadable', ...nothing, ...noTimes, problem: message };
  }
  const { summary, header, report, lost, unread } = summarised.value;
  const timeDoubts = times.doubts();
  const { problem: _, ...read } = report;
  const { readings } = summary;
  const closed = times.closed();
  const found = { runId, readings, ...read, timeDoubts, lost, unread, closed };
  if (header === null) {
    const isNothing = summary.unreadable?.why === 'nothing-recorded';
    return { ...found, state: isNothing ? 'torn' : 'unreadable', problem: noHeaderWords(summary) };
  }
  // A file that is gone leaves no damaged bytes behind, only numbers that are in no other.
  const isDamaged = found.damage.length > 0 || found.missingRecords > 0;
  return {
    ...found,
    state: isDamaged ? 'damaged' : found.torn.length > 0 ? 'torn' : 'whole',
    problem: null,
  };
}
