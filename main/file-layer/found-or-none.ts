import path from 'node:path';
import { fail, type Result, succeed } from '#shared-core';
import type { FileLayer } from './file-layer.ts';
import type { FileProblem } from './file-problem.ts';

/**
 * What was found of a file or folder, or null where it is surely not there. Where a drive is pulled out all that is on it is missing, and nothing of it
 * may be taken for a beginning: what is then written would take the place of what is there when the drive is back.
 */
export async function foundOrNone<T>(
  files: FileLayer,
  at: string,
  found: Result<T, FileProblem>,
): Promise<Result<T | null, FileProblem>> {
  if (found.ok || found.error.kind !== 'missing') return found;
  const listed = await files.list(path.dirname(at));
  if (!listed.ok) return listed;
  const name = path.basename(at);
  return listed.value.some((entry) => entry.name === name)
    ? fail({ kind: 'failed', path: at, message: 'It was away for a moment.' })
    : succeed(null);
}
