import path from 'node:path';
import { fail, type Result, succeed } from '#shared-core';
import type { FileLayer } from './file-layer.ts';
import type { FileProblem } from './file-problem.ts';

/**
 * Whether a file or folder that was not found is really not there. Where a drive is pulled out all that is on it is missing, and nothing of it
 * may be taken for a beginning: what is then written would take the place of what is there when the drive is back.
 */
export async function confirmMissing(
  files: FileLayer,
  at: string,
): Promise<Result<void, FileProblem>> {
  const listed = await files.list(path.dirname(at));
  if (!listed.ok) return listed;
  const name = path.basename(at);
  return listed.value.some((entry) => entry.name === name)
    ? fail({ kind: 'failed', path: at, message: 'It was away for a moment.' })
    : succeed(undefined);
}
