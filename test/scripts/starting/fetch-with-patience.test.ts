import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { fetchWithPatience } from '../../../scripts/starting/fetch-with-patience.ts';

let base: string;
beforeEach(() => {
  base = mkdtempSync(path.join(tmpdir(), 'fetch-'));
});
afterEach(() => rmSync(base, { recursive: true }));

async function fetchWith(installerText: string, patienceMs = 1000) {
  const installer = path.join(base, 'installer.cjs');
  writeFileSync(installer, installerText);
  const lines: string[] = [];
  const temporaryFolder = path.join(base, 'temporary');
  const fetched = await fetchWithPatience({
    installer,
    temporaryFolder,
    patienceMs,
    report: (line) => lines.push(line),
  });
  return { fetched, lines, left: existsSync(temporaryFolder) };
}

test('a download that brings nothing is ended', async () => {
  expect(await fetchWith('setInterval(() => {}, 1000);')).toEqual({
    fetched: false,
    lines: [],
    left: false,
  });
});

test('a download that arrives is told of and leaves nothing in the temporary folder', async () => {
  // Whole at once, and so long before the end that a machine with other work to do looks in between.
  const installer = `
    const { renameSync, writeFileSync } = require('node:fs');
    const folder = require('node:os').tmpdir();
    writeFileSync(folder + '-part', Buffer.alloc(25_000_000));
    renameSync(folder + '-part', require('node:path').join(folder, 'part'));
    setTimeout(() => {}, 3000);`;
  expect(await fetchWith(installer, 60_000)).toEqual({
    fetched: true,
    lines: ['… 25 MB fetched'],
    left: false,
  });
});

test('an installer that fails is a failure', async () => {
  expect((await fetchWith('process.exit(1);', 60_000)).fetched).toBe(false);
});
