import { chmodSync, mkdirSync, mkdtempSync, rmSync, statSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { expect, onTestFinished, test } from 'vitest';
import { keepCachePrivate } from '../../../scripts/private-cache.mjs';

/** Whether translations would be kept in and run from the folder that is prepared like this. */
function isUsed(prepare: (cache: string, folder: string) => void): boolean {
  const folder = mkdtempSync(path.join(tmpdir(), 'cache-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  prepare(path.join(folder, `tsx-${process.getuid?.()}`), folder);
  const environment: Record<string, string | undefined> = {};
  keepCachePrivate(folder, environment);
  return environment.TSX_DISABLE_CACHE === undefined;
}

test('translations are kept only where nobody else can have put any', () => {
  expect({
    none: isUsed(() => {}),
    own: isUsed((cache) => mkdirSync(cache, { mode: 0o755 })),
    writable: isUsed((cache) => {
      mkdirSync(cache);
      chmodSync(cache, 0o777);
    }),
    elsewhere: isUsed((cache, folder) => {
      mkdirSync(path.join(folder, 'trap'));
      symlinkSync(path.join(folder, 'trap'), cache);
    }),
  }).toEqual({ none: true, own: true, writable: false, elsewhere: false });
});

test('a folder made for them is closed to everybody else', () => {
  let made = '';
  isUsed((cache) => {
    made = cache;
  });
  expect(statSync(made).mode & 0o777).toBe(0o700);
});
