import { type Result, succeed } from '#shared-core';
import type { FileLayer } from './file-layer.ts';
import type { FileProblem } from './file-problem.ts';

/** A whole small UTF-8 file. */
export async function readText(
  files: FileLayer,
  path: string,
): Promise<Result<string, FileProblem>> {
  const size = await files.sizeBytes(path);
  if (!size.ok) return size;
  const bytes = await files.read(path, 0, size.value);
  return bytes.ok ? succeed(new TextDecoder().decode(bytes.value)) : bytes;
}
