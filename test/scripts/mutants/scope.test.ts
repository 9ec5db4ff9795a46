import { expect, test } from 'vitest';
import { scopeOf } from '../../../scripts/mutants/scope.ts';

const summary = (folder: string, isFolder = true) => {
  const scope = scopeOf(folder, isFolder);
  return scope && [scope.mutate, scope.tests[0], scope.keeps];
};

test('a folder is held against the tests at its own path, or at the nearest one above with tests', () => {
  expect([
    summary('shared-core/frame'),
    summary('shared-core/frame/latin-1.ts', false),
    summary('main/probe/talk'),
  ]).toEqual([
    ['shared-core/frame/**/*.ts', 'test/shared-core/frame/**/*.test.ts', 'thread'],
    ['shared-core/frame/latin-1.ts', 'test/shared-core/frame/**/*.test.ts', 'thread'],
    ['main/probe/talk/**/*.ts', 'test/main/probe/talk/**/*.test.ts', 'process'],
  ]);
});

test('a folder’s own files are held against the tests beside them, without its rooms', () => {
  const scope = scopeOf('shared-core/monitor', true, true);
  expect([scope?.mutate, scope?.tests[0]]).toEqual([
    'shared-core/monitor/*.ts',
    'test/shared-core/monitor/*.test.ts',
  ]);
});

test('code that keeps a table from one test to the next gets a new thread for each mutant', () => {
  expect(
    ['shared-core', 'shared-core/twin', 'shared-core/column/steady'].map(
      (folder) => summary(folder)?.[2],
    ),
  ).toEqual([null, null, null]);
});

test('what is neither in shared-core nor in main has no scope', () => {
  expect(
    ['renderer', 'app/loopback', 'mainland', '..', ''].map((folder) => scopeOf(folder, true)),
  ).toEqual([null, null, null, null, null]);
});
