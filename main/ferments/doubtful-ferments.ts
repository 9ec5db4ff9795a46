import path from 'node:path';
import { z } from 'zod';
import { parseJson } from '#shared-core';
import { type FileLayer, readText } from '../file-layer/index.ts';
import { fermentLog, fermentOfText } from './ferment-lines.ts';
import { warmthFileNames } from './warmth-file.ts';
import { warmthLog, warmthOfText } from './warmth-lines.ts';

export const fermentFileNames = /^ferment-([0-9A-Za-z][0-9A-Za-z-]{0,79})\.jsonl$/;

const kinds = [
  {
    names: fermentFileNames,
    log: fermentLog,
    isRead: (text: string) => fermentOfText(text) !== null,
  },
  {
    names: warmthFileNames,
    log: warmthLog,
    isRead: (text: string) => warmthOfText(text).keeping !== null,
  },
] as const;

/** The files of ferments, and of how warm they were kept, that nothing is made of, because their beginning can't be read. */
export async function doubtfulFerments(
  files: FileLayer,
  runsFolder: string,
): Promise<readonly { readonly name: string; readonly state: 'newer' | 'not-understood' }[]> {
  const listed = await files.list(runsFolder);
  if (!listed.ok) return [];
  const found: { name: string; state: 'newer' | 'not-understood' }[] = [];
  for (const { names, log, isRead } of kinds) {
    for (const { name } of listed.value.filter((entry) => names.test(entry.name))) {
      const text = await readText(files, path.join(runsFolder, name));
      if (!text.ok || isRead(text.value)) continue;
      found.push({ name, state: isOfNewerVersion(text.value, log) ? 'newer' : 'not-understood' });
    }
  }
  return found;
}

const begunByAnySchema = z.object({ format: z.string(), version: z.number().int() });

/** Whether its first line says that a later version of this program wrote it. */
function isOfNewerVersion(
  text: string,
  { format, version }: { readonly format: string; readonly version: number },
): boolean {
  const { data } = begunByAnySchema.safeParse(parseJson(text.split('\n', 1)[0] ?? ''));
  return data !== undefined && data.format === format && data.version > version;
}
