import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { projectRoot } from '../../scripts/testing/step.ts';
import { encodeRecord, firstPreviousChecksum, type LogBody } from '../../shared-core/index.ts';
import { logHeader } from '../main/support/log-header.ts';
import { temporaryFolder } from '../main/support/temporary-folder.ts';

test('check-runs tells of a whole run where its missing readings were lost', async () => {
  const runId = '20250314T101503Z';
  const bodies: readonly LogBody[] = [
    { kind: 'header', header: logHeader(runId) },
    { kind: 'dropped', timeS: 9, readings: 3, fromS: 6, toS: 8 },
    { kind: 'dropped', timeS: 9, readings: 4, fromS: 2, toS: 5, where: 'probe-process' },
    { kind: 'end', timeS: 20, how: 'clean' },
  ];
  let previous = firstPreviousChecksum;
  const lines = bodies.map((body, seq) => {
    const { line, checksum } = encodeRecord(body, { seq, monoS: seq, wallMs: 0 }, previous);
    previous = checksum;
    return line;
  });
  const folder = await temporaryFolder();
  mkdirSync(path.join(folder, runId));
  writeFileSync(path.join(folder, runId, 'run.jsonl'), lines.join(''), 'latin1');
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['scripts/run.mjs', 'check-runs', folder],
    { cwd: projectRoot, encoding: 'utf8' },
  );
  expect([status, stderr, stdout.trim().split('\n')]).toEqual([
    0,
    '',
    [
      `${runId}: whole, 0 records missing, 0 not understood`,
      '  3 readings between 6.0 and 8.0 s of the run are missing: the disk took nothing, and memory had no more room',
      '  4 readings between 2.0 and 5.0 s of the run are missing: more came from the probe than could be taken',
      '1 whole, 0 with a cut-off end, 0 damaged, 0 unreadable; 0 with moments that cannot be right',
    ],
  ]);
});
