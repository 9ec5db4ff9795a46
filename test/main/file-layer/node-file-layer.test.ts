import { statSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { nodeFileLayer } from '#main';
import { temporaryFolder } from '../support/temporary-folder.ts';

test('a closed file takes nothing, even when its number has gone to another file', async () => {
  const folder = await temporaryFolder();
  const [first, second] = ['first', 'second'].map((name) => path.join(folder, name));
  const closed = nodeFileLayer.createAppend(first ?? '');
  if (!closed.ok) throw new Error(closed.error.message);
  await closed.value.close();
  const open = nodeFileLayer.createAppend(second ?? '');
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
  const file = nodeFileLayer.createAppend(path.join(folder, 'run.jsonl'));
  if (!file.ok) throw new Error(file.error.message);
  await file.value.close();
  const modes = [path.dirname(folder), folder, path.join(folder, 'run.jsonl')].map(
    (made) => statSync(made).mode & 0o777,
  );
  expect(modes).toEqual([0o700, 0o700, 0o600]);
});
