import { statSync } from 'node:fs';
import { readFile, statfs } from 'node:fs/promises';
import path from 'node:path';
import process from 'node:process';
import { expect, test } from 'vitest';
import { nodeFileLayer } from '#main';
import { temporaryFolder } from '../support/temporary-folder.ts';

test('a closed file takes nothing, even when its number has gone to another file', async () => {
  const folder = await temporaryFolder();
  const [first, second] = ['first', 'second'].map((name) => path.join(folder, name));
  const closed = await nodeFileLayer.createAppend(first ?? '');
  if (!closed.ok) throw new Error(closed.error.message);
  await closed.value.close();
  const open = await nodeFileLayer.createAppend(second ?? '');
  if (!open.ok) throw new Error(open.error.message);

  const refused = {
    ok: false,
    error: { kind: 'failed', path: first, message: 'The file is closed.' },
  };
  expect(closed.value.write(Buffer.from('stray'))).toEqual(refused);
  expect(await closed.value.sync()).toEqual(refused);
  await closed.value.close();
  expect(open.value.write(Buffer.from('kept'))).toEqual({ ok: true, value: 4 });
  await open.value.close();
  expect(await readFile(second ?? '', 'utf8')).toBe('kept');
});

test('what it makes is for the eyes of this user alone', async () => {
  const folder = path.join(await temporaryFolder(), 'runs', 'one');
  await nodeFileLayer.makeFolder(folder);
  const file = await nodeFileLayer.createAppend(path.join(folder, 'run.jsonl'));
  if (!file.ok) throw new Error(file.error.message);
  await file.value.close();
  const modes = [path.dirname(folder), folder, path.join(folder, 'run.jsonl')].map(
    (made) => statSync(made).mode & 0o777,
  );
  expect(modes).toEqual([0o700, 0o700, 0o600]);
});

const value = <T>(result: { readonly ok: true; readonly value: T } | { readonly ok: false }): T => {
  if (!result.ok) throw new Error('It failed.');
  return result.value;
};

test('a file is made once, and added to only where it is', async () => {
  const file = path.join(await temporaryFolder(), 'run.jsonl');
  expect(await nodeFileLayer.openAppend(file)).toMatchObject({
    error: { kind: 'missing', path: file },
  });
  const made = value(await nodeFileLayer.createAppend(file));
  expect(made.write(Buffer.from('one\n'))).toEqual({ ok: true, value: 4 });
  expect(await made.sync()).toEqual({ ok: true, value: undefined });
  await made.close();
  expect(await nodeFileLayer.createAppend(file)).toMatchObject({
    error: { kind: 'exists', path: file },
  });
  const again = value(await nodeFileLayer.openAppend(file));
  again.write(Buffer.from('two\n'));
  await again.close();
  expect(await readFile(file, 'utf8')).toBe('one\ntwo\n');
});

test('a write waits for no disk: it is on its way once asked for, and there in order after the sync', async () => {
  const file = path.join(await temporaryFolder(), 'run.jsonl');
  const made = value(await nodeFileLayer.createAppend(file));
  const lines = Array.from({ length: 2000 }, (_, index) => `line ${index}\n`);
  for (const line of lines.slice(0, 1000)) made.write(Buffer.from(line));
  expect(statSync(file).size).toBe(0);
  const synced = made.sync();
  for (const line of lines.slice(1000)) made.write(Buffer.from(line));
  expect(await synced).toEqual({ ok: true, value: undefined });
  expect((await readFile(file, 'utf8')).startsWith(lines.slice(0, 1000).join(''))).toBe(true);
  expect(await made.sync()).toEqual({ ok: true, value: undefined });
  expect(await readFile(file, 'utf8')).toBe(lines.join(''));
  await made.close();
});

test.skipIf(process.platform !== 'linux')(
  'what the disk refused is told by the next sync and by every write after it, and nothing follows it',
  async () => {
    const full = value(await nodeFileLayer.openAppend('/dev/full'));
    const refused = { ok: false, error: { kind: 'full', path: '/dev/full' } };
    expect(full.write(Buffer.from('one'))).toEqual({ ok: true, value: 3 });
    expect(await full.sync()).toMatchObject(refused);
    expect(full.write(Buffer.from('two'))).toMatchObject(refused);
    expect(await full.sync()).toMatchObject(refused);
    await full.close();
  },
);

test('folders are made with those above them, claimed once, listed, and their names kept', async () => {
  const folder = await temporaryFolder();
  const inner = path.join(folder, 'a', 'b');
  const done = { ok: true, value: undefined };
  expect([
    await nodeFileLayer.makeFolder(inner),
    await nodeFileLayer.makeFolder(inner),
    await nodeFileLayer.claimFolder(path.join(folder, 'c')),
    await nodeFileLayer.syncFolder(folder),
  ]).toEqual([done, done, done, done]);
  expect(statSync(path.join(folder, 'c')).mode & 0o777).toBe(0o700);
  expect(await nodeFileLayer.claimFolder(path.join(folder, 'c'))).toMatchObject({
    error: { kind: 'exists' },
  });
  expect(await nodeFileLayer.syncFolder(path.join(folder, 'd'))).toMatchObject({
    error: { kind: 'missing' },
  });
  await value(await nodeFileLayer.createAppend(path.join(folder, 'e'))).close();
  const listed = value(await nodeFileLayer.list(folder));
  expect([...listed].sort((a, b) => a.name.localeCompare(b.name))).toEqual([
    { name: 'a', isFolder: true },
    { name: 'c', isFolder: true },
    { name: 'e', isFolder: false },
  ]);
  expect(await nodeFileLayer.list(path.join(folder, 'd'))).toMatchObject({
    error: { kind: 'missing' },
  });
});

test('a file is read from anywhere, cut, renamed over another at one stroke, and removed with all that is in it', async () => {
  const folder = await temporaryFolder();
  const [from, to] = [path.join(folder, 'from'), path.join(folder, 'to')];
  for (const [file, text] of [
    [from, '0123456789'],
    [to, 'old'],
  ] as const) {
    const made = value(await nodeFileLayer.createAppend(file));
    made.write(Buffer.from(text));
    await made.close();
  }
  const read = async (offset: number, length: number) =>
    Buffer.from(value(await nodeFileLayer.read(from, offset, length))).toString();
  expect([await read(0, 4), await read(3, 3), await read(8, 100), await read(20, 5)]).toEqual([
    '0123',
    '345',
    '89',
    '',
  ]);
  expect(await nodeFileLayer.truncate(from, 6)).toEqual({ ok: true, value: undefined });
  expect(await nodeFileLayer.sizeBytes(from)).toEqual({ ok: true, value: 6 });
  expect(await nodeFileLayer.rename(from, to)).toEqual({ ok: true, value: undefined });
  expect(await readFile(to, 'utf8')).toBe('012345');
  expect(await nodeFileLayer.sizeBytes(from)).toMatchObject({ error: { kind: 'missing' } });
  expect(await nodeFileLayer.remove(folder)).toEqual({ ok: true, value: undefined });
  for (const answer of [
    nodeFileLayer.read(to, 0, 1),
    nodeFileLayer.truncate(to, 0),
    nodeFileLayer.rename(to, from),
    nodeFileLayer.remove(to),
    nodeFileLayer.freeBytes(to),
  ]) {
    expect(await answer).toMatchObject({ ok: false, error: { kind: 'missing' } });
  }
});

test('how much room is left is what the system says', async () => {
  const folder = await temporaryFolder();
  const { bavail, bsize } = await statfs(folder);
  const free = value(await nodeFileLayer.freeBytes(folder));
  // Other programs write meanwhile.
  expect(Math.abs(free / (bavail * bsize) - 1)).toBeLessThan(0.2);
});
