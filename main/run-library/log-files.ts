import { fail, type Result, succeed } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { labelsFile, segmentNumber } from '../recorder/index.ts';

/** Names of the files that tell of a run; a folder whose log has gone is no run that can be read, whatever else is left of it. */
export async function logFiles(
  files: FileLayer,
  folder: string,
): Promise<Result<readonly string[], FileProblem>> {
  const listed = await files.list(folder);
  if (!listed.ok) return listed;
  const names = listed.value
    .map(({ name }) => name)
    .filter((name) => name === labelsFile || segmentNumber(name) !== undefined);
  return names.some((name) => segmentNumber(name) !== undefined)
    ? succeed(names)
    : fail({ kind: 'missing', path: folder, message: 'There is no run log in this folder.' });
}
