import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { runCommand } from '../../scripts/testing/run-command.ts';
import { projectRoot } from '../../scripts/testing/step.ts';

let folder: string;

/** A folder that holds shared-core with the packages it may import, and nothing else that could be imported. */
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'alone-'));
  cpSync(path.join(projectRoot, 'shared-core'), path.join(folder, 'shared-core'), {
    recursive: true,
  });
  writeFileSync(path.join(folder, 'package.json'), '{"type":"module"}');
  mkdirSync(path.join(folder, 'node_modules'));
  for (const name of ['zod', 'intl-messageformat', '@formatjs']) {
    const packageFolder = path.join('node_modules', name);
    cpSync(path.join(projectRoot, packageFolder), path.join(folder, packageFolder), {
      recursive: true,
    });
  }
  symlinkSync(path.join(projectRoot, 'tsconfig.json'), path.join(folder, 'tsconfig.json'));
});
afterAll(() => rmSync(folder, { recursive: true }));

test('shared-core loads and computes where react, electron and every other package are absent', async () => {
  writeFileSync(
    path.join(folder, 'probe.mjs'),
    `const absent = await Promise.all(
       ['react', 'electron', 'serialport'].map((name) => import(name).then(() => false, () => true)),
     );
     const core = await import('./shared-core/index.ts');
     const { temperatureC } = core.azeotrope(101.325);
     console.log(JSON.stringify({ absent, temperatureC }));`,
  );
  const tsx = pathToFileURL(path.join(projectRoot, 'node_modules', 'tsx', 'dist', 'loader.mjs'));
  const { output } = await runCommand(process.execPath, ['--import', tsx.href, 'probe.mjs'], {
    cwd: folder,
  });
  // Ethanol–water azeotrope at one atmosphere: 78.1 to 78.2 °C (Kamihama 2012 and handbooks).
  expect(JSON.parse(output)).toEqual({
    absent: [true, true, true],
    temperatureC: expect.closeTo(78.15, 1),
  });
});
