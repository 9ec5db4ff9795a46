import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { readTextFile } from '#main';
import { temporaryFolder } from '../support/temporary-folder.ts';

const text = 'Zeit (s);Kopf (°C)\n0;20,5 µ\n';
const utf16 = Buffer.from(`\ufeff${text}`, 'utf16le');

test.each<[string, Uint8Array]>([
  ['UTF-8', Buffer.from(text, 'utf8')],
  ['UTF-8 with its mark', Buffer.from(`\ufeff${text}`, 'utf8')],
  ['UTF-16, low byte first', utf16],
  ['UTF-16, high byte first', Buffer.from(utf16).swap16()],
  ['UTF-16 without a mark, low byte first', Buffer.from(text, 'utf16le')],
  ['UTF-16 without a mark, high byte first', Buffer.from(text, 'utf16le').swap16()],
  ['Windows-1252', Buffer.from(text, 'latin1')],
])('a file in %s is read as its text', async (_, bytes) => {
  const file = path.join(await temporaryFolder(), 'a.csv');
  await writeFile(file, bytes);
  expect(await readTextFile(file)).toEqual({ ok: true, value: text });
});

test('a file that is not there is a problem, not an exception', async () => {
  expect(await readTextFile('/nowhere/a.csv')).toMatchObject({
    ok: false,
    error: { kind: 'missing', path: '/nowhere/a.csv' },
  });
});
