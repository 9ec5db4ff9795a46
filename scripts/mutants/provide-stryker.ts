import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { runCommand } from '../testing/run-command.ts';
import { projectRoot } from '../testing/step.ts';

/** Version 10 needs Node 22. */
const version = '9.6.1';
const packages = ['@stryker-mutator/core', '@stryker-mutator/vitest-runner'];

/**
 * The entry file of the mutation tool; null when it could not be installed. It is no development dependency: nobody else is to wait for its
 * 128 packages and 51 MB. In a folder inside the project it finds the project's own Vitest.
 */
export async function provideStryker(report: (line: string) => void): Promise<string | null> {
  const folder = path.join(projectRoot, '.build', 'mutation-tools', version);
  const entry = path.join(folder, 'node_modules', '@stryker-mutator', 'core', 'bin', 'stryker.js');
  const done = path.join(folder, 'installed');
  if (existsSync(done)) return entry;
  report('Installing the mutation tool into .build (once, about a minute) …');
  mkdirSync(folder, { recursive: true });
  writeFileSync(path.join(folder, 'package.json'), '{ "private": true }\n');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const { code, output } = await runCommand(
    npm,
    [
      'install',
      ...packages.map((name) => `${name}@${version}`),
      // Its own Vitest would be another one than the tests'.
      '--legacy-peer-deps',
      '--ignore-scripts',
      '--no-audit',
      '--no-fund',
      '--loglevel=error',
    ],
    { cwd: folder },
  );
  if (code !== 0) {
    report(`It could not be installed. Check the network connection and try again.\n${output}`);
    return null;
  }
  writeFileSync(done, '');
  return entry;
}
