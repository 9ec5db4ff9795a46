import { mkdtempSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { readDoorFile, removeDoorFile, writeDoorFile } from '../../../app/loopback/door-file.ts';
import { browserCommand } from '../../../app/loopback/open-browser.ts';

const door = { address: 'http://127.0.0.1:40123/new-window', key: 'abc_DEF-123' };

function temporary(): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'door-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  return folder;
}

test('the way in lies in a file that only its owner can read, and in no command line', async () => {
  const folder = temporary();
  const file = (await writeDoorFile(folder, door)) ?? '';
  expect(await readDoorFile(folder)).toEqual(door);
  expect(statSync(file).mode & 0o777).toBe(0o600);
  for (const platform of ['linux', 'darwin', 'win32'] as const) {
    expect(JSON.stringify(browserCommand(platform, file))).not.toContain(door.key);
  }
  // A program that was started later has its own page there, and keeps it.
  await removeDoorFile(folder, { ...door, key: 'earlier' });
  expect(await readDoorFile(folder)).toEqual(door);
  await removeDoorFile(folder, door);
  expect(await readDoorFile(folder)).toBeNull();
  expect(statSync(file, { throwIfNoEntry: false })).toBeUndefined();
});

test('what lies in its place is replaced, never written through', async () => {
  const folder = temporary();
  const elsewhere = path.join(folder, 'elsewhere');
  writeFileSync(elsewhere, 'untouched');
  symlinkSync(elsewhere, path.join(folder, 'open-window.html'));
  expect(await writeDoorFile(folder, door)).toBe(path.join(folder, 'open-window.html'));
  expect(readFileSync(elsewhere, 'utf8')).toBe('untouched');
  expect(await writeDoorFile(path.join(folder, 'missing'), door)).toBeNull();
});
