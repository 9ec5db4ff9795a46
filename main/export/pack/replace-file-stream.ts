import path from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { fail, type Result, succeed } from '#shared-core';
import type { AppendFile, FileLayer, FileProblem } from '../../file-layer/index.ts';
import type { ZipEntry } from '../zip-stream.ts';

/** So much is on its way to the disk at most, and so long the run's own record may have to wait for it [bytes]; chosen here. */
const mostOnItsWay = 4 * 1024 * 1024;

/**
 * Writes a file of any length so that under its name there is either the old one or the whole new one: written
 * beside it, synced, renamed over it, its name synced. What was begun and failed is removed.
 */
export async function replaceFileStream(
  files: FileLayer,
  target: string,
  content: ZipEntry['content'],
): Promise<Result<void, FileProblem>> {
  const temporary = `${target}.part`;
  const made = await files.makeFolder(path.dirname(target));
  if (!made.ok) return made;
  await files.remove(temporary);
  const opened = await files.createAppend(temporary);
  if (!opened.ok) return opened;
  const written = await writeAll(opened.value, temporary, content);
  const synced = written.ok ? await opened.value.sync() : written;
  await opened.value.close();
  const renamed = synced.ok ? await files.rename(temporary, target) : synced;
  if (renamed.ok) return files.syncFolder(path.dirname(target));
  await files.remove(temporary);
  return renamed;
}

async function writeAll(
  file: AppendFile,
  temporary: string,
  content: ZipEntry['content'],
): Promise<Result<void, FileProblem>> {
  const encoder = new TextEncoder();
  let onItsWay = 0;
  for await (const piece of content) {
    const bytes = typeof piece === 'string' ? encoder.encode(piece) : piece;
    const written = file.write(bytes);
    if (!written.ok) return written;
    if (written.value !== bytes.length) {
      const message = 'The disk took only part of the file.';
      return fail({ kind: 'full', path: temporary, message });
    }
    onItsWay += bytes.length;
    if (onItsWay > mostOnItsWay) {
      const synced = await file.sync();
      if (!synced.ok) return synced;
      onItsWay = 0;
    }
    await setImmediate();
  }
  return succeed(undefined);
}
