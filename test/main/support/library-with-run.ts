import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { createRunLibrary, nodeFileLayer } from '#main';
import type { LogBody } from '#shared-core';
import { logText } from './log-text.ts';
import { createManualTime } from './manual-time.ts';
import { temporaryFolder } from './temporary-folder.ts';

/** A library on a real disk that holds one run of these records, each made at the second of its number. */
export async function libraryWithRun(runId: string, bodies: readonly LogBody[]) {
  const runsFolder = await temporaryFolder();
  await mkdir(path.join(runsFolder, runId));
  await writeFile(path.join(runsFolder, runId, 'run.jsonl'), logText(bodies), 'latin1');
  const { clock } = createManualTime();
  return createRunLibrary({ files: nodeFileLayer, clock, runsFolder, mayWrite: () => true });
}
