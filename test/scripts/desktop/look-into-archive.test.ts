import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { createPackageWithOptions } from '@electron/asar';
import { expect, test } from 'vitest';
import { lookIntoArchive } from '../../../scripts/desktop/look-into-archive.ts';
import { temporaryFolder } from '../../main/support/temporary-folder.ts';

const elf = Buffer.from([0x7f, 0x45, 0x4c, 0x46]);
const machO = Buffer.from([0xcf, 0xfa, 0xed, 0xfe]);
const sound = {
  'package.json': '{}',
  LICENSE: 'MIT',
  '.build/app/desk.mjs': '',
  '.build/app/main.mjs': '',
  '.build/app/preload.cjs': '',
  '.build/app/probe.mjs': '',
  '.build/renderer/index.html': '',
  'node_modules/serial/prebuilds/linux-x64/serial.node': elf,
  'node_modules/@some/fonts/a.ttf': 'a font',
};

async function look(files: Readonly<Record<string, string | Uint8Array>>, unpack = '**/*.node') {
  const folder = await temporaryFolder();
  const source = path.join(folder, 'source');
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(source, name)), { recursive: true });
    writeFileSync(path.join(source, name), content);
  }
  await createPackageWithOptions(source, path.join(folder, 'app.asar'), { unpack, dot: true });
  return lookIntoArchive(folder);
}

test('nothing is said against an archive that holds what the program opens', async () => {
  const { complaints, packages } = await look(sound);
  expect({ complaints, first: packages[0] }).toEqual({ complaints: [], first: ['@some/fonts', 6] });
});

test('what is missing, strange, opened by nobody, or native for another system is told by its name', async () => {
  const { '.build/app/probe.mjs': _, ...rest } = sound;
  const { complaints } = await look({
    ...rest,
    'main/clock/clock.ts': '',
    'node_modules/serial/index.js.map': '',
    'node_modules/serial/prebuilds/win32-x64/serial.node': machO,
  });
  expect([...complaints].sort()).toEqual([
    '.build/app/probe.mjs is missing.',
    'main/clock/clock.ts has no business in the archive.',
    'main/clock/clock.ts is opened by nobody.',
    'node_modules/serial/index.js.map is opened by nobody.',
    'node_modules/serial/prebuilds/win32-x64/serial.node is for darwin, and lies where win32 looks.',
  ]);
});

test('a native module inside the archive cannot be loaded', async () => {
  const { complaints } = await look(sound, 'nothing');
  expect(complaints).toEqual(['node_modules/serial/prebuilds/linux-x64/serial.node is sealed in.']);
});
