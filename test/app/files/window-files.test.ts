import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { createWindowFiles } from '../../../app/files/index.ts';
import { temporaryFolder } from '../../main/support/temporary-folder.ts';

async function builtWindow() {
  const folder = path.join(await temporaryFolder(), 'window');
  mkdirSync(path.join(folder, 'assets'), { recursive: true });
  writeFileSync(path.join(folder, 'index.html'), '<p>ok</p>');
  writeFileSync(path.join(folder, 'assets', 'Übersicht 1.js'), 'x');
  return folder;
}

test('once a page was given, all files of the window are had without the disk', async () => {
  let waitMs = 20;
  const withoutDisk = async () => {
    const folder = await builtWindow();
    const files = createWindowFiles(folder);
    expect(await files.read('/')).toMatchObject({ ok: true });
    // However slow this computer is, at some time all has been read ahead.
    waitMs *= 2;
    await pause(waitMs);
    rmSync(folder, { recursive: true });
    const named = ['/', '/index.html', '/assets/%C3%9Cbersicht%201.js', '/assets'];
    return (await Promise.all(named.map((address) => files.read(address)))).map(({ ok }) => ok);
  };
  await expect.poll(withoutDisk, { timeout: 20_000 }).toEqual([true, true, true, false]);
});

test('refuses what is not of the window, and reads nothing ahead for it', async () => {
  const folder = await builtWindow();
  const files = createWindowFiles(folder);
  expect(await files.read('/nothing.js')).toMatchObject({ error: { kind: 'no-such-file' } });
  expect(await files.read('/../secret')).toMatchObject({ error: { kind: 'outside-folder' } });
  rmSync(folder, { recursive: true });
  expect(await files.read('/')).toMatchObject({ error: { kind: 'no-such-file' } });
});
