import { readdir } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { lockFolder, type nodeFileLayer, systemScheduler } from '#main';
import { eventually } from '../../support/eventually.ts';
import { createManualTime } from '../support/manual-time.ts';
import { ask, setUpSession } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';
import { recordedHeader, writeCutOffRun } from '../support/write-cut-off-run.ts';

/** A run that broke off so long before the clocks of a bench begin. */
async function cutOff(agoS: number) {
  const runsFolder = await temporaryFolder();
  const { runId } = await writeCutOffRun(runsFolder, {
    header: recordedHeader,
    inputs: [
      { kind: 'reading', timeS: 1, channel: 'head', value: 20, unit: '°C', quality: 'good' },
    ],
    brokeOffS: 1.5,
    agoS,
    clock: createManualTime().clock,
  });
  const logs = async () =>
    (await readdir(path.join(runsFolder, runId))).filter((name) => name.startsWith('run')).sort();
  return { runsFolder, runId, logs };
}

const madeSure = ['run-2.jsonl', 'run-3.jsonl', 'run.jsonl'];

test('a run that was cut off long ago is made sure when the program starts, and told as kept', async () => {
  const { runsFolder, runId, logs } = await cutOff(7200);
  const { session } = await setUpSession({ runsFolder });
  expect(await logs()).toEqual(madeSure);
  const { runs } = await ask(session, 'runs/list', {});
  expect(runs).toMatchObject([{ runId, ended: 'cut-off', readings: 1 }]);
  expect(runs[0]).not.toHaveProperty('unsure');
});

test('one that may still go on waits for nothing, is told as perhaps not kept, and made sure when the program is closed', async () => {
  const { runsFolder, runId, logs } = await cutOff(60);
  const { session } = await setUpSession({ runsFolder });
  expect(await ask(session, 'run/unfinished', {})).toMatchObject({ run: { runId } });
  expect(await logs()).toEqual(['run.jsonl']);
  expect((await ask(session, 'runs/list', {})).runs).toMatchObject([{ runId, unsure: true }]);
  await session.close();
  expect(await logs()).toEqual(madeSure);
});

test('one in a folder that another program had is made sure once that one has left it', async () => {
  const { runsFolder, logs } = await cutOff(7200);
  const other = await lockFolder(runsFolder, systemScheduler);
  const { time } = await setUpSession({ runsFolder });
  await other?.release();
  await time.pass(6);
  await eventually(async () => expect(await logs()).toEqual(madeSure));
});

test('where the disk takes nothing, the program starts all the same and tells the run as perhaps not kept', async () => {
  const { runsFolder, runId, logs } = await cutOff(7200);
  const createAppend: typeof nodeFileLayer.createAppend = async (at) => ({
    ok: false,
    error: { kind: 'read-only', path: at, message: 'EROFS: read-only file system' },
  });
  const { session } = await setUpSession({ runsFolder, faults: { createAppend } });
  expect((await ask(session, 'runs/list', {})).runs).toMatchObject([{ runId, unsure: true }]);
  expect(await logs()).toEqual(['run.jsonl']);
});
