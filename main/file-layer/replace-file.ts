import path from 'node:path';
import { fail, type Result } from '#shared-core';
import type { FileLayer } from './file-layer.ts';
import type { FileProblem } from './file-problem.ts';
import { readBytes } from './read-text.ts';

/**
 * Writes a whole small file so that after a loss of power either the old or the new one is there:
 * write beside it, sync, rename over it, sync the folder. What is told as not kept does not show either: where the disk does not
 * keep the new one's name, the old one is put back. Where it is new, nothing may be there to rename over: what is may have come back
 * with its drive since it was looked for.
 */
export async function replaceFile(
  files: FileLayer,
  target: string,
  content: string | Uint8Array,
  { isNew = false }: { readonly isNew?: boolean } = {},
): Promise<Result<void, FileProblem>> {
  const before = await readBytes(files, target);
  if (!before.ok && before.error.kind !== 'missing') return before;
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  const renamed = await renameOver(files, target, bytes, isNew);
  const named = renamed.ok ? await files.syncFolder(path.dirname(target)) : renamed;
  if (named.ok || !renamed.ok) return named;
  const putBack = before.ok
    ? await renameOver(files, target, before.value, false)
    : await files.remove(target);
  if (putBack.ok) return named;
  const { message } = named.error;
  return fail({ ...named.error, message: `${message} (It shows all the same, for the present.)` });
}

async function renameOver(
  files: FileLayer,
  target: string,
  bytes: Uint8Array,
  isNew: boolean,
): Promise<Result<void, FileProblem>> {
  const temporary = `${target}.part`;
  const removed = await files.remove(temporary);
  if (!removed.ok && removed.error.kind !== 'missing') return removed;
  const file = await files.createAppend(temporary);
  if (!file.ok) return file;
  const written = file.value.write(bytes);
  const synced = written.ok ? await file.value.sync() : written;
  await file.value.close();
  if (!synced.ok) return synced;
  if (!written.ok || written.value !== bytes.length) {
    return fail({ kind: 'full', path: temporary, message: 'The disk took only part of the file.' });
  }
  const before = isNew ? await files.sizeBytes(target) : null;
  if (before?.ok) {
    await files.remove(temporary);
    return fail({ kind: 'exists', path: target, message: 'There is such a file already.' });
  }
  if (before !== null && before.error.kind !== 'missing') return before;
  return files.rename(temporary, target);
}
