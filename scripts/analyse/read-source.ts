import { statSync } from 'node:fs';
import path from 'node:path';
import { type RunToExport, readTextFile } from '#main';
import {
  type ColumnMapping,
  explainCsvProblem,
  fail,
  loggerSilenceS,
  type Mark,
  type ReadCsv,
  type Result,
  type RunInput,
  type RunSettings,
  readReadingsCsv,
  succeed,
} from '#shared-core';
import type { RunProblem } from '../../shared-core/snapshot/index.ts';
import { libraryToRead } from '../measuring/recorded-run.ts';

/** What is to be analysed, wherever it came from. */
export interface AnalyseSource {
  readonly inputs: readonly RunInput[];
  readonly endS: number;
  /** Measurements made after the run. */
  readonly lateMarks: readonly Mark[];
  /** Those of a recorded run; null for a CSV file, which has none. */
  readonly settings: RunSettings | null;
  /** The run as recorded; null for a CSV file. */
  readonly recorded: RunToExport | null;
  /** Silence of a probe that is more than the source's own pace [s]. */
  readonly silenceS: number;
  /** What of the source could not be used. */
  readonly problems: readonly RunProblem[];
}

/** Larger files are refused before they are read: 200 MB is ten hours at 100 Hz. */
const largestBytes = 200_000_000;
const mostRowProblems = 200;

/** Reads a CSV file or the folder of a recorded run; or says in a sentence why not. */
export async function readSource(
  file: string,
  mapping?: ColumnMapping,
): Promise<Result<AnalyseSource, string>> {
  const found = statSync(file, { throwIfNoEntry: false });
  if (found === undefined) return fail(`There is no file "${file}".`);
  if (found.isDirectory()) return readRunFolder(path.resolve(file));
  if (!found.isFile()) return fail(`"${file}" is no ordinary file.`);
  if (found.size > largestBytes) {
    const megabytes = Math.round(found.size / 1e6);
    return fail(`"${file}" has ${megabytes} MB; at most ${largestBytes / 1e6} MB can be analysed.`);
  }
  const text = await readTextFile(file);
  if (!text.ok) return fail(`"${file}" can't be read: ${text.error.message}`);
  const read = readReadingsCsv(text.value, mapping);
  if (!read.ok) return fail(`"${file}" can't be analysed. ${explainCsvProblem(read.error)}`);
  const { inputs, endS, lateMarks } = read.value;
  return succeed({
    inputs,
    endS,
    lateMarks,
    settings: null,
    recorded: null,
    silenceS: loggerSilenceS(inputs),
    problems: rowProblems(read.value),
  });
}

async function readRunFolder(folder: string): Promise<Result<AnalyseSource, string>> {
  const runId = path.basename(folder);
  const run = await libraryToRead(path.dirname(folder)).whole(runId);
  if (!run.ok) return fail(`"${folder}" holds no run that can be read (${run.error.kind}).`);
  const { inputs, endS, settings, summary, lateMarks } = run.value;
  const problems = (summary.leftOut ?? []).map((problem) => ({ problem, fromS: 0, toS: endS }));
  return succeed({
    inputs,
    endS,
    lateMarks,
    settings,
    recorded: run.value,
    silenceS: 0,
    problems,
  });
}

function rowProblems({ rejectedRows, remarks, endS }: ReadCsv): readonly RunProblem[] {
  const shown = rejectedRows.slice(0, mostRowProblems);
  const more = rejectedRows.length - shown.length;
  const sentences = shown.map(({ line, reason }) => `Line ${line} could not be used: ${reason}.`);
  if (more > 0) sentences.push(`${more} more lines could not be used.`);
  return [...remarks, ...sentences].map((problem) => ({ problem, fromS: 0, toS: endS }));
}
