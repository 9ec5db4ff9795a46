import path from 'node:path';
import { fail, type Result, succeed } from '#shared-core';

/** Why an address does not name a file of the window. */
export type PathProblem =
  | { readonly kind: 'malformed-address'; readonly address: string }
  | { readonly kind: 'outside-folder'; readonly address: string };

/** Control characters have no business in the address of a file we built. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: refusing them is the point.
const controlCharacter = /[\u0000-\u001f\u007f]/;

/**
 * The file under `folder` that the path part of an address names; `/` names `index.html`.
 *
 * Decodes once and then refuses, rather than repairs, whatever could leave the folder: `..` in any
 * encoding, backslashes (separators on Windows), NUL, drive letters and doubly encoded text. Links
 * on disk are a second door: {@link isInsideFolder} closes it with the real paths.
 */
export function resolveBoundPath(folder: string, addressPath: string): Result<string, PathProblem> {
  const malformed = fail({ kind: 'malformed-address', address: addressPath } as const);
  if (!addressPath.startsWith('/')) return malformed;
  let decoded: string;
  try {
    decoded = decodeURIComponent(addressPath);
  } catch {
    return malformed;
  }
  if (/[\\%:]/.test(decoded) || controlCharacter.test(decoded)) return malformed;
  const segments = decoded.split('/').slice(1);
  if (segments.includes('..') || segments.includes('.')) {
    return fail({ kind: 'outside-folder', address: addressPath });
  }
  const named = decoded.endsWith('/') ? `${decoded}index.html` : decoded;
  const file = path.resolve(folder, `.${named}`);
  return isInsideFolder(path.resolve(folder), file)
    ? succeed(file)
    : fail({ kind: 'outside-folder', address: addressPath });
}

/** Whether `file` lies below `folder`; both absolute. Give real paths to see through links. */
export function isInsideFolder(folder: string, file: string): boolean {
  const relative = path.relative(folder, file);
  const above = relative === '..' || relative.startsWith(`..${path.sep}`);
  return relative !== '' && !above && !path.isAbsolute(relative);
}
