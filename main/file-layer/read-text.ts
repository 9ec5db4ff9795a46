import { type Result, succeed } from '#shared-core';
import type { FileLayer } from './file-layer.ts';
import type { FileProblem } from './file-problem.ts';

/** A whole small UTF-8 file. */
export async function readText(
  files: FileLayer,
  path: string,
): Promise<Result<string, FileProblem>> {
  const bytes = await readBytes(files, path);
  return bytes.ok ? succeed(new TextDecoder().decode(bytes.value)) : bytes;
}

/** A whole small file as it lies there. */
export async function readBytes(
  files: FileLayer,
  path: string,
): Promise<Result<Uint8Array, FileProblem>> {
  const size = await files.sizeBytes(path);
  return size.ok ? files.read(path, 0, size.value) : size;
}
