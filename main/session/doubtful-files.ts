import path from 'node:path';
import type { RequestAnswer } from '#shared-core';
import { doubtfulFerments } from '../ferments/index.ts';
import type { FileLayer } from '../file-layer/index.ts';
import { type KeptFormat, readKeptFile } from '../kept-file/index.ts';
import { probesFileName, probesFormat } from '../probe/index.ts';
import { rigsFileName, rigsFormat } from '../rigs/index.ts';

type DoubtfulFile = RequestAnswer<'kept-files/doubtful'>['files'][number];

/** Which of the files that are kept from one lesson to the next can't be read as they should; looked at before any is written. */
export async function doubtfulFiles(
  files: FileLayer,
  runsFolder: string,
): Promise<readonly DoubtfulFile[]> {
  const found: DoubtfulFile[] = [];
  const judge = async <T>(holds: DoubtfulFile['holds'], name: string, format: KeptFormat<T>) => {
    const read = await readKeptFile(files, path.join(runsFolder, name), format);
    const state = read.ok ? read.value.state : 'none';
    if (state === 'newer' || state === 'not-understood') found.push({ name, holds, state });
  };
  await judge('rigs', rigsFileName, rigsFormat);
  await judge('probes', probesFileName, probesFormat);
  for (const ferment of await doubtfulFerments(files, runsFolder)) {
    found.push({ holds: 'ferment', ...ferment });
  }
  return found;
}
