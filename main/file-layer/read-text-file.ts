import { readFile } from 'node:fs/promises';
import { fail, type Result, succeed } from '#shared-core';
import { type FileProblem, fileProblem } from './file-problem.ts';

/**
 * A text file in whatever encoding loggers write: UTF-8 or UTF-16 by its mark, else UTF-8 if it is
 * valid, else Windows-1252.
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
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
