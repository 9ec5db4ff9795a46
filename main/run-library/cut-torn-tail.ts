import path from 'node:path';
import type { DamagedStretch, Result } from '#shared-core';
import { fail, succeed } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { tornFile } from '../recorder/index.ts';
import { scanFile } from './scan-file.ts';

const pieceBytes = 1_048_576;

/**
 * Cuts what follows the last whole record of a log file, after copying it beside the file: a cut
 * line may still tell a technician something. Answers what was cut, or null.
 */
export async function cutTornTail(
  files: FileLayer,
  folder: string,
  fileName: string,
): Promise<Result<DamagedStretch | null, FileProblem>> {
  const file = path.join(folder, fileName);
  const scan = scanFile(files, file);
  let step = await scan.next();
  while (step.done !== true) step = await scan.next();
  if (!step.value.ok) return step.value;
  const torn = step.value.value;
  if (torn === null) return succeed(null);
  const copied = await copyStretch(
    files,
    file,
    torn,
    path.join(folder, tornFile(fileName, torn.offset)),
  );
  const named = copied.ok ? await files.syncFolder(folder) : copied;
  const cut = named.ok ? await files.truncate(file, torn.offset) : named;
  return cut.ok ? succeed(torn) : cut;
}

async function copyStretch(
  files: FileLayer,
  from: string,
  { offset, bytes }: DamagedStretch,
  to: string,
): Promise<Result<void, FileProblem>> {
  const target = await files.createAppend(to);
  // Left by an earlier try that was itself cut off before the file was cut: the copy is made anew.
  if (!target.ok && target.error.kind === 'exists') {
    const removed = await files.remove(to);
    return removed.ok ? copyStretch(files, from, { offset, bytes }, to) : removed;
  }
  if (!target.ok) return target;
  try {
    for (let done = 0; done < bytes; ) {
      const piece = await files.read(from, offset + done, Math.min(pieceBytes, bytes - done));
      if (!piece.ok) return piece;
      const written = target.value.write(piece.value);
      if (!written.ok) return written;
      if (written.value !== piece.value.length || written.value === 0) {
        return fail({ kind: 'full', path: to, message: 'The torn end could not be kept.' });
      }
      // A piece at a time is on its way to the disk.
      const synced = await target.value.sync();
      if (!synced.ok) return synced;
      done += written.value;
    }
    return succeed(undefined);
  } finally {
    await target.value.close();
  }
}
