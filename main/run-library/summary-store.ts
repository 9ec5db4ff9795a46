import path from 'node:path';
import { z } from 'zod';
import {
  type LogHeader,
  logHeaderSchema,
  parseJson,
  type Result,
  runSummarySchema,
  succeed,
} from '#shared-core';
import { type FileLayer, type FileProblem, readText, replaceFile } from '../file-layer/index.ts';
import { summaryFile } from '../recorder/index.ts';
import { summariseRun } from './summarise-run.ts';
import { contentsOf, looksOf } from './what-was-read.ts';

const storedSchema = z.strictObject({
  version: z.literal(9),
  /** What the files that it was derived from looked like; while they do, it is true. */
  looks: z.string(),
  /** And what was in them: while that is the same it is true, whatever they look like. */
  contents: z.string(),
  summary: runSummarySchema,
  header: logHeaderSchema.nullable(),
  hasTornEnd: z.boolean(),
});

type Stored = z.infer<typeof storedSchema>;

/** What the library needs to know of a run without reading its log. */
export interface KnownRun {
  readonly summary: Stored['summary'];
  readonly header: LogHeader | null;
  /** A file ends in the middle of a record: {@link RunLibrary.recover} puts that end aside. */
  readonly hasTornEnd: boolean;
}

/** Summaries, from memory or `summary.json` where still true, else derived from the log anew. */
export interface SummaryStore {
  get(runId: string): Promise<Result<KnownRun, FileProblem>>;
  forget(runId: string): void;
}

export interface SummaryStoreSetup {
  readonly files: FileLayer;
  readonly runsFolder: string;
  /** False in a second instance, which must not touch the folder. */
  readonly mayWrite: () => boolean;
}

export function createSummaryStore({
  files,
  runsFolder,
  mayWrite,
}: SummaryStoreSetup): SummaryStore {
  const known = new Map<string, Stored>();

  async function get(runId: string): Promise<Result<KnownRun, FileProblem>> {
    const folder = path.join(runsFolder, runId);
    const looks = await looksOf(files, folder);
    if (!looks.ok) return looks;
    const found = known.get(runId) ?? (await readStored(files, folder));
    const stored = found?.summary.runId === runId ? found : undefined;
    const isAsItWas = stored?.looks === looks.value;
    const fresh = isAsItWas ? succeed(stored) : await anew(runId, looks.value, stored);
    if (!fresh.ok) return fresh;
    known.set(runId, fresh.value);
    // A summary that can't be stored is only slower next time.
    if (!isAsItWas && mayWrite()) {
      const text = `${JSON.stringify(fresh.value, null, 1)}\n`;
      await replaceFile(files, path.join(folder, summaryFile), text);
    }
    return fresh;
  }

  /** Reading a run through takes ten times as long as the checksum of all its bytes. */
  async function anew(
    runId: string,
    looks: string,
    stored: Stored | undefined,
  ): Promise<Result<Stored, FileProblem>> {
    const folder = path.join(runsFolder, runId);
    const contents = await contentsOf(files, folder);
    if (!contents.ok) return contents;
    if (stored?.contents === contents.value) return succeed({ ...stored, looks });
    const derived = await summariseRun(files, folder, runId);
    if (!derived.ok) return derived;
    const { summary, header, report } = derived.value;
    return succeed({
      version: 9,
      looks,
      contents: contents.value,
      summary,
      header,
      hasTornEnd: report.torn.length > 0,
    });
  }

  return { get, forget: (runId) => known.delete(runId) };
}

async function readStored(files: FileLayer, folder: string): Promise<Stored | undefined> {
  const text = await readText(files, path.join(folder, summaryFile));
  if (!text.ok) return undefined;
  return storedSchema.safeParse(parseJson(text.value)).data;
}
