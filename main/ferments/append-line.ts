import path from 'node:path';
import { fail, type Result } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { type FermentLine, fermentLineText } from './ferment-lines.ts';

const lineFeed = 10;

/**
 * Adds a line and answers when it is on the disk. A line that an earlier loss of power tore stays as it is: the new one begins
 * behind a line feed of its own, so that nothing is ever cut or written over.
 */
export async function appendLine(
  files: FileLayer,
  file: string,
  line: FermentLine,
): Promise<Result<void, FileProblem>> {
  const isNew = line.kind === 'begun';
  const torn = isNew ? false : await endsTorn(files, file);
  const opened = isNew ? files.createAppend(file) : files.openAppend(file);
  if (!opened.ok) return opened;
  const bytes = Buffer.from(`${torn ? '\n' : ''}${fermentLineText(line)}`, 'utf8');
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
