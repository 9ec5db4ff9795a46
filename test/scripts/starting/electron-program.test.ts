import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { electronProgram } from '../../../scripts/starting/electron-program.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'electron-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

test('the program is found only once its runtime is really there', () => {
  const found = [electronProgram(folder)];
  writeFileSync(path.join(folder, 'path.txt'), 'electron');
  found.push(electronProgram(folder));
  mkdirSync(path.join(folder, 'dist'));
  writeFileSync(path.join(folder, 'dist', 'electron'), '');
  found.push(electronProgram(folder));
  expect(found).toEqual([null, null, path.join(folder, 'dist', 'electron')]);
});
