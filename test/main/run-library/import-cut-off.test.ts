import { mkdir, readdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { createRunLibrary, type FileLayer, importRun, nodeFileLayer } from '#main';
import { createMonitor, createRandom, defaultRunSettings, fail } from '#shared-core';
import { createManualTime } from '../support/manual-time.ts';
import { createPowerLossDisk, soundDisk } from '../support/power-loss-disk.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const table = `time_s,head_degC,marks\n${Array.from({ length: 900 }, (_, row) => `${row},20,\n`).join('')}901,,run-ended\n901,,liquid-mass liquid=residue massG=310\n`;

function libraryOn(files: FileLayer, runsFolder = '/runs') {
  const { clock } = createManualTime();
  const given = { files, clock, runsFolder, mayWrite: () => true };
  const library = createRunLibrary(given);
  const app = { version: '0.7.0', modelVersion: '12' };
  const take = () =>
    importRun(
      { ...given, library, createMonitor, app },
      {
        content: Buffer.from(table),
        encoding: 'auto',
        mapping: null,
        settings: defaultRunSettings,
        startedAtIso: null,
      },
    );
  return { library, take, wallMs: clock.wallMs() };
}

/** The disk as a program sees it that comes to its end after so many operations. */
function endingAfter(files: FileLayer, operations: number) {
  let done = 0;
  const isOver = () => {
    done += 1;
    return done > operations;
  };
  const gone = (at: string) => fail({ kind: 'failed', path: at, message: 'ended' } as const);
  const ending: FileLayer = {
    ...files,
    claimFolder: async (at) => (isOver() ? gone(at) : files.claimFolder(at)),
    async createAppend(at) {
      if (isOver()) return gone(at);
      const opened = await files.createAppend(at);
      if (!opened.ok) return opened;
      const { write, sync, close } = opened.value;
      return {
        ok: true,
        value: {
          write: (bytes) => (isOver() ? gone(at) : write(bytes)),
          sync: async () => (isOver() ? gone(at) : sync()),
          close,
        },
      };
    },
    syncFolder: async (at) => (isOver() ? gone(at) : files.syncFolder(at)),
    rename: async (from, to) => (isOver() ? gone(from) : files.rename(from, to)),
    remove: async (at) => (isOver() ? gone(at) : files.remove(at)),
  };
  return { files: ending, done: () => done };
}

test('wherever the power is cut while a table is taken in, the run is there whole or not at all, and nothing is left beside it', async () => {
  const newDisk = () => createPowerLossDisk(soundDisk, createManualTime().scheduler);
  const whole = endingAfter(newDisk().files, Number.POSITIVE_INFINITY);
  expect((await libraryOn(whole.files).take()).ok).toBe(true);
  const found = new Set<number>();
  for (let operations = 0; operations <= whole.done(); operations += 1) {
    const disk = newDisk();
    const answer = await libraryOn(endingAfter(disk.files, operations).files).take();
    for (let seed = 0; seed < 6; seed += 1) {
      const files = disk.losePower(createRandom(`${operations} ${seed}`));
      const { library } = libraryOn(files);
      await library.recoverAll();
      const listed = await library.list();
      const runs = listed.ok ? listed.value : [];
      if (answer.ok) expect(runs.length).toBe(1);
      for (const run of runs) {
        expect([operations, run]).toMatchObject([
          operations,
          { readings: 900, ended: 'clean', damagedRecords: 0, unreadable: null },
        ]);
        const page = await library.page(run.runId, 0);
        expect(page.ok && page.value.lateMarks).toHaveLength(1);
      }
      const entries = await files.list('/runs');
      expect(entries.ok && entries.value.map(({ name }) => name)).toEqual(
        runs.map(({ runId }) => runId),
      );
      found.add(runs.length);
    }
  }
  expect([...found].sort()).toEqual([0, 1]);
});

test('while a table is taken in, no part of it is a run of the library', async () => {
  const runsFolder = await temporaryFolder();
  const seen: unknown[] = [];
  const createAppend: FileLayer['createAppend'] = async (at) => {
    seen.push(libraryOn(nodeFileLayer, runsFolder).library.list());
    return await nodeFileLayer.createAppend(at);
  };
  expect((await libraryOn({ ...nodeFileLayer, createAppend }, runsFolder).take()).ok).toBe(true);
  expect(seen.length).toBeGreaterThan(2);
  const none = { ok: true, value: [] };
  expect(await Promise.all(seen.slice(0, 3))).toEqual([none, none, none]);
});

test('a run and a table that begin in the same second never get one name, whoever is first', async () => {
  const { library, wallMs } = libraryOn(nodeFileLayer, await temporaryFolder());
  const made = await Promise.all([
    library.makeFolderAside(wallMs),
    library.makeRunFolder(wallMs),
    library.makeFolderAside(wallMs),
    library.makeRunFolder(wallMs),
  ]);
  expect(new Set(made.map((one) => one.ok && one.value.runId)).size).toBe(4);
});

test('a name that was taken in the other form meanwhile is given up', async () => {
  const runsFolder = await temporaryFolder();
  let isFirst = true;
  const claimFolder: FileLayer['claimFolder'] = async (at) => {
    // Another process, between the look and the claim.
    if (isFirst) await mkdir(at.replace(/\.part$/, ''));
    isFirst = false;
    return nodeFileLayer.claimFolder(at);
  };
  const { library, wallMs } = libraryOn({ ...nodeFileLayer, claimFolder }, runsFolder);
  expect(await library.makeFolderAside(wallMs)).toMatchObject({
    value: { runId: '20250314T101500Z-2' },
  });
  expect((await readdir(runsFolder)).sort()).toEqual([
    '20250314T101500Z',
    '20250314T101500Z-2.part',
  ]);
});

test('what people keep beside the runs is not swept away', async () => {
  const runsFolder = await temporaryFolder();
  const kept = ['20250314T101500Z', 'holiday.part', 'notes.part', 'pictures'];
  for (const name of kept) await mkdir(path.join(runsFolder, name));
  await writeFile(path.join(runsFolder, '20250314T101501Z.part'), 'a file');
  await mkdir(path.join(runsFolder, '20250314T101500Z-2.part'));
  await libraryOn(nodeFileLayer, runsFolder).library.recoverAll();
  expect((await readdir(runsFolder)).sort()).toEqual([...kept, '20250314T101501Z.part'].sort());
});
