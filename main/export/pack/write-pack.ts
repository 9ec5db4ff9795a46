import path from 'node:path';
import {
  fail,
  type Monitor,
  type Result,
  type RunSettings,
  type RunStudy,
  succeed,
} from '#shared-core';
import type { FileLayer, FileProblem } from '../../file-layer/index.ts';
import { type PackProgress, packEntries } from './pack-entries.ts';
import { type PackRun, studyForPack } from './pack-run.ts';
import { replaceFileStream } from './replace-file-stream.ts';

export interface PackRequest {
  /** At least one. */
  readonly runs: readonly PackRun[];
  readonly createMonitor: (settings: RunSettings) => Monitor;
  /** Milliseconds since 1970. */
  readonly createdMs: number;
  readonly onProgress?: (progress: PackProgress) => void;
  /** Called before each run is worked through. */
  readonly onStudied?: (name: string, index: number, count: number) => void;
}

/**
 * Writes the export pack of one or several runs into a folder, each file at one stroke and the data package's
 * description last. Answers the paths written, relative to the folder.
 */
export async function writePack(
  request: PackRequest & { readonly outDir: string; readonly files: FileLayer },
): Promise<Result<readonly string[], FileProblem>> {
  const { outDir, files, createdMs, onProgress = () => {} } = request;
  // An old description must not speak for a pack that is only half written.
  const cleared = await files.remove(path.join(outDir, 'datapackage.json'));
  if (!cleared.ok && cleared.error.kind !== 'missing') return cleared;
  const written: string[] = [];
  for await (const { path: own, content } of packEntries(
    await studies(request),
    createdMs,
    onProgress,
  )) {
    const target = path.join(outDir, ...own.split('/'));
    const replaced = await replaceFileStream(files, target, content);
    if (!replaced.ok) return fail(replaced.error);
    written.push(own);
  }
  const synced = await files.syncFolder(outDir);
  return synced.ok ? succeed(written) : synced;
}

/** The runs of a pack, worked through one after the other. */
export async function studies({
  runs,
  createMonitor,
  onStudied = () => {},
}: PackRequest): Promise<readonly RunStudy[]> {
  const found: RunStudy[] = [];
  for (const [index, run] of runs.entries()) {
    onStudied(run.run.summary.name, index, runs.length);
    found.push(await studyForPack(run, createMonitor));
  }
  return found;
}
