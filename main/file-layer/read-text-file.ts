import { readFile } from 'node:fs/promises';
import { fail, type Result, succeed } from '#shared-core';
import { type FileProblem, fileProblem } from './file-problem.ts';

/**
 * A text file in whatever encoding loggers write: UTF-8 or UTF-16 by its mark or by every second byte
 * being zero, else UTF-8 if it is valid, else Windows-1252.
 */
export async function readTextFile(path: string): Promise<Result<string, FileProblem>> {
  try {
    return succeed(decodeText(await readFile(path)));
  } catch (error) {
    return fail(fileProblem(error, path));
  }
}

function decodeText(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  const unmarked = unmarkedUtf16(bytes);
  if (unmarked !== null) return new TextDecoder(unmarked).decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** Western text in UTF-16 without a mark: among its first bytes nearly every second one is zero. */
function unmarkedUtf16(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  const start = bytes.subarray(0, 512);
  const zeros = [0, 0];
  for (const [index, byte] of start.entries()) {
    if (byte === 0) zeros[index % 2] = (zeros[index % 2] ?? 0) + 1;
  }
  const [even = 0, odd = 0] = zeros;
  const most = 0.4 * start.length;
  if (start.length < 8 || Math.min(even, odd) > 0.02 * start.length) return null;
  if (odd > most) return 'utf-16le';
  return even > most ? 'utf-16be' : null;
}
