import {
  createLogScanner,
  type DamagedStretch,
  type Result,
  type ScannedItem,
  succeed,
} from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';

/** Read at once, for a file may be on a slow disk; and scanned at once, for whoever wants a part of it reads no further. */
const chunkBytes = 262_144;
const pieceBytes = 65_536;

interface ScanFrom {
  /** From which record on; the first of the file if left out. */
  readonly from?: Parameters<typeof createLogScanner>[0];
  /** Fewer, where only the first record is wanted. */
  readonly readBytes?: number;
}

/** Reads one log file piece by piece; ends with its torn tail, if it has one. */
export async function* scanFile(
  files: FileLayer,
  path: string,
  { from, readBytes = chunkBytes }: ScanFrom = {},
): AsyncGenerator<readonly ScannedItem[], Result<DamagedStretch | null, FileProblem>> {
  const scanner = createLogScanner(from);
  for (let offset = from?.offset ?? 0; ; ) {
    const chunk = await files.read(path, offset, readBytes);
    if (!chunk.ok) return chunk;
    const { buffer, byteOffset, length } = chunk.value;
    if (length === 0) return succeed(scanner.end());
    offset += length;
    for (let start = 0; start < length; start += pieceBytes) {
      const piece = Buffer.from(buffer, byteOffset + start, Math.min(pieceBytes, length - start));
      yield scanner.push(piece.toString('latin1'));
    }
  }
}
