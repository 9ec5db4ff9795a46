import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { type FileLayer, nodeFileLayer } from '#main';
import { fail, succeed } from '#shared-core';
import { appendLines } from '../../../main/ferments/append-lines.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const done = succeed(undefined);
const inNewFolder = async () => path.join(await temporaryFolder(), 'ferment.jsonl');

test('lines begin a new file or follow those that are there', async () => {
  const file = await inNewFolder();
  expect(await appendLines(nodeFileLayer, file, { text: 'one\n', isNew: true })).toEqual(done);
  expect(await appendLines(nodeFileLayer, file, { text: 'zwölf\n', isNew: false })).toEqual(done);
  expect(await readFile(file, 'utf8')).toBe('one\nzwölf\n');
  expect(await appendLines(nodeFileLayer, file, { text: 'x\n', isNew: true })).toMatchObject({
    ok: false,
    error: { kind: 'exists' },
  });
  expect(
    await appendLines(nodeFileLayer, `${file}.none`, { text: 'x\n', isNew: false }),
  ).toMatchObject({ ok: false, error: { kind: 'missing' } });
});

test.each([
  ['torn', 'torn\nnew\n'],
  ['whole\n', 'whole\nnew\n'],
  ['', 'new\n'],
])('behind %j the new line is a line of its own', async (before, after) => {
  const file = await inNewFolder();
  await writeFile(file, before);
  await appendLines(nodeFileLayer, file, { text: 'new\n', isNew: false });
  expect(await readFile(file, 'utf8')).toBe(after);
});

/** A disk that fails at one of its acts, and what was asked of it. */
function failing(at: string) {
  const did: string[] = [];
  const full = (file: string) => fail({ kind: 'full', path: file, message: 'ENOSPC' } as const);
  const open = (name: 'createAppend' | 'openAppend') => (file: string) => {
    const opened = nodeFileLayer[name](file);
    if (!opened.ok) return opened;
    const { write, sync, close } = opened.value;
    return succeed({
      write(bytes: Uint8Array) {
        did.push('write');
        if (at === 'write') return full(file);
        return at === 'part' ? succeed(bytes.length - 1) : write(bytes);
      },
      async sync() {
        did.push('sync');
        return at === 'sync' ? full(file) : sync();
      },
      close() {
        did.push('close');
        return close();
      },
    });
  };
  const files: FileLayer = {
    ...nodeFileLayer,
    createAppend: open('createAppend'),
    openAppend: open('openAppend'),
    async syncFolder(folder) {
      did.push('sync folder');
      return at === 'name' ? full(folder) : nodeFileLayer.syncFolder(folder);
    },
  };
  return { files, did };
}

test.each([
  ['nothing', true, ['write', 'sync', 'close', 'sync folder'], null],
  ['nothing', false, ['write', 'sync', 'close'], null],
  ['write', false, ['write', 'close'], 'ENOSPC'],
  ['sync', false, ['write', 'sync', 'close'], 'ENOSPC'],
  ['sync', true, ['write', 'sync', 'close'], 'ENOSPC'],
  ['part', false, ['write', 'sync', 'close'], 'The disk took only part of the line.'],
  ['name', true, ['write', 'sync', 'close', 'sync folder'], 'ENOSPC'],
])('a disk that fails at %s (new file: %s) does %j and tells %j', async (at, isNew, did, said) => {
  const file = await inNewFolder();
  if (!isNew) await writeFile(file, '');
  const disk = failing(at);
  const added = await appendLines(disk.files, file, { text: 'new\n', isNew });
  expect(disk.did).toEqual(did);
  expect(added.ok ? null : [added.error.kind, added.error.message]).toEqual(
    said === null ? null : ['full', said],
  );
});
