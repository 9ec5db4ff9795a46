import {
  createLogScanner,
  type DamagedStretch,
  type Result,
  type ScannedItem,
  succeed,
} from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';

const chunkBytes = 1_048_576;

/** Reads one log file piece by piece, of a megabyte unless said; ends with its torn tail, if it has one. */
export async function* scanFile(
  files: FileLayer,
  path: string,
  pieceBytes = chunkBytes,
): AsyncGenerator<readonly ScannedItem[], Result<DamagedStretch | null, FileProblem>> {
  const scanner = createLogScanner();
  for (let offset = 0; ; ) {
    const chunk = await files.read(path, offset, pieceBytes);
    if (!chunk.ok) return chunk;
    if (chunk.value.length === 0) return succeed(scanner.end());
    offset += chunk.value.length;
    const { buffer, byteOffset, length } = chunk.value;
    yield scanner.push(Buffer.from(buffer, byteOffset, length).toString('latin1'));
  }
}
