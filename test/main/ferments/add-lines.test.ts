import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { type FileLayer, nodeFileLayer } from '#main';
import { createRandom, fail, succeed } from '#shared-core';
import { addLines, appendLines } from '../../../main/ferments/add-lines.ts';
import { readText } from '../../../main/file-layer/read-text.ts';
import { failingFiles } from '../support/failing-files.ts';
import { createManualTime } from '../support/manual-time.ts';
import { createPowerLossDisk, soundDisk } from '../support/power-loss-disk.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const done = succeed(undefined);
const inNewFolder = async () => path.join(await temporaryFolder(), 'ferment.jsonl');

test('lines begin a new file or follow those that are there', async () => {
  const file = await inNewFolder();
  expect(await addLines(nodeFileLayer, file, { text: 'one\n', isNew: true })).toEqual(done);
  expect(await addLines(nodeFileLayer, file, { text: 'zwölf\n', isNew: false })).toEqual(done);
  expect(await appendLines(nodeFileLayer, file, 'drei\n')).toEqual(done);
  expect(await readFile(file, 'utf8')).toBe('one\nzwölf\ndrei\n');
  expect(await addLines(nodeFileLayer, file, { text: 'x\n', isNew: true })).toMatchObject({
    ok: false,
    error: { kind: 'exists' },
  });
  expect(
    await addLines(nodeFileLayer, `${file}.none`, { text: 'x\n', isNew: false }),
  ).toMatchObject({ ok: false, error: { kind: 'missing' } });
});

test.each([
  ['torn', 'torn\nnew\n'],
  ['whole\n', 'whole\nnew\n'],
  ['', 'new\n'],
])('behind %j the new line is a line of its own', async (before, after) => {
  const file = await inNewFolder();
  await writeFile(file, before);
  await addLines(nodeFileLayer, file, { text: 'new\n', isNew: false });
  expect(await readFile(file, 'utf8')).toBe(after);
});

test('wherever the disk fails, that is told, no file stays open, the lines are not there, and the next ones follow', async () => {
  const sound = failingFiles(-1);
  const begun = async () => {
    const file = await inNewFolder();
    await writeFile(file, 'before\n');
    return file;
  };
  await addLines(sound.files, await begun(), { text: 'new\n', isNew: false });
  const operations = sound.done();
  for (const failure of ['refuses', 'takes half'] as const) {
    for (const [failAt, operation] of operations.entries()) {
      if (failure === 'takes half' && operation !== 'write') continue;
      const file = await begun();
      const disk = failingFiles(failAt, failure);
      const refused = await addLines(disk.files, file, { text: 'new\n', isNew: false });
      expect([operation, refused, disk.stillOpen()]).toMatchObject([
        operation,
        { ok: false, error: { kind: failure === 'refuses' ? 'failed' : 'full' } },
        0,
      ]);
      expect([operation, await readFile(file, 'utf8')]).toEqual([operation, 'before\n']);
      expect(await addLines(nodeFileLayer, file, { text: 'after\n', isNew: false })).toEqual(done);
      expect([operation, await readFile(file, 'utf8')]).toEqual([operation, 'before\nafter\n']);
      expect(await readdir(path.dirname(file))).toEqual(['ferment.jsonl']);
    }
  }
});

/** A disk that fails at one of its acts, and what was asked of it. */
function failing(at: string) {
  const did: string[] = [];
  const full = (file: string) => fail({ kind: 'full', path: file, message: 'ENOSPC' } as const);
  const files: FileLayer = {
    ...nodeFileLayer,
    async openAppend(file) {
      const opened = await nodeFileLayer.openAppend(file);
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
    },
  };
  return { files, did };
}

test.each([
  ['nothing', ['write', 'sync', 'close'], null],
  ['write', ['write', 'close'], 'ENOSPC'],
  ['sync', ['write', 'sync', 'close'], 'ENOSPC'],
  ['part', ['write', 'sync', 'close'], 'The disk took only part of the line.'],
])(
  'a disk that fails at %s while lines are appended does %j and tells %j',
  async (at, did, said) => {
    const file = await inNewFolder();
    await writeFile(file, '');
    const disk = failing(at);
    const added = await appendLines(disk.files, file, 'new\n');
    expect(disk.did).toEqual(did);
    expect(added.ok ? null : [added.error.kind, added.error.message]).toEqual(
      said === null ? null : ['full', said],
    );
  },
);

test('what a program before could not sync is on the disk, and so are the lines behind it, once they are told as added', async () => {
  let fails = false;
  const { scheduler } = createManualTime();
  const disk = createPowerLossDisk({ ...soundDisk, failSync: () => fails }, scheduler);
  const file = '/runs/ferment-x.jsonl';
  await addLines(disk.files, file, { text: 'one\n', isNew: true });
  // A program that was killed at this: the lines can be read, and are on no disk.
  fails = true;
  expect(await appendLines(disk.files, file, 'two\n')).toMatchObject({ ok: false });
  fails = false;
  expect(await addLines(disk.files, file, { text: 'three\n', isNew: false })).toEqual(done);
  for (let seed = 0; seed < 10; seed += 1) {
    expect(await readText(disk.losePower(createRandom(seed)), file)).toEqual(
      succeed('one\ntwo\nthree\n'),
    );
  }
});
