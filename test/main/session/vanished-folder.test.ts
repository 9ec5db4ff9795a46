import { mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import type { Session } from '#main';
import { defaultRunSettings, setUpSchema, usualWarmthBand } from '#shared-core';
import { eventually } from '../../support/eventually.ts';
import { diskAtRest } from '../support/manual-time.ts';
import { ask, head, setUpSession, teacher } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

type Bench = Awaited<ReturnType<typeof setUpSession>>;
type Time = Bench['time'];

/** A folder of runs on a stick that can be pulled out and put in again. */
async function onStick() {
  const above = await temporaryFolder();
  const stick = path.join(above, 'stick');
  const elsewhere = path.join(above, 'pulled-out');
  await mkdir(stick);
  return {
    runsFolder: path.join(stick, 'runs'),
    async pullOut() {
      await rename(stick, elsewhere);
      // Where the stick was nothing can be made.
      await writeFile(stick, '');
    },
    async putIn() {
      await rm(stick);
      await rename(elsewhere, stick);
    },
  };
}

/** The same where the place that the stick has among the folders stays when it is pulled out, empty and for everybody to write. */
async function onMountedStick() {
  const above = await temporaryFolder();
  const place = path.join(above, 'stick');
  const elsewhere = path.join(above, 'pulled-out');
  await mkdir(place);
  return {
    place,
    runsFolder: path.join(place, 'runs'),
    async pullOut() {
      await rename(place, elsewhere);
      await mkdir(place);
    },
    async putIn() {
      await rm(place, { recursive: true });
      await rename(elsewhere, place);
    },
  };
}

/** Time passes, and the real disk gets its turns. */
async function pass(time: Time, seconds: number): Promise<void> {
  for (let second = 0; second < seconds; second += 1) {
    await time.pass(1);
    await diskAtRest();
  }
}

/** The same with a reading each second. */
async function hearFor({ time, probeHub }: Bench, seconds: number): Promise<void> {
  for (let second = 0; second < seconds; second += 1) {
    await pass(time, 1);
    const nowS = time.clock.monotonicS();
    probeHub.send('readings', [head(nowS, 22 + nowS / 16)]);
  }
}

const start = (session: Session) =>
  session.handle('run/start', { settings: defaultRunSettings }, teacher);
const charge = { volumeMl: 350, strengthAbv: 9 };
const unreachable = { ok: false, error: { kind: 'folder-unavailable' } };

test('a stick that was pulled out at rest is told as gone, and runs begin on it when it is back', async () => {
  const { runsFolder, pullOut, putIn } = await onStick();
  const { session, time } = await setUpSession({ runsFolder });
  await pullOut();
  await pass(time, 10);
  expect(await start(session)).toMatchObject(unreachable);
  await putIn();
  await pass(time, 3);
  expect(await start(session)).toMatchObject({ ok: true });
});

test('nothing is written where a stick had its place: it would be out of sight once the stick is back', async () => {
  const { place, runsFolder, pullOut, putIn } = await onMountedStick();
  const { session, time } = await setUpSession({ runsFolder });
  await pullOut();
  await pass(time, 10);
  const table = Buffer.from('time_s,head_c\n0,20\n1,21\n');
  const { importId } = await ask(session, 'imports/begin', { bytes: table.length });
  await ask(session, 'imports/add', { importId, base64: table.toString('base64') });
  const settings = defaultRunSettings;
  const taken = { importId, encoding: 'auto', mapping: null, settings };
  const beganAtIso = new Date(time.clock.wallMs() - 86_400_000).toISOString();
  const stated = { name: 'Pear', beganAtIso, volumeMl: 1000, sugarG: null, wentIn: 'pear juice' };
  for (const [name, body] of [
    ['run/start', { settings }],
    ['imports/finish', taken],
    ['ferments/begin', { stated }],
    ['rigs/keep', { name: 'Lab 1', setUp: setUpSchema.parse({ name: 'Pear', charge }) }],
  ] as const) {
    expect(await session.handle(name, body, teacher), name).toMatchObject(unreachable);
  }
  expect(await readdir(place)).toEqual([]);
  await putIn();
  await pass(time, 3);
  expect(await start(session)).toMatchObject({ ok: true });
});

test('a program that is started without its stick makes no folder in its place, and begins runs once it is plugged in', async () => {
  const { place, runsFolder, pullOut, putIn } = await onMountedStick();
  const knownFoldersFile = path.join(await temporaryFolder(), 'state', 'known-folders.json');
  const before = await setUpSession({ runsFolder, knownFoldersFile });
  expect(await start(before.session)).toMatchObject({ ok: true });
  await before.session.close();
  await pullOut();
  const { session, time } = await setUpSession({ runsFolder, knownFoldersFile });
  expect(await start(session)).toMatchObject(unreachable);
  await pass(time, 12);
  expect(await readdir(place)).toEqual([]);
  await putIn();
  await eventually(async () => {
    await pass(time, 6);
    expect(await start(session)).toMatchObject({ ok: true });
  });
});

test('a program that began without its stick has it once it is plugged in, and keeps warm the ferment that is on it', async () => {
  const { runsFolder, pullOut, putIn } = await onStick();
  const before = await setUpSession({ runsFolder });
  const beganAtIso = new Date(before.time.clock.wallMs() - 86_400_000).toISOString();
  const { fermentId } = await ask(before.session, 'ferments/begin', {
    stated: { name: 'Pear', beganAtIso, volumeMl: 1000, sugarG: null, wentIn: 'pear juice' },
  });
  const keep = { fermentId, band: usualWarmthBand, channel: 'ferment' };
  await ask(before.session, 'warmth/keep', keep);
  await before.session.close();
  await pullOut();
  const { session, time } = await setUpSession({ runsFolder });
  expect(await start(session)).toMatchObject(unreachable);
  expect(await ask(session, 'warmth/now', {})).toEqual({ kept: null });
  await putIn();
  await pass(time, 6);
  await eventually(async () =>
    expect(await ask(session, 'warmth/now', {})).toMatchObject({ kept: { fermentId } }),
  );
  expect(await start(session)).toMatchObject({ ok: true });
});

test('a program that found the folder taken has it when the other is closed', async () => {
  const { runsFolder } = await onStick();
  const first = await setUpSession({ runsFolder });
  const second = await setUpSession({ runsFolder });
  expect(await start(second.session)).toMatchObject({ error: { kind: 'folder-in-use' } });
  await first.session.close();
  await pass(second.time, 6);
  await eventually(async () => expect(await start(second.session)).toMatchObject({ ok: true }));
});

test('a program that is closed while it waits for its folder leaves it to the next', async () => {
  const { runsFolder, pullOut, putIn } = await onStick();
  await pullOut();
  const { session, time } = await setUpSession({ runsFolder });
  await session.close();
  await putIn();
  await pass(time, 12);
  const next = await setUpSession({ runsFolder });
  expect(await start(next.session)).toMatchObject({ ok: true });
});

test('what was heard while the stick of a run was gone is on it when it is back, and no run is said to be missing meanwhile', async () => {
  const { runsFolder, pullOut, putIn } = await onStick();
  const bench = await setUpSession({ runsFolder });
  const { session } = bench;
  const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
  await hearFor(bench, 3);
  await pullOut();
  await hearFor(bench, 8);
  const label = { runId: '20250101T000000Z', name: 'Mine', notes: '' };
  expect(await session.handle('runs/rename', label, teacher)).toMatchObject(unreachable);
  await putIn();
  await hearFor(bench, 6);
  await ask(session, 'run/stop', {});
  const { inputs } = await ask(session, 'runs/read', { runId, fromIndex: 0 });
  expect(inputs.filter(({ kind }) => kind === 'reading')).toHaveLength(17);
});

const gone = (path: string) => ({ problem: { kind: 'folder-gone', path } });

test('a folder that is deleted while nothing is recorded is told as gone, is not made unasked, and runs begin in it once it is made anew', async () => {
  const runsFolder = path.join(await temporaryFolder(), 'runs');
  const { session, time } = await setUpSession({ runsFolder });
  const told: unknown[] = [];
  session.on('recording', (status) => told.push(status.problem));
  await rm(runsFolder, { recursive: true });
  await pass(time, 5);
  expect(session.recordingStatus()).toMatchObject({ state: 'idle', ...gone(runsFolder) });
  expect(await start(session)).toMatchObject(unreachable);
  await expect(readdir(runsFolder)).rejects.toThrow('ENOENT');
  await ask(session, 'folder/make-anew', {});
  expect(session.recordingStatus()).toMatchObject({ state: 'idle', problem: null });
  expect(told).toEqual([gone(runsFolder).problem, null]);
  expect(await start(session)).toMatchObject({ ok: true });
  await ask(session, 'run/stop', {});
  await pass(time, 3);
  // Nobody else may have it now.
  const second = await setUpSession({ runsFolder });
  expect(await start(second.session)).toMatchObject({ error: { kind: 'folder-in-use' } });
});

test('a program that is started without its stick says that the folder is gone, and makes it where a person wishes it', async () => {
  const { place, runsFolder, pullOut } = await onMountedStick();
  const knownFoldersFile = path.join(await temporaryFolder(), 'state', 'known-folders.json');
  const before = await setUpSession({ runsFolder, knownFoldersFile });
  await before.session.close();
  await pullOut();
  const { session, time } = await setUpSession({ runsFolder, knownFoldersFile });
  expect(session.recordingStatus()).toMatchObject(gone(runsFolder));
  await pass(time, 12);
  expect(await readdir(place)).toEqual([]);
  await ask(session, 'folder/make-anew', {});
  expect(session.recordingStatus()).toMatchObject({ problem: null });
  expect(await start(session)).toMatchObject({ ok: true });
});

test('the run of a folder that is gone is written whole where a person makes it anew, and rigs and ferments are kept there again', async () => {
  const runsFolder = path.join(await temporaryFolder(), 'runs');
  const bench = await setUpSession({ runsFolder });
  const { session } = bench;
  const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
  await hearFor(bench, 5);
  await rm(runsFolder, { recursive: true });
  await hearFor(bench, 5);
  expect(session.recordingStatus()).toMatchObject({ state: 'failed', ...gone(runsFolder) });
  await ask(session, 'folder/make-anew', {});
  await eventually(async () => {
    await hearFor(bench, 1);
    expect(session.recordingStatus()).toMatchObject({ state: 'recording', problem: null });
  });
  await ask(session, 'rigs/keep', {
    name: 'Lab 1',
    setUp: setUpSchema.parse({ name: 'Pear', charge }),
  });
  const beganAtIso = new Date(bench.time.clock.wallMs() - 86_400_000).toISOString();
  await ask(session, 'ferments/begin', {
    stated: { name: 'Pear', beganAtIso, volumeMl: 1000, sugarG: null, wentIn: 'pear juice' },
  });
  const heard = (await ask(session, 'runs/read', { runId, fromIndex: 0 })).inputs;
  await ask(session, 'run/stop', {});
  const onDisk = await ask(session, 'runs/read', { runId, fromIndex: 0 });
  expect([onDisk.inputs, onDisk.summary.damagedRecords]).toEqual([heard, 0]);
  expect((await ask(session, 'runs/list', {})).runs).toMatchObject([{ runId, ended: 'clean' }]);
});
