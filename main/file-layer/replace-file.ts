import path from 'node:path';
import { fail, type Result } from '#shared-core';
import type { FileLayer } from './file-layer.ts';
import type { FileProblem } from './file-problem.ts';

/**
 * Writes a whole small file so that after a loss of power either the old or the new one is there:
 * write beside it, sync, rename over it, sync the folder.
 */
export async function replaceFile(
  files: FileLayer,
  target: string,
  content: string | Uint8Array,
): Promise<Result<void, FileProblem>> {
  const temporary = `${target}.part`;
  const removed = await files.remove(temporary);
  if (!removed.ok && removed.error.kind !== 'missing') return removed;
  const file = files.createAppend(temporary);
  if (!file.ok) return file;
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  const written = file.value.write(bytes);
  const synced = written.ok ? await file.value.sync() : written;
  await file.value.close();
  if (!synced.ok) return synced;
  if (!written.ok || written.value !== bytes.length) {
    return fail({ kind: 'full', path: temporary, message: 'The disk took only part of the file.' });
  }
  const renamed = await files.rename(temporary, target);
  return renamed.ok ? files.syncFolder(path.dirname(target)) : renamed;
}
