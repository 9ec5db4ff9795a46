import path from 'node:path';
import { fail, type Result } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';

const lineFeed = 10;

export interface AddedLines {
  readonly text: string;
  /** They begin the file; there must be none of that name. */
  readonly isNew: boolean;
}

/**
 * Adds one or more whole lines and answers when they are on the disk. A line that an earlier loss of power tore stays as it is: the new ones begin
 * behind a line feed of its own, so that nothing is ever cut or written over.
 */
export async function appendLines(
  files: FileLayer,
  file: string,
  { text, isNew }: AddedLines,
): Promise<Result<void, FileProblem>> {
  const torn = isNew ? false : await endsTorn(files, file);
  const opened = isNew ? files.createAppend(file) : files.openAppend(file);
  if (!opened.ok) return opened;
  const bytes = Buffer.from(`${torn ? '\n' : ''}${text}`, 'utf8');
  const written = opened.value.write(bytes);
  const synced = written.ok ? await opened.value.sync() : written;
  await opened.value.close();
  if (!synced.ok) return synced;
  if (written.ok && written.value !== bytes.length) {
    return fail({ kind: 'full', path: file, message: 'The disk took only part of the line.' });
  }
  return isNew ? files.syncFolder(path.dirname(file)) : synced;
}

async function endsTorn(files: FileLayer, file: string): Promise<boolean> {
  const size = await files.sizeBytes(file);
  if (!size.ok || size.value === 0) return false;
  const last = await files.read(file, size.value - 1, 1);
  return last.ok && last.value[0] !== lineFeed;
}
