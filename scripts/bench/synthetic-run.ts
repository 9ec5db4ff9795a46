import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { createLogWriter, nodeFileLayer } from '#main';
import { defaultRunSettings, type LogBody } from '#shared-core';

/** Writes a run of that many head readings, one a second, without waiting for the seconds. */
export async function writeSyntheticRun(
  runsFolder: string,
  runId: string,
  readings: number,
  recordsPerSync: number,
): Promise<void> {
  const folder = path.join(runsFolder, runId);
  mkdirSync(folder, { recursive: true });
  const opened = await createLogWriter(nodeFileLayer, path.join(folder, 'run.jsonl'));
  if (!opened.ok) throw new Error(opened.error.message);
  let seq = 0;
  const startWallMs = 1_741_947_300_000;
  const write = (body: LogBody) => {
    const stamp = { seq, monoS: 1000 + seq, wallMs: startWallMs + seq * 1000 };
    const written = opened.value.write(body, stamp);
    if (!written.ok) throw new Error(written.error.message);
    seq += 1;
  };
  write({
    kind: 'header',
    header: {
      format: 'still-head-run-log',
      version: 1,
      runId,
      startedAtIso: new Date(startWallMs).toISOString(),
      settings: defaultRunSettings,
      appVersion: 'bench',
      modelVersion: 'bench',
      timeScale: 1,
      rehearsal: false,
      source: null,
      origin: 'recorded',
    },
  });
  for (let second = 0; second < readings; second += 1) {
    const value = 78 + (second % 16) / 16;
    write({ kind: 'readings', readings: [[second + 0.125, 'head', value]] });
    if ((second + 1) % recordsPerSync === 0) await opened.value.sync();
  }
  write({ kind: 'end', timeS: readings, how: 'clean' });
  if (recordsPerSync < readings) await opened.value.sync();
  await opened.value.close();
}
