/**
 * First step of every command: makes sure the packages are there, then runs `scripts/<name>.ts`.
 * Plain JavaScript because it must run before anything is installed.
 *
 * Usage: node scripts/run.mjs NAME [ARGUMENTS]
 */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { keepCachePrivate } from './private-cache.mjs';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));

/**
 * @typedef {{ version?: string, optional?: boolean, os?: string[], cpu?: string[], libc?: string[] }} LockedPackage
 * @param {string} file
 * @returns {Record<string, LockedPackage>}
 */
function readPackages(file) {
  try {
    return JSON.parse(readFileSync(path.join(root, file), 'utf8')).packages;
  } catch {
    return {};
  }
}

/** Whether npm's own list of what it installed has all that the lock file asks for on this computer. */
function isInstalled() {
  const installed = readPackages('node_modules/.package-lock.json');
  return Object.entries(readPackages('package-lock.json')).every(([folder, wanted]) => {
    if (folder === '' || installed[folder]?.version === wanted.version) return true;
    // npm passes over optional packages made for another system; Linux comes in two C libraries.
    const forThisComputer =
      wanted.os?.includes(process.platform) === true &&
      wanted.cpu?.includes(process.arch) === true &&
      wanted.libc === undefined;
    return wanted.optional === true && !forThisComputer;
  });
}

function install() {
  console.error('Installing the packages this project needs (once, about a minute) …');
  const windows = process.platform === 'win32';
  // Where the environment is called production, npm leaves out what the window is built from.
  const done = spawnSync(windows ? 'npm.cmd' : 'npm', ['ci', '--include=dev', '--loglevel=error'], {
    cwd: root,
    // npm's own chatter goes to the error stream, so that `--silent` commands print only their answer.
    stdio: ['ignore', process.stderr, process.stderr],
    shell: windows,
  });
  if (done.status !== 0) {
    console.error(
      'The packages could not be installed. Check the network connection and try again.',
    );
    process.exit(done.status ?? 1);
  }
}

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Node.js 20.19 or newer is needed; this is ${process.versions.node}.`);
  process.exit(1);
}
if (!isInstalled()) install();

const [name, ...rest] = process.argv.slice(2);
const script = path.join(root, 'scripts', `${name}.ts`);
// What a script is for stands at its head; one with more to say refers to its own `--help` there, and is left to answer.
const [, about = ''] = /^\/\*\*\n([\s\S]*?)\n \*\//.exec(readFileSync(script, 'utf8')) ?? [];
if (rest.includes('--help') && !about.includes('-- --help')) {
  console.log(about.replaceAll(/^ \* ?/gm, ''));
  process.exit(0);
}
// In this very process, so that signals and exit codes need no passing on.
keepCachePrivate();
const { register } = await import('tsx/esm/api');
const stopTranslating = register();
process.argv = [process.execPath, script, ...rest];
const { untranslated } = await import(pathToFileURL(script).href);
if (untranslated !== undefined) {
  // What is built needs no translator, which would take it apart all the same.
  await stopTranslating();
  await untranslated();
}
