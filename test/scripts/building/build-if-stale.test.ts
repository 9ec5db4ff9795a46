import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { buildIfStale } from '../../../scripts/building/build-if-stale.ts';

let root: string;
let builds: number;

beforeEach(() => {
  root = mkdtempSync(path.join(tmpdir(), 'build-'));
  builds = 0;
  mkdirSync(path.join(root, 'source', 'inner'), { recursive: true });
  writeFileSync(path.join(root, 'source', 'inner', 'a.ts'), 'one');
  writeFileSync(path.join(root, 'lock.json'), '{}');
});
afterEach(() => rmSync(root, { recursive: true }));

function build(): Promise<boolean> {
  const target = {
    name: 'a thing',
    outputFolder: path.join(root, 'out'),
    inputs: ['source', 'lock.json'],
    async build() {
      builds += 1;
    },
  };
  return buildIfStale(target, { root, report: () => {} });
}

test('an unchanged source is not built again, whatever its date', async () => {
  await build();
  utimesSync(path.join(root, 'source', 'inner', 'a.ts'), new Date(), new Date());
  expect([await build(), builds]).toEqual([false, 1]);
});

test('a changed, added, renamed or removed file builds again', async () => {
  const file = (name: string) => path.join(root, 'source', 'inner', name);
  const changes = [
    () => writeFileSync(file('a.ts'), 'two'),
    () => writeFileSync(file('b.ts'), ''),
    () => {
      rmSync(file('b.ts'));
      writeFileSync(file('c.ts'), '');
    },
    () => rmSync(file('c.ts')),
    () => writeFileSync(path.join(root, 'lock.json'), '{ }'),
  ];
  await build();
  const rebuilt: boolean[] = [];
  for (const change of changes) {
    change();
    rebuilt.push(await build());
  }
  expect(rebuilt).toEqual([true, true, true, true, true]);
});

test('a build that fails is tried again', async () => {
  const target = {
    name: 'a thing',
    outputFolder: path.join(root, 'out'),
    inputs: ['source'],
    build: async () => {
      builds += 1;
      if (builds === 1) throw new Error('no');
    },
  };
  const attempt = () => buildIfStale(target, { root, report: () => {} });
  await expect(attempt()).rejects.toThrow('no');
  expect([await attempt(), builds]).toEqual([true, 2]);
});
