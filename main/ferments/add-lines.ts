import { fail, type Result } from '#shared-core';
import { type FileLayer, type FileProblem, readBytes, replaceFile } from '../file-layer/index.ts';

const lineFeed = 10;

export interface AddedLines {
  readonly text: string;
  /** They begin the file; there must be none of that name. */
  readonly isNew: boolean;
}

/**
 * Adds one or more whole lines at one stroke and answers when they are on the disk; where they are not, the file stays as it was. All of it is
 * written anew: what is there may be what an earlier sync, perhaps another program's, failed to save, which can be read and is on no
 * disk. A line that a loss of power tore stays as it is: the new ones begin behind a line feed of their own.
 */
export async function addLines(
  files: FileLayer,
  file: string,
  { text, isNew }: AddedLines,
): Promise<Result<void, FileProblem>> {
  const found = await readBytes(files, file);
  if (isNew && found.ok) {
    return fail({ kind: 'exists', path: file, message: 'There is such a file already.' });
  }
  if (!found.ok && !(isNew && found.error.kind === 'missing')) return found;
  const before = found.ok ? found.value : new Uint8Array();
  const isTorn = before.length > 0 && before.at(-1) !== lineFeed;
  const added = Buffer.from(`${isTorn ? '\n' : ''}${text}`, 'utf8');
  return replaceFile(files, file, Buffer.concat([before, added]), { isNew });
}

/** Adds whole lines behind those that {@link addLines} put there. Should this fail, the file holds nobody knows what of them. */
export async function appendLines(
  files: FileLayer,
  file: string,
  text: string,
): Promise<Result<void, FileProblem>> {
  const opened = await files.openAppend(file);
  if (!opened.ok) return opened;
  const bytes = Buffer.from(text, 'utf8');
  const written = opened.value.write(bytes);
  const synced = written.ok ? await opened.value.sync() : written;
  await opened.value.close();
  if (!synced.ok) return synced;
  if (written.ok && written.value !== bytes.length) {
    return fail({ kind: 'full', path: file, message: 'The disk took only part of the line.' });
  }
  return synced;
}
