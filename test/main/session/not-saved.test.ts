import { mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test, vi } from 'vitest';
import { type FileLayer, nodeFileLayer } from '#main';
import { defaultRunSettings, fail, succeed } from '#shared-core';
import { ask, head, setUpSession, teacher } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

type Bench = Awaited<ReturnType<typeof setUpSession>>;

/** Time passes, and the real disk gets its turns. */
async function pass({ time }: Bench, seconds: number): Promise<void> {
  for (let second = 0; second < seconds; second += 1) {
    await time.pass(1);
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}

async function hearFor(bench: Bench, seconds: number): Promise<void> {
  for (let second = 0; second < seconds; second += 1) {
    await pass(bench, 1);
    const nowS = bench.time.clock.monotonicS();
    bench.probeHub.send('readings', [head(nowS, 22 + nowS / 16)]);
  }
}

/** A stick with the folder of the runs, where nothing can be made once it is pulled out. */
async function onStick() {
  const above = await temporaryFolder();
  const stick = path.join(above, 'stick');
  const elsewhere = path.join(above, 'pulled-out');
  await mkdir(stick);
  return {
    runsFolder: path.join(stick, 'runs'),
    async pullOut() {
      await rename(stick, elsewhere);
      await writeFile(stick, '');
    },
    async putIn() {
      await rm(stick);
      await rename(elsewhere, stick);
    },
  };
}

/** A disk that refuses all that is written while it is full. */
function fillableDisk() {
  let isFull = false;
  const full = (target: string) =>
    fail({ kind: 'full', path: target, message: 'ENOSPC: no space left on device' } as const);
  const faults: Partial<FileLayer> = {
    async createAppend(target) {
      if (isFull) return full(target);
      const file = await nodeFileLayer.createAppend(target);
      if (!file.ok) return file;
      return succeed({
        ...file.value,
        write: (bytes) => (isFull ? full(target) : file.value.write(bytes)),
      });
    },
    claimFolder: async (target) => (isFull ? full(target) : nodeFileLayer.claimFolder(target)),
  };
  return {
    faults,
    fill() {
      isFull = true;
    },
    free() {
      isFull = false;
    },
  };
}

const start = async ({ session }: Bench) =>
  (await ask(session, 'run/start', { settings: defaultRunSettings })).runId;
const stop = ({ session }: Bench) => session.handle('run/stop', {}, teacher);
const read = ({ session }: Bench, runId: string) =>
  ask(session, 'runs/read', { runId, fromIndex: 0 });

/** The run is on the disk whole, and nothing of it is told from memory any more. */
async function becomesSaved(bench: Bench): Promise<void> {
  await vi.waitFor(
    async () => {
      await pass(bench, 1);
      expect(bench.session.recordingStatus().notSaved).toBeUndefined();
    },
    { timeout: 20_000 },
  );
}

test('a run that is stopped while its stick is pulled out is on it whole once it is put in again', async () => {
  const { runsFolder, pullOut, putIn } = await onStick();
  const bench = await setUpSession({ runsFolder });
  const runId = await start(bench);
  await hearFor(bench, 3);
  await pullOut();
  await hearFor(bench, 5);
  const heard = (await read(bench, runId)).inputs;
  await stop(bench);
  expect(bench.session.recordingStatus()).toMatchObject({
    state: 'idle',
    runId: null,
    problem: { kind: 'folder-gone', path: runsFolder },
    notSaved: [{ runId, name: defaultRunSettings.name, savedToS: expect.any(Number) }],
  });
  // Whoever opens a window meanwhile has the whole of it.
  expect((await read(bench, runId)).inputs).toEqual(heard);
  await pass(bench, 60);
  await putIn();
  await becomesSaved(bench);
  const onDisk = await read(bench, runId);
  expect([onDisk.inputs, onDisk.summary.damagedRecords]).toEqual([heard, 0]);
  const { runs } = await ask(bench.session, 'runs/list', {});
  expect(runs).toMatchObject([{ runId, ended: 'clean' }]);
  // Nothing of it is in doubt, for the next program either.
  expect(runs[0]).not.toHaveProperty('unsure');
});

test('a run that is stopped after its folder was deleted is written whole where a person makes it anew', async () => {
  const runsFolder = path.join(await temporaryFolder(), 'runs');
  const bench = await setUpSession({ runsFolder });
  const runId = await start(bench);
  await hearFor(bench, 4);
  const heard = (await read(bench, runId)).inputs;
  await rm(runsFolder, { recursive: true });
  await pass(bench, 3);
  await stop(bench);
  expect(bench.session.recordingStatus().notSaved).toMatchObject([
    { runId, problem: { kind: 'folder-gone' } },
  ]);
  await ask(bench.session, 'folder/make-anew', {});
  await becomesSaved(bench);
  expect((await read(bench, runId)).inputs).toEqual(heard);
  const { runs } = await ask(bench.session, 'runs/list', {});
  expect(runs).toMatchObject([{ runId, ended: 'clean', durationS: expect.any(Number) }]);
  expect(runs[0]).not.toHaveProperty('unsure');
});

test('while a full disk takes nothing of a run that has ended, it stands among the runs, is nobody’s to go on with and not to be changed', async () => {
  const disk = fillableDisk();
  const bench = await setUpSession({ faults: disk.faults });
  const { session } = bench;
  const runId = await start(bench);
  await hearFor(bench, 3);
  // The disk is a real one, and takes the time it takes.
  await vi.waitFor(async () => {
    await pass(bench, 1);
    expect(session.recordingStatus().savedToS).toBe(3);
  });
  disk.fill();
  await hearFor(bench, 3);
  const heard = (await read(bench, runId)).inputs;
  await stop(bench);
  expect(session.recordingStatus().notSaved).toMatchObject([
    { runId, savedToS: 3, problem: { kind: 'disk-full' } },
  ]);
  expect((await ask(session, 'runs/list', {})).runs).toMatchObject([
    { runId, ended: 'clean', unsure: true, readings: 6 },
  ]);
  expect(await ask(session, 'run/unfinished', {})).toEqual({ run: null });
  expect(await session.handle('run/continue', { runId }, teacher)).toMatchObject({ ok: false });
  const mark = { type: 'note', text: 'later' } as const;
  for (const [name, body] of [
    ['runs/rename', { runId, name: 'Other', notes: '' }],
    ['runs/trash', { runId }],
    ['runs/book', { runId, mark }],
  ] as const) {
    expect(await session.handle(name, body, teacher), name).toEqual(
      fail({ kind: 'run-not-saved', runId }),
    );
  }
  disk.free();
  await becomesSaved(bench);
  expect((await read(bench, runId)).inputs).toEqual(heard);
  await ask(session, 'runs/rename', { runId, name: 'Other', notes: '' });
});

test('a new run begins where only the files of the one before can’t be written, and both are saved', async () => {
  let refused: string | null = null;
  const isRefused = (target: string) => refused !== null && target.includes(refused);
  const denied = (target: string) =>
    fail({ kind: 'failed', path: target, message: 'EIO: i/o error' } as const);
  const bench = await setUpSession({
    faults: {
      async createAppend(target) {
        if (isRefused(target)) return denied(target);
        const file = await nodeFileLayer.createAppend(target);
        if (!file.ok) return file;
        return succeed({
          ...file.value,
          write: (bytes) => (isRefused(target) ? denied(target) : file.value.write(bytes)),
        });
      },
    },
  });
  const first = await start(bench);
  await hearFor(bench, 3);
  refused = first;
  await hearFor(bench, 2);
  const heardFirst = (await read(bench, first)).inputs;
  await stop(bench);
  const second = await start(bench);
  await hearFor(bench, 4);
  expect(bench.session.recordingStatus()).toMatchObject({
    state: 'recording',
    runId: second,
    notSaved: [{ runId: first }],
  });
  const { runs } = await ask(bench.session, 'runs/list', {});
  expect(runs.map(({ runId, ended }) => [runId, ended])).toEqual([
    [second, 'recording'],
    [first, 'clean'],
  ]);
  refused = null;
  await becomesSaved(bench);
  const heardSecond = (await read(bench, second)).inputs;
  await stop(bench);
  expect([(await read(bench, first)).inputs, (await read(bench, second)).inputs]).toEqual([
    heardFirst,
    heardSecond,
  ]);
});

test('a program that is closed gives a run that is not saved one more chance, and says of it afterwards whether it had it', async () => {
  const disk = fillableDisk();
  const bench = await setUpSession({ faults: disk.faults });
  const runId = await start(bench);
  await hearFor(bench, 3);
  disk.fill();
  await hearFor(bench, 1);
  await stop(bench);
  disk.free();
  await bench.session.close();
  expect(bench.session.recordingStatus().notSaved).toBeUndefined();
  const next = await setUpSession({ runsFolder: bench.runsFolder });
  expect((await ask(next.session, 'runs/list', {})).runs).toMatchObject([
    { runId, ended: 'clean', readings: 4 },
  ]);
  expect((await ask(next.session, 'runs/list', {})).runs[0]).not.toHaveProperty('unsure');
});

test('a program that is closed while the disk takes nothing ends all the same, and says what is not saved', async () => {
  const disk = fillableDisk();
  const bench = await setUpSession({ faults: disk.faults });
  const runId = await start(bench);
  await hearFor(bench, 3);
  disk.fill();
  await hearFor(bench, 2);
  await bench.session.close();
  expect(bench.session.recordingStatus().notSaved).toMatchObject([{ runId }]);
  disk.free();
  const before = await readdir(path.join(bench.runsFolder, runId));
  await bench.time.pass(60);
  expect(await readdir(path.join(bench.runsFolder, runId))).toEqual(before);
});
