import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { cutTornTail, type FileLayer, nodeFileLayer } from '#main';
import { encodeRecord, firstPreviousChecksum, succeed } from '#shared-core';
import { failingFiles } from '../support/failing-files.ts';
import { logHeader } from '../support/log-header.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const { line: whole } = encodeRecord(
  { kind: 'header', header: logHeader() },
  { seq: 0, monoS: 0, wallMs: 0 },
  firstPreviousChecksum,
);
/** More than two pieces of a megabyte, no two places of it alike. */
const torn = Array.from({ length: 320_000 }, (_, place) => `${place}`.padStart(7)).join('');
const copyName = `run.jsonl.torn-at-${whole.length}`;
const cutOff = { offset: whole.length, bytes: torn.length };

async function tornLog(tail = torn) {
  const folder = await temporaryFolder();
  await writeFile(path.join(folder, 'run.jsonl'), whole + tail, 'latin1');
  const text = (name: string) => readFile(path.join(folder, name), 'latin1');
  return { folder, text };
}

test('a long torn end is kept beside the log to the byte, in the right order, and cut; a second look finds none', async () => {
  const { folder, text } = await tornLog();
  expect(await cutTornTail(nodeFileLayer, folder, 'run.jsonl')).toEqual(succeed(cutOff));
  expect([await text('run.jsonl'), (await text(copyName)) === torn]).toEqual([whole, true]);
  expect(await cutTornTail(nodeFileLayer, folder, 'run.jsonl')).toEqual(succeed(null));
  expect((await readdir(folder)).sort()).toEqual(['run.jsonl', copyName]);
});

test('wherever the disk fails, the problem is told, no file stays open and not a byte is lost, and a second try does it', async () => {
  const sound = failingFiles(-1);
  const bench = await tornLog();
  await cutTornTail(sound.files, bench.folder, 'run.jsonl');
  const operations = sound.done();
  expect(new Set(operations)).toEqual(
    new Set(['read', 'createAppend', 'write', 'sync', 'syncFolder', 'truncate']),
  );
  for (const failure of ['refuses', 'takes half'] as const) {
    for (const [failAt, operation] of operations.entries()) {
      if (failure === 'takes half' && operation !== 'write') continue;
      const { folder, text } = await tornLog();
      const disk = failingFiles(failAt, failure);
      const cut = await cutTornTail(disk.files, folder, 'run.jsonl');
      expect([failAt, cut]).toMatchObject([
        failAt,
        { ok: false, error: { kind: failure === 'refuses' ? 'failed' : 'full' } },
      ]);
      expect([disk.stillOpen(), (await text('run.jsonl')) === whole + torn]).toEqual([0, true]);
      expect(await cutTornTail(nodeFileLayer, folder, 'run.jsonl')).toEqual(succeed(cutOff));
      expect([await text('run.jsonl'), (await text(copyName)) === torn]).toEqual([whole, true]);
    }
  }
});

test('a disk that takes nothing without saying why is full, and nothing is cut', async () => {
  const { folder, text } = await tornLog();
  const createAppend: FileLayer['createAppend'] = async (at) => {
    const opened = await nodeFileLayer.createAppend(at);
    return opened.ok ? succeed({ ...opened.value, write: () => succeed(0) }) : opened;
  };
  const cut = await cutTornTail({ ...nodeFileLayer, createAppend }, folder, 'run.jsonl');
  expect(cut).toEqual({
    ok: false,
    error: {
      kind: 'full',
      path: path.join(folder, copyName),
      message: 'The torn end could not be kept.',
    },
  });
  expect((await text('run.jsonl')) === whole + torn).toBe(true);
});

test('a copy left by an earlier try is made anew, and where that one cannot go nothing is cut', async () => {
  const { folder, text } = await tornLog('{"seq":1,"tor');
  await writeFile(path.join(folder, copyName), 'half of it and something else', 'latin1');
  const remove: FileLayer['remove'] = async (at) => ({
    ok: false,
    error: { kind: 'read-only', path: at, message: 'EACCES' },
  });
  const refused = await cutTornTail({ ...nodeFileLayer, remove }, folder, 'run.jsonl');
  expect([refused, await text('run.jsonl')]).toMatchObject([
    { ok: false, error: { kind: 'read-only' } },
    `${whole}{"seq":1,"tor`,
  ]);
  expect(await cutTornTail(nodeFileLayer, folder, 'run.jsonl')).toMatchObject({ ok: true });
  expect([await text('run.jsonl'), await text(copyName)]).toEqual([whole, '{"seq":1,"tor']);
});
