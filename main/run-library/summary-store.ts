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
import { logFiles } from './log-files.ts';
import { summariseRun } from './summarise-run.ts';

const storedSchema = z.strictObject({
  version: z.literal(7),
  /** Names and sizes of the files it was derived from; another figure makes it stale. */
  derivedFrom: z.string(),
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
    const derivedFrom = await fingerprint(files, folder);
    if (!derivedFrom.ok) return derivedFrom;
    const stored = known.get(runId) ?? (await readStored(files, folder));
    if (stored?.derivedFrom === derivedFrom.value && stored.summary.runId === runId) {
      known.set(runId, stored);
      return succeed(stored);
    }
    const derived = await summariseRun(files, folder, runId);
    if (!derived.ok) return derived;
    const { summary, header, report } = derived.value;
    const fresh: Stored = {
      version: 7,
      derivedFrom: derivedFrom.value,
      summary,
      header,
      hasTornEnd: report.torn.length > 0,
    };
    known.set(runId, fresh);
    // A summary that can't be stored is only slower next time.
    if (mayWrite())
      await replaceFile(
        files,
        path.join(folder, summaryFile),
        `${JSON.stringify(fresh, null, 1)}\n`,
      );
    return succeed(fresh);
  }

  return { get, forget: (runId) => known.delete(runId) };
}

async function readStored(files: FileLayer, folder: string): Promise<Stored | undefined> {
  const text = await readText(files, path.join(folder, summaryFile));
  if (!text.ok) return undefined;
  return storedSchema.safeParse(parseJson(text.value)).data;
}

async function fingerprint(files: FileLayer, folder: string): Promise<Result<string, FileProblem>> {
  const names = await logFiles(files, folder);
  if (!names.ok) return names;
  const parts: string[] = [];
  for (const name of [...names.value].sort()) {
    const size = await files.sizeBytes(path.join(folder, name));
    // A recorder whose disk takes nothing begins files and takes them away again.
    if (!size.ok && size.error.kind === 'missing') continue;
    if (!size.ok) return size;
    parts.push(`${name}:${size.value}`);
  }
  return succeed(parts.join(' '));
}
