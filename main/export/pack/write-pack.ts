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
import { distillationPackKind } from './distillation-pack-kind.ts';
import { type PackProgress, packEntries } from './pack-entries.ts';
import type { OnStudied, PackOrder } from './pack-order.ts';
import { type MadeBy, type PackRun, studyForPack } from './pack-run.ts';
import { replaceFileStream } from './replace-file-stream.ts';

export interface PackRequest {
  /** At least one. */
  readonly runs: readonly PackRun[];
  readonly createMonitor: (settings: RunSettings) => Monitor;
  /** The program that packs, and the version of what its monitor makes of a run. */
  readonly madeBy: MadeBy;
  /** Milliseconds since 1970. */
  readonly createdMs: number;
  readonly onProgress?: (progress: PackProgress) => void;
  readonly onStudied?: OnStudied;
}

/**
 * Writes the export pack of one or several runs into a folder, each file at one stroke and the data package's
 * description last. Answers the paths written, relative to the folder.
 */
export async function writePack(
  request: PackRequest & { readonly outDir: string; readonly files: FileLayer },
): Promise<Result<readonly string[], FileProblem>> {
  const { outDir, files, createdMs, onProgress = () => {}, onStudied = () => {} } = request;
  // An old description must not speak for a pack that is only half written.
  const cleared = await files.remove(path.join(outDir, 'datapackage.json'));
  if (!cleared.ok && cleared.error.kind !== 'missing') return cleared;
  const written: string[] = [];
  const { kind, work } = distillationsOrder(request);
  for await (const { path: own, content } of packEntries(
    kind,
    await work(onStudied),
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

/** The pack of some distillations, to be made. */
export function distillationsOrder({
  runs,
  createMonitor,
  madeBy,
  createdMs,
}: PackRequest): PackOrder<RunStudy> {
  return {
    kind: distillationPackKind,
    createdMs,
    async work(onStudied) {
      const found: RunStudy[] = [];
      for (const [index, run] of runs.entries()) {
        onStudied(run.run.summary.name, index, runs.length);
        found.push(await studyForPack(run, createMonitor, madeBy));
      }
      return found;
    },
  };
}
