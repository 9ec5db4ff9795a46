import { readFile, realpath } from 'node:fs/promises';
import { fail, type Result, succeed } from '#shared-core';
import { mediaType } from './media-type.ts';
import { isInsideFolder, type PathProblem, resolveBoundPath } from './resolve-bound-path.ts';

export interface WindowFile {
  readonly content: Buffer<ArrayBuffer>;
  readonly mediaType: string;
}

export type WindowFileProblem =
  | PathProblem
  | { readonly kind: 'no-such-file'; readonly address: string };

/** Reads one file of the built window; a link that leads out of the folder counts as outside. */
export async function readWindowFile(
  folder: string,
  addressPath: string,
): Promise<Result<WindowFile, WindowFileProblem>> {
  const resolved = resolveBoundPath(folder, addressPath);
  if (!resolved.ok) return resolved;
  try {
    const [realFolder, realFile] = await Promise.all([realpath(folder), realpath(resolved.value)]);
    if (!isInsideFolder(realFolder, realFile)) {
      return fail({ kind: 'outside-folder', address: addressPath });
    }
    const content = await readFile(realFile);
    return succeed({ content, mediaType: mediaType(resolved.value) });
  } catch {
    return fail({ kind: 'no-such-file', address: addressPath });
  }
}
