import path from 'node:path';
import { z } from 'zod';
import { succeed } from '#shared-core';
import type { FileLayer } from '../file-layer/index.ts';
import { createKeptFile, type KeptFormat } from '../kept-file/index.ts';

/** Folders of runs that have been there: one of them that is not found is away with its drive, and is not made in its place. */
export interface KnownFolders {
  has(folder: string): Promise<boolean>;
  note(folder: string): Promise<void>;
}

/** More sticks and shares than a department has; the one that was had the longest ago is forgotten. */
const mostKnown = 40;

const fileSchema = z.strictObject({
  format: z.literal('still-head-known-folders'),
  version: z.literal(1),
  folders: z.array(z.string()).max(mostKnown),
});

const knownFoldersFormat: KeptFormat<readonly string[]> = {
  version: 1,
  nothing: [],
  read(json) {
    const { data } = fileSchema.safeParse(json);
    return data === undefined ? null : { value: data.folders, isWhole: true };
  },
  written: (folders) => ({ format: 'still-head-known-folders', folders }),
};

/**
 * Kept in a file of this computer's own, which no stick takes along. A convenience: where it can't be read nothing is known, and
 * where it can't be written nothing is remembered.
 */
export function createKnownFolders(files: FileLayer, at: string): KnownFolders {
  const file = createKeptFile(files, at, knownFoldersFormat);
  return {
    async has(folder) {
      const known = await file.read();
      return known.ok && known.value.includes(path.resolve(folder));
    },
    async note(folder) {
      const own = path.resolve(folder);
      const known = await file.read();
      if (known.ok && known.value[0] === own) return;
      await files.makeFolder(path.dirname(at));
      await file.change((folders) =>
        succeed([own, ...folders.filter((other) => other !== own)].slice(0, mostKnown)),
      );
    },
  };
}

/** Where nothing is kept from one start to the next. */
export const noFoldersKnown: KnownFolders = {
  has: async () => false,
  note: async () => undefined,
};
