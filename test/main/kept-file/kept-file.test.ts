import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { type FileLayer, nodeFileLayer } from '#main';
import { succeed } from '#shared-core';
import { createKeptFile, type KeptFormat } from '../../../main/kept-file/index.ts';
import { createRandom } from '../../../shared-core/random/create-random.ts';
import { createManualTime } from '../support/manual-time.ts';
import { createPowerLossDisk, soundDisk } from '../support/power-loss-disk.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

/** The third version of a list: the first had one name, and the second no counts. */
const format: KeptFormat<readonly string[]> = {
  version: 3,
  nothing: [],
  read(json) {
    const { version, name, names } = (json ?? {}) as Record<string, unknown>;
    if (version === 1 && typeof name === 'string') return { value: [name], isWhole: true };
    if (!Array.isArray(names)) return null;
    const whole = names.filter((one) => typeof one === 'string');
    return { value: whole, isWhole: whole.length === names.length };
  },
  written: (names) => ({ names, count: names.length }),
};

const older = '{"version":1,"name":"pear"}';
const inPart = '{"version":3,"names":["pear",7]}';
const newer = '{"version":4,"shelves":["pear"]}';

async function keptAs(text: string | Uint8Array | null) {
  const folder = await temporaryFolder();
  const file = path.join(folder, 'kept.json');
  if (text !== null) await writeFile(file, text);
  const kept = createKeptFile(nodeFileLayer, file, format);
  const before = await kept.read();
  const added = await kept.change((names) => succeed([...names, 'quince']));
  const names = (await readdir(folder)).sort();
  const beside = names.filter((name) => name !== 'kept.json');
  return {
    file,
    added,
    before: before.ok ? before.value : before.error,
    now: await readFile(file, 'utf8'),
    beside: await Promise.all(
      beside.map(async (name) => [name, await readFile(path.join(folder, name), 'latin1')]),
    ),
  };
}

const written = (...names: string[]) =>
  `${JSON.stringify({ names, count: names.length, version: 3 }, null, 2)}\n`;

test.each([
  ['nothing', null, [], written('quince'), []],
  ['a file of this version', written('pear'), ['pear'], written('pear', 'quince'), []],
  [
    'a file of an older version',
    older,
    ['pear'],
    written('pear', 'quince'),
    [['kept.json.older-version', older]],
  ],
  [
    'a file understood in part',
    inPart,
    ['pear'],
    written('pear', 'quince'),
    [['kept.json.not-understood', inPart]],
  ],
  [
    'a torn file',
    '{"version":3,',
    [],
    written('quince'),
    [['kept.json.not-understood', '{"version":3,']],
  ],
  [
    'no text at all',
    Uint8Array.of(0xff, 0xfe, 0),
    [],
    written('quince'),
    [['kept.json.not-understood', '\xff\xfe\0']],
  ],
])(
  '%s is read, kept beside itself where it is not written back as it was, and written',
  async (_what, text, before, now, beside) => {
    expect(await keptAs(text)).toMatchObject({ before, now, beside, added: { ok: true } });
  },
);

test('a file of a newer version is never touched, and writing says so', async () => {
  const { file, ...rest } = await keptAs(newer);
  expect(rest).toEqual({
    added: { ok: false, error: { kind: 'kept-by-newer', path: file } },
    before: [],
    now: newer,
    beside: [],
  });
});

test('a file that the disk does not give is not taken for none, and nothing is written over it', async () => {
  const file = path.join(await temporaryFolder(), 'kept.json');
  await writeFile(file, written('pear'));
  const read: FileLayer['read'] = async (at) => ({
    ok: false,
    error: { kind: 'failed', path: at, message: 'EIO' },
  });
  const kept = createKeptFile({ ...nodeFileLayer, read }, file, format);
  const told = { ok: false, error: { kind: 'folder-unavailable', message: 'EIO' } };
  expect([await kept.read(), await kept.change(() => succeed(['quince']))]).toMatchObject([
    told,
    told,
  ]);
  expect(await readFile(file, 'utf8')).toBe(written('pear'));
});

test('what is put aside is not put where the disk does not say what lies there already', async () => {
  const file = path.join(await temporaryFolder(), 'kept.json');
  await writeFile(file, '{torn');
  await writeFile(`${file}.not-understood`, 'kept before');
  const read: FileLayer['read'] = async (at, offset, length) =>
    at.endsWith('.not-understood')
      ? { ok: false, error: { kind: 'failed', path: at, message: 'EIO' } }
      : nodeFileLayer.read(at, offset, length);
  const kept = createKeptFile({ ...nodeFileLayer, read }, file, format);
  expect(await kept.change(() => succeed(['quince']))).toMatchObject({ ok: false });
  expect(await readFile(file, 'utf8')).toBe('{torn');
  expect(await readFile(`${file}.not-understood`, 'utf8')).toBe('kept before');
});

test('a version that is no number, and a file that is no object, say nothing of a newer program', async () => {
  for (const text of ['{"version":"nine","names":["pear"]}', 'null', '7', '[]']) {
    const { beside, added } = await keptAs(text);
    expect([beside.length, added.ok]).toEqual([1, true]);
  }
});

test('what was put aside before is never written over, and nothing is put aside twice', async () => {
  const folder = await temporaryFolder();
  const file = path.join(folder, 'kept.json');
  for (const torn of ['{one', '{two', '{one']) {
    await writeFile(file, torn);
    expect(
      (await createKeptFile(nodeFileLayer, file, format).change(() => succeed(['quince']))).ok,
    ).toBe(true);
  }
  expect((await readdir(folder)).sort()).toEqual([
    'kept.json',
    'kept.json.not-understood',
    'kept.json.not-understood-2',
  ]);
});

/** The files of a disk that stands still after so many acts, as one without power does. */
function cutAfter(files: FileLayer, acts: number): FileLayer & { acted: () => number } {
  let acted = 0;
  const counted = <A extends readonly unknown[], R>(act: (...given: A) => R) => {
    return (...given: A): R => {
      if (acted >= acts) throw new Error('no power');
      acted += 1;
      return act(...given);
    };
  };
  return {
    ...files,
    acted: () => acted,
    createAppend: counted(async (at) => {
      const opened = await files.createAppend(at);
      if (!opened.ok) return opened;
      const { write, sync, close } = opened.value;
      return { ok: true as const, value: { write: counted(write), sync: counted(sync), close } };
    }),
    syncFolder: counted(files.syncFolder),
    rename: counted(files.rename),
    remove: counted(files.remove),
  };
}

test.each([
  ['a file of an older version', older, false],
  ['a torn file', '{"version":3,', false],
  ['one whose copy could not be given its name before', older, true],
])(
  'whenever the power goes, %s is there as it was or whole beside its successor',
  async (_what, text, wasTried) => {
    const file = '/kept/kept.json';
    const original = new TextEncoder().encode(text);
    const isThere = async (files: FileLayer) => {
      const listed = await files.list('/kept');
      const names = listed.ok ? listed.value.map(({ name }) => name) : [];
      const texts = await Promise.all(
        names.map(async (name) => {
          const read = await files.read(`/kept/${name}`, 0, 1000);
          return { name, text: read.ok ? new TextDecoder().decode(read.value) : '' };
        }),
      );
      return texts.filter((found) => found.text === text && !found.name.endsWith('.part')).length;
    };
    let cuts = 0;
    for (let acts = 0, isDone = false; !isDone; acts += 1) {
      for (let seed = 0; seed < 20; seed += 1) {
        let fails = false;
        const faults = { ...soundDisk, failSync: () => fails };
        const disk = createPowerLossDisk(faults, createManualTime().scheduler);
        const first = await disk.files.createAppend(file);
        if (!first.ok) throw new Error(first.error.kind);
        first.value.write(original);
        await first.value.sync();
        await disk.files.syncFolder('/kept');
        if (wasTried) {
          const unnamed: FileLayer = {
            ...disk.files,
            async syncFolder(at) {
              fails = true;
              const named = await disk.files.syncFolder(at);
              fails = false;
              return named;
            },
          };
          expect(
            await createKeptFile(unnamed, file, format).change(() => succeed(['quince'])),
          ).toMatchObject({
            ok: false,
          });
        }
        const writing = createKeptFile(cutAfter(disk.files, acts), file, format).change(() =>
          succeed(['quince']),
        );
        isDone = await writing.then(
          ({ ok }) => ok,
          () => false,
        );
        if (!isDone) cuts += 1;
        const found = disk.losePower(createRandom(seed));
        expect(await isThere(found), `after ${acts} acts, seed ${seed}`).toBeGreaterThan(0);
        const again = await createKeptFile(found, file, format).change(() => succeed(['quince']));
        expect(again.ok).toBe(true);
        expect(await isThere(found)).toBe(1);
        const now = await found.read(file, 0, 1000);
        expect(now.ok && new TextDecoder().decode(now.value)).toBe(written('quince'));
      }
    }
    // Both the copy and the new file are made beside their places, synced, and given their names.
    expect(cuts).toBeGreaterThan((wasTried ? 5 : 10) * 20);
  },
);
