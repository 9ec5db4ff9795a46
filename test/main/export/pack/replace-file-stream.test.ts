import { readdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { type FileLayer, nodeFileLayer } from '#main';
import { fail, succeed } from '#shared-core';
import { replaceFileStream } from '../../../../main/export/pack/replace-file-stream.ts';
import { temporaryFolder } from '../../support/temporary-folder.ts';

const full = (file: string) => fail({ kind: 'full', path: file, message: 'ENOSPC' } as const);

async function target() {
  const folder = await temporaryFolder();
  const file = path.join(folder, 'packs', 'pear.zip');
  await nodeFileLayer.makeFolder(path.dirname(file));
  await writeFile(file, 'old');
  await writeFile(`${file}.part`, 'half of an earl');
  return file;
}

test('a file of many pieces is there whole or not at all', async () => {
  const file = await target();
  const content = ['zwölf\n', Uint8Array.of(1, 2, 3), 'end'];
  expect(await replaceFileStream(nodeFileLayer, file, content)).toEqual(succeed(undefined));
  expect(await readdir(path.dirname(file))).toEqual(['pear.zip']);
  expect(await nodeFileLayer.sizeBytes(file)).toEqual(succeed(13));
});

test.each(['folder', 'create', 'write', 'part', 'sync', 'rename'])(
  'where the disk fails at %s the old file is left, and nothing half written beside it',
  async (at) => {
    const file = await target();
    let open = 0;
    const files: FileLayer = {
      ...nodeFileLayer,
      makeFolder: async (folder) => (at === 'folder' ? full(folder) : succeed(undefined)),
      async createAppend(temporary) {
        if (at === 'create') return full(temporary);
        const opened = await nodeFileLayer.createAppend(temporary);
        if (!opened.ok) return opened;
        open += 1;
        const { write, sync, close } = opened.value;
        return succeed({
          write: (bytes: Uint8Array) => {
            if (at === 'write') return full(temporary);
            return at === 'part' ? succeed(bytes.length - 1) : write(bytes);
          },
          sync: async () => (at === 'sync' ? full(temporary) : sync()),
          close: () => {
            open -= 1;
            return close();
          },
        });
      },
      rename: async (from, to) => (at === 'rename' ? full(from) : nodeFileLayer.rename(from, to)),
    };
    const replaced = await replaceFileStream(files, file, ['new']);
    expect(replaced).toMatchObject({
      ok: false,
      error: {
        kind: 'full',
        message: at === 'part' ? 'The disk took only part of the file.' : 'ENOSPC',
      },
    });
    expect([open, await nodeFileLayer.sizeBytes(file)]).toEqual([0, succeed(3)]);
    const left = await readdir(path.dirname(file));
    // What was begun before this one is taken away only where this one begins.
    expect(left.includes('pear.zip.part')).toBe(at === 'folder');
  },
);

test('a file whose name could not be put on the disk is not told as written', async () => {
  const file = await target();
  const synced: string[] = [];
  const files: FileLayer = {
    ...nodeFileLayer,
    syncFolder: async (folder) => {
      synced.push(folder);
      return full(folder);
    },
  };
  expect(await replaceFileStream(files, file, ['new'])).toMatchObject({ ok: false });
  expect(synced).toEqual([path.dirname(file)]);
});
