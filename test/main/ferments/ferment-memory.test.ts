import { fork } from 'node:child_process';
import { once } from 'node:events';
import { appendFile, readdir, readFile, stat, truncate, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { createFermentMemory, type FermentMemory, nodeFileLayer } from '#main';
import type { FermentRead, KeptFerment, StatedFerment } from '#shared-core';
import { nothingRead } from '../../support/nothing-read.ts';
import { createManualTime } from '../support/manual-time.ts';
import { ask, setUpSession, teacher } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const time = createManualTime();
const startMs = time.clock.wallMs();
const iso = (afterH: number) => new Date(startMs + afterH * 3_600_000).toISOString();

const pears: StatedFerment = {
  name: 'Pear juice',
  beganAtIso: iso(-30),
  volumeMl: 1000,
  sugarG: { low: 100, high: 122 },
  wentIn: '1 L of pear juice',
};
const gravity = (atIso: string, indicated: number): FermentRead => ({
  ...nothingRead,
  atIso,
  gravity: { indicated, temperatureC: 24 },
});

function memoryIn(runsFolder: string, wallMs = () => startMs): FermentMemory {
  return createFermentMemory({
    files: nodeFileLayer,
    clock: { ...time.clock, wallMs },
    runsFolder,
    mayWrite: () => true,
  });
}
async function value<T>(answer: Promise<{ ok: true; value: T } | { ok: false; error: unknown }>) {
  const result = await answer;
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}
async function fileIn(folder: string): Promise<string> {
  const [name] = (await readdir(folder)).filter((found) => found.startsWith('ferment-'));
  return path.join(folder, name ?? '');
}
/** A ferment of which two gravities were kept, with its file as it then is. */
async function twiceRead() {
  const folder = await temporaryFolder();
  const memory = memoryIn(folder);
  const { fermentId } = await value(memory.begin(pears));
  await value(memory.enter(fermentId, gravity(iso(-20), 1.05)));
  await value(memory.enter(fermentId, gravity(iso(-10), 1.04)));
  return { folder, memory, fermentId, before: await readFile(await fileIn(folder), 'utf8') };
}
const gravities = ({ entries }: KeptFerment) => entries.map(({ read }) => read.gravity?.indicated);

describe('ferments kept by hand', () => {
  test('several are kept, outlive the program, and lie beside the runs for this account alone', async () => {
    const first = await setUpSession();
    const now = new Date(first.time.clock.wallMs()).toISOString();
    const begin = (name: string) =>
      ask(first.session, 'ferments/begin', { stated: { ...pears, name, beganAtIso: now } });
    const [one, two] = [await begin('Pears'), await begin('Sugar')];
    await ask(first.session, 'ferments/enter', {
      fermentId: one.fermentId,
      read: gravity(now, 1.052),
    });
    await first.session.close();
    const file = await fileIn(first.runsFolder);
    expect((await stat(file)).mode & 0o777).toBe(0o600);
    const second = await setUpSession({ runsFolder: first.runsFolder });
    const { ferments } = await ask(second.session, 'ferments/list', {});
    expect(ferments.map(({ stated, entries }) => [stated.name, entries.length])).toEqual([
      ['Sugar', 0],
      ['Pears', 1],
    ]);
    expect(two.fermentId).not.toBe(one.fermentId);
    expect((await ask(second.session, 'runs/list', {})).runs).toEqual([]);
  });

  test('an entry is withdrawn and stays in the file; nothing that was written changes', async () => {
    const { folder, memory, fermentId, before } = await twiceRead();
    const after = await value(memory.withdraw(fermentId, 2));
    expect(after.entries.map(({ withdrawnAtIso }) => withdrawnAtIso !== null)).toEqual([
      false,
      true,
    ]);
    expect(await readFile(await fileIn(folder), 'utf8')).toMatch(before);
    expect(await value(memory.withdraw(fermentId, 2))).toEqual(after);
    expect(await memory.withdraw(fermentId, 9)).toMatchObject({
      ok: false,
      error: { message: 'There is no such entry' },
    });
  });

  test('what was stated is put right with a reason; what stood before stays in the file', async () => {
    const folder = await temporaryFolder();
    const memory = memoryIn(folder);
    const { fermentId } = await value(memory.begin({ ...pears, sugarG: null }));
    await value(memory.enter(fermentId, gravity(iso(-20), 1.05)));
    const before = await readFile(await fileIn(folder), 'utf8');
    await value(memory.correct(fermentId, pears, 'sugar found on the packet'));
    const after = await value(
      memory.correct(fermentId, { ...pears, volumeMl: 1100 }, 'volume misread'),
    );
    expect(after).toEqual({
      ...after,
      stated: { ...pears, volumeMl: 1100 },
      corrections: [
        {
          keptAtIso: iso(0),
          before: { ...pears, sugarG: null },
          reason: 'sugar found on the packet',
        },
        { keptAtIso: iso(0), before: pears, reason: 'volume misread' },
      ],
    });
    expect(gravities(after)).toEqual([1.05]);
    expect((await readFile(await fileIn(folder), 'utf8')).startsWith(before)).toBe(true);
    expect(await memoryIn(folder).find(fermentId)).toEqual(after);
  });

  test('a beginning that is put after an entry is refused in plain words, and nothing is written', async () => {
    const { folder, memory, fermentId, before } = await twiceRead();
    const late = { ...pears, beganAtIso: iso(-15) };
    expect(JSON.stringify(await memory.correct(fermentId, late, 'misread'))).toContain(
      'An entry is older than that beginning',
    );
    expect(await readFile(await fileIn(folder), 'utf8')).toBe(before);
    await value(memory.withdraw(fermentId, 1));
    expect((await value(memory.correct(fermentId, late, 'misread'))).stated).toEqual(late);
  });

  test.each([
    ['in the future', iso(5), 'ahead of the computer'],
    ['before it was begun', iso(-60), 'before the ferment was begun'],
  ])('a moment %s is refused in plain words and nothing is written', async (_, atIso, words) => {
    const folder = await temporaryFolder();
    const memory = memoryIn(folder);
    const { fermentId } = await value(memory.begin(pears));
    const before = await readFile(await fileIn(folder), 'utf8');
    const refused = await memory.enter(fermentId, gravity(atIso, 1.05));
    expect(JSON.stringify(refused)).toContain(words);
    expect(await readFile(await fileIn(folder), 'utf8')).toBe(before);
  });

  test("a computer's clock that went back since the last entry is told, and nothing is kept by it", async () => {
    const folder = await temporaryFolder();
    const { fermentId } = await value(memoryIn(folder).begin(pears));
    await value(memoryIn(folder).enter(fermentId, gravity(iso(-1), 1.05)));
    const back = memoryIn(folder, () => startMs - 20 * 3_600_000);
    expect(JSON.stringify(await back.enter(fermentId, gravity(iso(-21), 1.05)))).toContain(
      'stands 20 hours before the last entry was kept',
    );
  });

  test.each([
    ['a mass below nothing', { massG: -5 }, 'A mass from 0 to 10000000 g'],
    [
      'a gravity that is none',
      { gravity: { indicated: 1050, temperatureC: 20 } },
      'A gravity from',
    ],
    ['a pH that is none', { ph: 17 }, 'A pH of a ferment from 1 to 10'],
    ['a refractometer alone', { refractometerPercent: 8 }, 'read the gravity too'],
    ['nothing at all', {}, 'Nothing was entered yet'],
  ])('%s is refused at the door in plain words', async (_, read, words) => {
    const { session } = await setUpSession();
    const now = new Date(time.clock.wallMs()).toISOString();
    const answer = await session.handle(
      'ferments/enter',
      { fermentId: 'a', read: { ...nothingRead, atIso: now, ...read } },
      teacher,
    );
    expect(answer).toMatchObject({ ok: false, error: { kind: 'request-invalid' } });
    expect(JSON.stringify(answer)).toContain(words);
  });

  test('a window that only views may read and not write', async () => {
    const { session } = await setUpSession();
    const viewer = { mayCommand: false };
    expect(await session.handle('ferments/list', {}, viewer)).toMatchObject({ ok: true });
    expect(await session.handle('ferments/begin', { stated: pears }, viewer)).toMatchObject({
      ok: false,
      error: { kind: 'viewer-may-not-command' },
    });
  });

  test('a last line torn anywhere takes no other entry away, and the next one is kept whole', async () => {
    const folder = await temporaryFolder();
    const memory = memoryIn(folder);
    const { fermentId } = await value(memory.begin(pears));
    await value(memory.enter(fermentId, gravity(iso(-20), 1.05)));
    const file = await fileIn(folder);
    const whole = (await stat(file)).size;
    const text = await readFile(file);
    await value(memory.enter(fermentId, gravity(iso(-15), 1.04)));
    const full = await readFile(file);
    for (let cut = whole + 1; cut < full.length - 1; cut += 7) {
      await writeFile(file, full);
      await truncate(file, cut);
      const after = await value(memory.enter(fermentId, gravity(iso(-10), 1.03)));
      expect([gravities(after), after.unreadableLines]).toEqual([[1.05, 1.03], 1]);
      expect((await readFile(file)).subarray(0, text.length)).toEqual(text);
    }
  });

  test('a damaged line is counted and left out, a file without a beginning takes no other ferment away', async () => {
    const folder = await temporaryFolder();
    const memory = memoryIn(folder);
    const { fermentId } = await value(memory.begin(pears));
    for (const [afterH, read] of [
      [-20, 1.05],
      [-15, 1.04],
      [-10, 1.03],
    ] as const) {
      await value(memory.enter(fermentId, gravity(iso(afterH), read)));
    }
    const file = await fileIn(folder);
    await writeFile(file, (await readFile(file, 'utf8')).replace('1.04', '1.01'));
    await appendFile(file, '{"kind":"from a later version"}\n');
    await writeFile(path.join(folder, 'ferment-20200101T000000Z.jsonl'), 'no ferment\n');
    const [kept, ...others] = await value(memory.list());
    expect(others).toEqual([]);
    expect([gravities(kept as KeptFerment), kept?.unreadableLines]).toEqual([[1.05, 1.03], 2]);
  });

  test('a folder that takes nothing says so, and what was kept stays', async () => {
    const folder = await temporaryFolder();
    const full = { write: () => ({ ok: true as const, value: 10 }) };
    let isFull = false;
    const memory = createFermentMemory({
      files: {
        ...nodeFileLayer,
        async createAppend(file) {
          const opened = await nodeFileLayer.createAppend(file);
          if (!opened.ok || !isFull) return opened;
          return { ok: true, value: { ...opened.value, ...full } };
        },
      },
      clock: time.clock,
      runsFolder: folder,
      mayWrite: () => true,
    });
    const { fermentId } = await value(memory.begin({ ...pears, beganAtIso: iso(-1) }));
    const now = new Date(time.clock.wallMs()).toISOString();
    isFull = true;
    expect(await memory.enter(fermentId, gravity(now, 1.05))).toMatchObject({
      ok: false,
      error: { kind: 'disk-full' },
    });
    expect((await value(memory.list()))[0]?.entries).toEqual([]);
  });

  test('what is not beside the runs, cannot be read, or is another program’s, is refused in words', async () => {
    const folder = await temporaryFolder();
    let mayWrite = true;
    const memory = createFermentMemory({
      files: nodeFileLayer,
      clock: time.clock,
      runsFolder: folder,
      mayWrite: () => mayWrite,
    });
    const refused = (message: string) => ({
      ok: false,
      error: { kind: 'request-invalid', message },
    });
    const entry = gravity(iso(-1), 1.05);
    const { fermentId } = await value(memory.begin(pears));
    expect(await memory.enter('none-such', entry)).toEqual(
      refused('This ferment is no longer beside the runs. Its file may have been moved'),
    );
    expect(await memory.withdraw(fermentId, 1)).toEqual(refused('There is no such entry'));
    mayWrite = false;
    const inUse = { ok: false, error: { kind: 'folder-in-use', path: folder } };
    expect([
      await memory.begin(pears),
      await memory.correct(fermentId, pears, 'misread'),
      await memory.enter(fermentId, entry),
      await memory.withdraw(fermentId, 1),
    ]).toEqual([inUse, inUse, inUse, inUse]);
    mayWrite = true;
    expect(await memory.find(fermentId)).toMatchObject({ fermentId, entries: [] });
    await writeFile(await fileIn(folder), 'torn\n');
    expect(await memory.enter(fermentId, entry)).toEqual(
      refused('The first line of this ferment cannot be read. Its file is left as it is'),
    );
    expect(await memory.find(fermentId)).toBeNull();
  });

  test('a broken disk is told as one, not as a ferment that is gone', async () => {
    const broken = async (file: string) =>
      ({ ok: false, error: { kind: 'failed', path: file, message: 'EIO' } }) as const;
    const memory = createFermentMemory({
      files: { ...nodeFileLayer, list: broken, sizeBytes: broken },
      clock: time.clock,
      runsFolder: await temporaryFolder(),
      mayWrite: () => true,
    });
    const told = { ok: false, error: { kind: 'folder-unavailable', message: 'EIO' } };
    expect([
      await memory.list(),
      await memory.begin(pears),
      await memory.enter('a', gravity(iso(-1), 1.05)),
    ]).toMatchObject([told, told, told]);
  });

  test('ferments begun in one second get names of their own; the newest is listed first', async () => {
    const memory = memoryIn(await temporaryFolder());
    const ids: string[] = [];
    for (let count = 0; count < 3; count += 1) {
      ids.push((await value(memory.begin(pears))).fermentId);
    }
    const [first = ''] = ids;
    expect(first).toMatch(/^\d{8}T\d{6}Z$/);
    expect(ids).toEqual([first, `${first}-2`, `${first}-3`]);
    const listed = (await value(memory.list())).map(({ fermentId }) => fermentId);
    expect(listed).toEqual(ids.toReversed());
  });

  test('nothing begins in time to come', async () => {
    const folder = await temporaryFolder();
    const begun = await memoryIn(folder).begin({ ...pears, beganAtIso: iso(30) });
    expect(begun).toMatchObject({ ok: false, error: { kind: 'request-invalid' } });
    expect(await readdir(folder)).toEqual([]);
  });

  test('an entry is withdrawn once, however often that is asked', async () => {
    const { memory, fermentId, folder } = await twiceRead();
    const once = await value(memory.withdraw(fermentId, 1));
    expect(await value(memory.withdraw(fermentId, 1))).toEqual(once);
    const text = await readFile(await fileIn(folder), 'utf8');
    expect(text.match(/"withdrawn"/g)).toHaveLength(1);
    expect(once.entries.map(({ entryId, withdrawnAtIso }) => [entryId, withdrawnAtIso])).toEqual([
      [1, iso(0)],
      [2, null],
    ]);
  });

  test('what was answered as kept is there after the program was killed', async () => {
    const folder = await temporaryFolder();
    const program = fork(path.join(import.meta.dirname, 'support/keep-entries.ts'), [folder], {
      execArgv: ['--import', 'tsx'],
    });
    let answered = 0;
    const enough = new Promise<void>((resolve) => {
      program.on('message', (count: number) => {
        answered = count;
        if (count >= 20) resolve();
      });
    });
    await enough;
    program.kill('SIGKILL');
    await once(program, 'exit');
    const [kept] = await value(memoryIn(folder).list());
    expect(kept?.entries.length).toBeGreaterThanOrEqual(answered);
    expect(kept?.unreadableLines).toBe(0);
  });
});
