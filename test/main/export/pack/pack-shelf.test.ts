import { readdir } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { type FileLayer, nodeFileLayer } from '#main';
import { contractLimits, fail, succeed } from '#shared-core';
import type { PackOrder } from '../../../../main/export/pack/pack-order.ts';
import { createPackShelf } from '../../../../main/export/pack/pack-shelf.ts';

const full = (file: string) => fail({ kind: 'full', path: file, message: 'ENOSPC' } as const);

function shelf(other: Partial<FileLayer> = {}) {
  const made: string[] = [];
  const files: FileLayer = {
    ...nodeFileLayer,
    rename(from, to) {
      made.push(to);
      return nodeFileLayer.rename(from, to);
    },
    ...other,
  };
  const packs = createPackShelf(files, () => {});
  onTestFinished(() => packs.close());
  const keep = (packId: string, text: string) =>
    packs.keep(packId, { fileName: `${packId}.csv`, content: [text] });
  const read = async (packId: string, fromByte = 0) => {
    const piece = await packs.read(packId, fromByte);
    return piece.ok
      ? [Buffer.from(piece.value.piece).toString(), piece.value.nextByte]
      : piece.error.kind;
  };
  return { packs, keep, read, made };
}

test('a file is fetched in pieces from any byte on, and gone once it is dropped', async () => {
  const { packs, keep, read, made } = shelf();
  expect(await keep('a', 'zwölf\n')).toEqual(succeed({ fileName: 'a.csv', bytes: 7 }));
  expect([await read('a'), await read('a', 5), await read('a', 7), await read('b')]).toEqual([
    ['zwölf\n', null],
    ['f\n', null],
    ['', null],
    'no-such-pack',
  ]);
  await packs.drop('a');
  expect([await read('a'), await nodeFileLayer.sizeBytes(made[0] ?? '')]).toMatchObject([
    'no-such-pack',
    { ok: false },
  ]);
  await packs.drop('a');
});

test('what is longer than a piece comes in several', async () => {
  const { keep, read } = shelf();
  const size = contractLimits.pieceBytes;
  await keep('a', 'x'.repeat(size + 1));
  const [first, next] = await read('a');
  expect([(first as string).length, next, await read('a', size)]).toEqual([
    size,
    size,
    ['x', null],
  ]);
  await keep('b', 'x'.repeat(size));
  expect((await read('b'))[1]).toBeNull();
});

test('another file under the same name takes its place, and the oldest of five makes room', async () => {
  const { keep, read, made } = shelf();
  await keep('a', 'old');
  await keep('a', 'new');
  expect(await read('a')).toEqual(['new', null]);
  for (const packId of ['b', 'c', 'd']) await keep(packId, packId);
  // One of the four made anew needs no room.
  await keep('d', 'anew');
  expect([await read('a'), await read('d')]).toEqual([
    ['new', null],
    ['anew', null],
  ]);
  await keep('e', 'e');
  expect([await read('a'), await read('b'), await read('e')]).toEqual([
    'no-such-pack',
    ['b', null],
    ['e', null],
  ]);
  expect(await readdir(path.dirname(made[0] ?? ''))).toHaveLength(4);
});

test('closing takes the folder of the system’s away with all that lies in it', async () => {
  const { packs, keep, read, made } = shelf();
  await packs.close();
  await keep('a', 'a');
  const folder = path.dirname(made[0] ?? '');
  expect(path.dirname(folder)).toBe(tmpdir());
  await packs.close();
  expect(await read('a')).toBe('no-such-pack');
  await expect(readdir(folder)).rejects.toThrow('ENOENT');
});

test('a disk that is full is told, and what was there before stays', async () => {
  let isFull = false;
  const { keep, read } = shelf({
    createAppend: async (file) => (isFull ? full(file) : await nodeFileLayer.createAppend(file)),
  });
  await keep('a', 'old');
  isFull = true;
  expect(await keep('a', 'new')).toMatchObject({ ok: false, error: { kind: 'full' } });
  expect(await read('a')).toEqual(['old', null]);
});

test('how far a pack is goes from nothing to all, two fifths of it for going through the runs', async () => {
  const told: unknown[] = [];
  const packs = createPackShelf(nodeFileLayer, (progress) => told.push(progress));
  onTestFinished(() => packs.close());
  const order = {
    kind: { files: () => [] },
    createdMs: 0,
    work: async (onStudied: (name: string, index: number, count: number) => void) => {
      onStudied('Pear', 0, 3);
      onStudied('Quince', 1, 3);
      throw new Error('as a test asks');
    },
  } as unknown as PackOrder<never>;
  await expect(packs.make('a', order)).rejects.toThrow('as a test asks');
  expect(told).toEqual([
    { packId: 'a', doing: 'Pear', done: 0, total: 100 },
    { packId: 'a', doing: 'Quince', done: 13, total: 100 },
  ]);
});
