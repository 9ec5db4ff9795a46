import type { ServiceProblem } from '#shared-core';

/** Why a file could not be read or written, as data. */
export interface FileProblem {
  readonly kind: 'full' | 'held' | 'read-only' | 'missing' | 'exists' | 'failed';
  readonly path: string;
  /** What the operating system said, for the log and for technicians. */
  readonly message: string;
}

/** Error codes of the operating systems; EFBIG and EDQUOT also mean "no room for more". */
const kindByCode: Readonly<Record<string, FileProblem['kind']>> = {
  ENOSPC: 'full',
  EDQUOT: 'full',
  EFBIG: 'full',
  EACCES: 'read-only',
  EPERM: 'read-only',
  EROFS: 'read-only',
  ENOENT: 'missing',
  ENOTDIR: 'missing',
  EEXIST: 'exists',
  ENOTEMPTY: 'exists',
};

/** Wraps what Node's file functions throw, once, at the edge. */
export function fileProblem(error: unknown, path: string): FileProblem {
  const code =
    typeof error === 'object' && error !== null && 'code' in error ? String(error.code) : '';
  const message = error instanceof Error ? error.message : String(error);
  return { kind: kindByCode[code] ?? 'failed', path, message };
}

/** The same problem in the words of the contract. */
export function serviceProblemOf({ kind, path, message }: FileProblem): ServiceProblem {
  switch (kind) {
    case 'full':
      return { kind: 'disk-full', path };
    case 'held':
      return { kind: 'disk-held', path };
    case 'read-only':
      return { kind: 'folder-read-only', path };
    default:
      return { kind: 'folder-unavailable', path, message };
  }
}
