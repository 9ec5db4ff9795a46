import { mkdtempSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { removeDoorFile, writeDoorFile } from '../../../app/loopback/door-file.ts';
import { browserCommand } from '../../../app/loopback/open-browser.ts';

const url = 'http://127.0.0.1:40123/#token=abc_DEF-123';

function temporary(): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'door-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  return folder;
}

test('the way in lies in a file that only its owner can read, and in no command line', async () => {
  const folder = temporary();
  const file = (await writeDoorFile(folder, url)) ?? '';
  expect(readFileSync(file, 'utf8')).toContain(`content="0; url=${url}"`);
  expect(statSync(file).mode & 0o777).toBe(0o600);
  for (const platform of ['linux', 'darwin', 'win32'] as const) {
    expect(JSON.stringify(browserCommand(platform, file))).not.toContain('token');
  }
  await removeDoorFile(folder);
  expect(statSync(file, { throwIfNoEntry: false })).toBeUndefined();
});

test('what lies in its place is replaced, never written through', async () => {
  const folder = temporary();
  const elsewhere = path.join(folder, 'elsewhere');
  writeFileSync(elsewhere, 'untouched');
  symlinkSync(elsewhere, path.join(folder, 'open-window.html'));
  expect(await writeDoorFile(folder, url)).toBe(path.join(folder, 'open-window.html'));
  expect(readFileSync(elsewhere, 'utf8')).toBe('untouched');
  expect(await writeDoorFile(path.join(folder, 'missing'), url)).toBeNull();
});
