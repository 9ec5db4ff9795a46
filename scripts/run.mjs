/**
 * First step of every command: makes sure the packages are there, then runs `scripts/<name>.ts`.
 * Plain JavaScript because it must run before anything is installed.
 *
 * Usage: node scripts/run.mjs NAME [ARGUMENTS]
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
const stampFile = path.join(root, 'node_modules', '.installed-lock');

function lockFingerprint() {
  const lock = readFileSync(path.join(root, 'package-lock.json'));
  return createHash('sha256')
    .update(lock)
    .update(process.platform)
    .update(process.arch)
    .digest('hex');
}

function isInstalled() {
  return existsSync(stampFile) && readFileSync(stampFile, 'utf8') === lockFingerprint();
}

function install() {
  console.error('Installing the packages this project needs (once, about a minute) …');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const done = spawnSync(npm, ['ci', '--no-fund', '--no-audit', '--loglevel=error'], {
    cwd: root,
    // npm's own chatter goes to the error stream, so that `--silent` commands print only their answer.
    stdio: ['ignore', process.stderr, process.stderr],
    shell: process.platform === 'win32',
  });
  if (done.status !== 0) {
    console.error(
      'The packages could not be installed. Check the network connection and try again.',
    );
    process.exit(done.status ?? 1);
  }
  writeFileSync(stampFile, lockFingerprint());
}

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Node.js 20.19 or newer is needed; this is ${process.versions.node}.`);
  process.exit(1);
}
if (!isInstalled()) install();

const [name, ...rest] = process.argv.slice(2);
const run = spawnSync(
  process.execPath,
  ['--import', 'tsx', path.join(root, 'scripts', `${name}.ts`), ...rest],
  { stdio: 'inherit' },
);
process.exit(run.status ?? 1);
