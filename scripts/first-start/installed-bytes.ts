import { lstatSync, readdirSync } from 'node:fs';
import path from 'node:path';

/** What the files of a folder hold together; 0 where there is none. Links are not followed. */
export function installedBytes(folder: string): number {
  const found = lstatSync(folder, { throwIfNoEntry: false });
  if (found === undefined) return 0;
  if (!found.isDirectory()) return found.size;
  return readdirSync(folder).reduce(
    (sum, name) => sum + installedBytes(path.join(folder, name)),
    0,
  );
}
