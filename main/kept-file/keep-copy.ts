import path from 'node:path';
import { type Result, succeed } from '#shared-core';
import { type FileLayer, type FileProblem, readBytes, replaceFile } from '../file-layer/index.ts';

/**
 * Keeps these bytes beside the file, as `FILE.WHY` or `FILE.WHY-2`, `-3` …, whole or not at all. What lies there already is never
 * written over, and what was kept by an earlier try is not kept twice.
 */
export async function keepCopy(
  files: FileLayer,
  file: string,
  bytes: Uint8Array,
  why: string,
): Promise<Result<string, FileProblem>> {
  for (let number = 1; ; number += 1) {
    const copy = `${file}.${why}${number === 1 ? '' : `-${number}`}`;
    const found = await readBytes(files, copy);
    if (found.ok && Buffer.compare(found.value, bytes) === 0) {
      // By an earlier try, which may have ended before its name was on the disk.
      const named = await files.syncFolder(path.dirname(copy));
      return named.ok ? succeed(copy) : named;
    }
    if (found.ok) continue;
    if (found.error.kind !== 'missing') return found;
    const written = await replaceFile(files, copy, bytes);
    return written.ok ? succeed(copy) : written;
  }
}
