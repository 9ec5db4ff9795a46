import { readFile } from 'node:fs/promises';
import { detectEncoding, fail, type Result, succeed } from '#shared-core';
import { type FileProblem, fileProblem } from './file-problem.ts';

/** A text file in whatever encoding loggers write; see {@link detectEncoding}. */
export async function readTextFile(path: string): Promise<Result<string, FileProblem>> {
  try {
    const bytes = await readFile(path);
    return succeed(new TextDecoder(detectEncoding(bytes)).decode(bytes));
  } catch (error) {
    return fail(fileProblem(error, path));
  }
}
