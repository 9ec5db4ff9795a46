import { appendFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import {
  continueRecorder,
  cutTornTail,
  emptyReport,
  type FileLayer,
  nodeFileLayer,
  readRunLog,
  readRunSoFar,
  startRecorder,
} from '#main';
import { createRandom, fail, type LogBody, succeed } from '#shared-core';
import { logHeader } from '../support/log-header.ts';
import { createManualTime, diskAtRest } from '../support/manual-time.ts';
import { createPowerLossDisk, soundDisk } from '../support/power-loss-disk.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const header = logHeader();
const reading = (timeS: number): LogBody => ({ kind: 'readings', readings: [[timeS, 'head', 20]] });

/** A disk whose second sync fails, so that the recording goes on in a second file. */
function withOneFailedSync(): FileLayer {
  let syncs = 0;
  return {
    ...nodeFileLayer,
    async createAppend(file) {
      const opened = await nodeFileLayer.createAppend(file);
      if (!opened.ok) return opened;
      const { write, sync, close } = opened.value;
      const message = 'The disk did not answer.';
      return succeed({
        write,
        close,
        async sync() {
          syncs += 1;
          return syncs === 2 ? fail({ kind: 'failed', path: file, message }) : sync();
        },
      });
    },
  };
}

test('a log of several files, torn at its end, goes on with the next number, and none is lost or doubled', async () => {
  const { clock, scheduler, pass } = createManualTime();
  const folder = await temporaryFolder();
  const setup = {
    files: nodeFileLayer,
    clock,
    scheduler,
    folder,
    header,
    onStatus: () => undefined,
  };
  const started = await startRecorder({ ...setup, files: withOneFailedSync() });
  if (!started.ok) throw new Error(started.error.message);
  for (let timeS = 1; timeS <= 20; timeS += 1) {
    started.value.append(reading(timeS), timeS, 'soon');
    await pass(1);
    await diskAtRest();
  }
  // Killed here, in the middle of a record.
  await appendFile(path.join(folder, 'run-2.jsonl'), '{"seq":21,"prev":"0');
  expect(await cutTornTail(nodeFileLayer, folder, 'run-2.jsonl')).toMatchObject({ ok: true });

  const read = await readRunSoFar(nodeFileLayer, folder);
  const past = read.ok ? read.value : null;
  if (past === null) throw new Error('There is nothing to go on from.');
  expect(past.logEnd).toMatchObject({ lastSegment: 2, seq: 20, timeS: 20 });
  const continued = await continueRecorder(setup, past.logEnd, past.memory);
  if (!continued.ok) throw new Error(continued.error.message);
  expect(continued.value.status()).toEqual({
    state: 'recording',
    savedToS: 20,
    problem: null,
    lostReadings: 0,
  });
  continued.value.append(reading(30), 30, 'now');
  expect(await continued.value.close()).toEqual({ ok: true });

  const report = emptyReport();
  const timesS: number[] = [];
  for await (const records of readRunLog(nodeFileLayer, folder, report)) {
    for (const { body } of records) {
      if (body.kind === 'readings') timesS.push(...body.readings.map(([timeS]) => timeS));
    }
  }
  expect(timesS).toEqual([...Array.from({ length: 20 }, (_, index) => index + 1), 30]);
  expect(report).toEqual(emptyReport());
});

async function timesIn(files: FileLayer, folder: string): Promise<readonly number[]> {
  const timesS: number[] = [];
  for await (const records of readRunLog(files, folder, emptyReport())) {
    for (const { body } of records) {
      if (body.kind === 'readings') timesS.push(...body.readings.map(([timeS]) => timeS));
    }
  }
  return timesS;
}

/**
 * What a failed sync threw away can still be read as long as the computer runs: by every program, and from no platter. Found by
 * seeds 2026220015 and 2026220033 of the simulated worlds.
 */
test.each([
  ['at once', 1],
  ['after the disk has failed for a minute', 60],
])(
  'what a killed program could not sync is saved before another goes on with the run: killed %s',
  async (_, failsForS) => {
    const folder = '/runs/one';
    let fails = false;
    const before = createManualTime();
    const disk = createPowerLossDisk({ ...soundDisk, failSync: () => fails }, before.scheduler);
    const { files } = disk;
    const setup = { files, folder, header, onStatus: () => undefined };
    const started = await startRecorder({ ...setup, ...before });
    if (!started.ok) throw new Error(started.error.message);
    const lastS = 10 + failsForS;
    for (let timeS = 1; timeS <= lastS; timeS += 1) {
      fails = timeS > 10;
      started.value.append(reading(timeS), timeS, 'soon');
      await before.pass(1);
    }
    // Killed here: its time stands still. The disk works again.
    fails = false;
    const read = await readRunSoFar(files, folder);
    const past = read.ok ? read.value : null;
    if (past === null) throw new Error('There is nothing to go on from.');
    const continued = await continueRecorder(
      { ...setup, ...createManualTime() },
      past.logEnd,
      past.memory,
    );
    // What found no file before it was killed is gone with its memory; it was never called saved.
    const { endS } = past;
    expect(endS).toBeGreaterThan(lastS - 3);
    expect(continued.ok && continued.value.status().savedToS).toBe(endS);
    for (let seed = 0; seed < 10; seed += 1) {
      const timesS = await timesIn(disk.losePower(createRandom(seed)), folder);
      expect(timesS).toEqual(Array.from({ length: endS }, (_, index) => index + 1));
    }
  },
);
