import { readFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { z } from 'zod';
import { nodeFileLayer, type RunToExport, replaceFile, systemClock, writePack } from '#main';
import {
  type BookEntries,
  createMonitor,
  fail,
  modelVersion,
  type Result,
  succeed,
  type Verdicts,
} from '#shared-core';
import { makeOutFolder } from './make-out-folder.ts';
import type { printedByVolume } from './printed-verdicts.ts';
import type { AnalyseSource } from './read-source.ts';

const packageFile = path.join(import.meta.dirname, '..', '..', 'package.json');

/** A file with what the monitor says of it. */
export interface AnalysedFile {
  readonly file: string;
  readonly source: AnalyseSource;
  readonly settings: NonNullable<AnalyseSource['settings']>;
  readonly verdicts: Verdicts;
  /** Of a table without times; null for a run with times. */
  readonly byVolume: ReturnType<typeof printedByVolume> | null;
}

/** Writes the analysis and the export pack into a folder; a file's name stands for the run it holds. */
export async function writeOut(
  folder: string,
  json: string,
  analysed: readonly AnalysedFile[],
  books: BookEntries | null,
): Promise<Result<void, string>> {
  const made = await makeOutFolder(folder);
  if (!made.ok) return made;
  const written = await writePack({
    runs: analysed.map((file) => ({ run: runOf(file), entries: books ?? undefined })),
    outDir: folder,
    files: nodeFileLayer,
    createMonitor,
    madeBy: { version: ownVersion(), modelVersion },
    createdMs: systemClock.wallMs(),
    onProgress: ({ file, filesDone, filesTotal }) => {
      if (process.stderr.isTTY)
        process.stderr.write(`\r\u001b[K${filesDone}/${filesTotal} ${file}`);
    },
  });
  if (process.stderr.isTTY) process.stderr.write('\r\u001b[K');
  if (!written.ok)
    return fail(`"${written.error.path}" can't be written: ${written.error.message}`);
  const kept = await replaceFile(nodeFileLayer, path.join(folder, 'analysis.json'), json);
  if (!kept.ok) return fail(`"${kept.error.path}" can't be written: ${kept.error.message}`);
  return succeed(undefined);
}

function ownVersion(): string {
  const packed = z.object({ version: z.string() });
  return packed.parse(JSON.parse(readFileSync(packageFile, 'utf8'))).version;
}

function runOf({ file, source, settings }: AnalysedFile): RunToExport {
  if (source.recorded !== null) return { ...source.recorded, settings };
  const { inputs, endS, lateMarks } = source;
  const name = path.basename(file).replace(/\.[^.]*$/, '');
  return {
    summary: {
      runId: name.replace(/[^A-Za-z0-9-]+/g, '-').toLowerCase(),
      name,
      notes: '',
      startedAtIso: '',
      durationS: endS,
      readings: inputs.filter(({ kind }) => kind === 'reading').length,
      ended: 'clean',
      rehearsal: false,
      imported: true,
      plateau: null,
      heatOffCalledS: null,
      damagedRecords: 0,
      unreadable: null,
    },
    settings,
    appVersion: ownVersion(),
    modelVersion,
    inputs,
    endS,
    lateMarks,
  };
}
