import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readWindowFile } from '../../../app/files/read-window-file.ts';

let base: string;
let folder: string;

beforeAll(() => {
  base = mkdtempSync(path.join(tmpdir(), 'window-'));
  folder = path.join(base, 'window');
  mkdirSync(path.join(folder, 'assets'), { recursive: true });
  writeFileSync(path.join(folder, 'index.html'), '<p>ok</p>');
  writeFileSync(path.join(folder, 'assets', 'data.bin'), 'x');
  writeFileSync(path.join(base, 'secret.txt'), 'secret');
  symlinkSync(path.join(base, 'secret.txt'), path.join(folder, 'link.txt'));
  symlinkSync(base, path.join(folder, 'linked'));
  symlinkSync(path.join(folder, 'index.html'), path.join(folder, 'again.html'));
});
afterAll(() => rmSync(base, { recursive: true }));

test('reads a file with its media type, through a link that stays inside', async () => {
  expect(await readWindowFile(folder, '/')).toEqual({
    ok: true,
    value: { content: Buffer.from('<p>ok</p>'), mediaType: 'text/html; charset=utf-8' },
  });
  expect(await readWindowFile(folder, '/again.html')).toMatchObject({ ok: true });
  expect(await readWindowFile(folder, '/assets/data.bin')).toEqual({
    ok: true,
    value: { content: Buffer.from('x'), mediaType: 'application/octet-stream' },
  });
});

test.each([
  ['/link.txt', 'outside-folder'],
  ['/linked/secret.txt', 'outside-folder'],
  ['/nothing.js', 'no-such-file'],
  ['/assets', 'no-such-file'],
])('refuses %s as %s', async (address, kind) => {
  expect(await readWindowFile(folder, address)).toEqual({ ok: false, error: { kind, address } });
});
