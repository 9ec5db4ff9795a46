import { readdir } from 'node:fs/promises';
import path from 'node:path';
import { type Result, succeed } from '#shared-core';
import { readWindowFile, type WindowFile, type WindowFileProblem } from './read-window-file.ts';
import { resolveBoundPath } from './resolve-bound-path.ts';

/** The files of the built window, by the path part of their addresses. */
export interface WindowFiles {
  read(addressPath: string): Promise<Result<WindowFile, WindowFileProblem>>;
}

/**
 * Reads each file once and, after the first, all others ahead: a window that is opened or reloaded while no disk answers gets its page. A
 * folder that is built anew while the program runs is seen after the next start.
 */
export function createWindowFiles(folder: string): WindowFiles {
  const kept = new Map<string, WindowFile>();
  let isReadAhead = false;

  async function readAndKeep(addressPath: string): Promise<Result<WindowFile, WindowFileProblem>> {
    const named = resolveBoundPath(folder, addressPath);
    if (!named.ok) return named;
    const known = kept.get(named.value);
    if (known !== undefined) return succeed(known);
    const found = await readWindowFile(folder, addressPath);
    if (found.ok) kept.set(named.value, found.value);
    return found;
  }

  async function readAhead(): Promise<void> {
    // What can't be read ahead is read, or refused, when it is asked for.
    const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
    for (const entry of entries) {
      const file = path.relative(folder, path.join(entry.parentPath, entry.name));
      if (entry.isFile()) await readAndKeep(`/${encodeURI(file.split(path.sep).join('/'))}`);
    }
  }

  return {
    async read(addressPath) {
      const found = await readAndKeep(addressPath);
      if (found.ok && !isReadAhead) {
        isReadAhead = true;
        void readAhead();
      }
      return found;
    },
  };
}
