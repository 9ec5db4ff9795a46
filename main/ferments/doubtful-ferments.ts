import path from 'node:path';
import { type FileLayer, readText } from '../file-layer/index.ts';
import { fermentOfText, isOfNewerVersion } from './ferment-lines.ts';

export const fermentFileNames = /^ferment-([0-9A-Za-z][0-9A-Za-z-]{0,79})\.jsonl$/;

/** The files of ferments that no list holds, because their beginning can't be read. */
export async function doubtfulFerments(
  files: FileLayer,
  runsFolder: string,
): Promise<readonly { readonly name: string; readonly state: 'newer' | 'not-understood' }[]> {
  const listed = await files.list(runsFolder);
  if (!listed.ok) return [];
  const found: { name: string; state: 'newer' | 'not-understood' }[] = [];
  for (const { name } of listed.value.filter((entry) => fermentFileNames.test(entry.name))) {
    const text = await readText(files, path.join(runsFolder, name));
    if (!text.ok || fermentOfText(text.value) !== null) continue;
    found.push({ name, state: isOfNewerVersion(text.value) ? 'newer' : 'not-understood' });
  }
  return found;
}
