import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { type FileLayer, nodeFileLayer } from '#main';
import { createRandom, fail, succeed } from '#shared-core';
import { readText } from '../../../main/file-layer/read-text.ts';
import { replaceFile } from '../../../main/file-layer/replace-file.ts';
import { createManualTime } from '../support/manual-time.ts';
import { createPowerLossDisk, soundDisk } from '../support/power-loss-disk.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

async function withOldFile() {
  const folder = await temporaryFolder();
  const target = path.join(folder, 'labels.json');
  await writeFile(target, 'old');
  // What a loss of power left of an earlier attempt.
  await writeFile(`${target}.part`, 'half of someth');
  return { folder, target };
}

test('the new file is whole under its name, whatever an earlier attempt left beside it', async () => {
  const { folder, target } = await withOldFile();
  expect(await replaceFile(nodeFileLayer, target, 'Zweite Gärung')).toEqual(succeed(undefined));
  expect(await readFile(target, 'utf8')).toBe('Zweite Gärung');
  expect(await readText(nodeFileLayer, target)).toEqual(succeed('Zweite Gärung'));
  expect(await replaceFile(nodeFileLayer, target, Uint8Array.of(1, 2, 3))).toEqual(
    succeed(undefined),
  );
  expect([...(await readFile(target))]).toEqual([1, 2, 3]);
  expect(await readdir(folder)).toEqual(['labels.json']);
});

test('it is written, synced, closed, renamed and its name synced, in this order', async () => {
  const { folder, target } = await withOldFile();
  const did: string[] = [];
  const files: FileLayer = {
    ...nodeFileLayer,
    async createAppend(file) {
      const made = await nodeFileLayer.createAppend(file);
      if (!made.ok) return made;
      const { write, sync, close } = made.value;
      return succeed({
        write: (bytes: Uint8Array) => {
          did.push('write');
          return write(bytes);
        },
        sync: () => {
          did.push('sync');
          return sync();
        },
        close: () => {
          did.push('close');
          return close();
        },
      });
    },
    rename(from, to) {
      did.push(`rename ${path.basename(from)}`);
      return nodeFileLayer.rename(from, to);
    },
    syncFolder(at) {
      did.push(`sync ${path.relative(folder, at) || 'folder'}`);
      return nodeFileLayer.syncFolder(at);
    },
  };
  await replaceFile(files, target, 'new');
  expect(did).toEqual(['write', 'sync', 'close', 'rename labels.json.part', 'sync folder']);
});

const full = (file: string) => fail({ kind: 'full', path: file, message: 'ENOSPC' } as const);
const failing = (what: 'create' | 'write' | 'part' | 'sync' | 'rename' | 'name'): FileLayer => ({
  ...nodeFileLayer,
  async createAppend(file) {
    const made = what === 'create' ? full(file) : await nodeFileLayer.createAppend(file);
    if (!made.ok) return made;
    return succeed({
      ...made.value,
      write: (bytes: Uint8Array) => {
        if (what === 'write') return full(file);
        return what === 'part' ? succeed(bytes.length - 1) : made.value.write(bytes);
      },
      sync: async () => (what === 'sync' ? full(file) : made.value.sync()),
    });
  },
  rename: async (from, to) => (what === 'rename' ? full(from) : nodeFileLayer.rename(from, to)),
  syncFolder: async (at) => (what === 'name' ? full(at) : nodeFileLayer.syncFolder(at)),
});

test.each(['create', 'write', 'part', 'sync', 'rename'] as const)(
  'where it fails at %s the old file is there as it was, and the failure is told',
  async (what) => {
    const { target } = await withOldFile();
    expect(await replaceFile(failing(what), target, 'new')).toMatchObject({
      ok: false,
      error: {
        kind: 'full',
        message: what === 'part' ? 'The disk took only part of the file.' : 'ENOSPC',
      },
    });
    expect(await readFile(target, 'utf8')).toBe('old');
  },
);

test('where the disk does not keep the name, that is told, and what was there shows again', async () => {
  const { folder, target } = await withOldFile();
  const notKept = fail({ kind: 'full', path: folder, message: 'ENOSPC' });
  expect(await replaceFile(failing('name'), target, 'new')).toEqual(notKept);
  expect(await readFile(target, 'utf8')).toBe('old');
  expect(await replaceFile(failing('name'), `${target}.other`, 'new')).toEqual(notKept);
  expect(await readdir(folder)).toEqual(['labels.json']);
});

test('where it neither keeps the name nor takes what was there, it is told that the new one shows', async () => {
  const { target } = await withOldFile();
  const files = failing('name');
  let renames = 0;
  const rename: FileLayer['rename'] = async (from, to) => {
    renames += 1;
    return renames > 1 ? full(from) : files.rename(from, to);
  };
  expect(await replaceFile({ ...files, rename }, target, 'new')).toMatchObject({
    ok: false,
    error: { kind: 'full', message: 'ENOSPC (It shows all the same, for the present.)' },
  });
  expect(await readFile(target, 'utf8')).toBe('new');
});

test('what cannot be read, and so could not be put back, is not replaced', async () => {
  const { target } = await withOldFile();
  const broken: FileLayer = { ...nodeFileLayer, read: async (file) => full(file) };
  expect(await replaceFile(broken, target, 'new')).toMatchObject({ error: { kind: 'full' } });
  expect(await readFile(target, 'utf8')).toBe('old');
});

test('whatever the disk keeps of a file told as not kept, after a loss of power it is the old or the new one', async () => {
  let fails = false;
  const { scheduler } = createManualTime();
  const disk = createPowerLossDisk({ ...soundDisk, failSync: () => fails }, scheduler);
  const files: FileLayer = {
    ...disk.files,
    async syncFolder(at) {
      fails = true;
      const named = await disk.files.syncFolder(at);
      fails = false;
      return named;
    },
  };
  expect((await replaceFile(disk.files, '/runs/labels.json', 'old')).ok).toBe(true);
  expect((await replaceFile(files, '/runs/labels.json', 'new')).ok).toBe(false);
  for (let seed = 0; seed < 10; seed += 1) {
    const left = await readText(disk.losePower(createRandom(seed)), '/runs/labels.json');
    expect(['old', 'new']).toContain(left.ok && left.value);
  }
});

test('a file that is not there, or cannot be read, is no empty text', async () => {
  const { target } = await withOldFile();
  expect(await readText(nodeFileLayer, `${target}.none`)).toMatchObject({
    ok: false,
    error: { kind: 'missing' },
  });
  const broken: FileLayer = { ...nodeFileLayer, read: async (file) => full(file) };
  expect(await readText(broken, target)).toMatchObject({ ok: false, error: { kind: 'full' } });
});
