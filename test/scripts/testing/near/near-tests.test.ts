import { expect, test } from 'vitest';
import { nearTests, type TestFile } from '../../../../scripts/testing/near/near-tests.ts';
import { importsIn } from '../../../../scripts/testing/near/read-tests.ts';

const testFile = (file: string, imports: readonly string[] = [], tookS = 1): TestFile => ({
  file,
  imports: new Set(imports),
  tookS,
});

const tests = [
  testFile('test/main/recorder/recorder.test.ts', [], 40),
  testFile('test/main/recorder/power-loss.test.ts', [], 9),
  testFile('test/main/recorder/backlog.test.ts', [], 1),
  testFile('test/main/session/session.test.ts', ['main/recorder/recorder.ts'], 2),
  testFile('test/renderer/watch/strip.test.tsx'),
];

test('runs the test of a changed file whatever it takes, then who imports it, then its folder while there is time', () => {
  expect(nearTests(['main/recorder/recorder.ts'], tests, 45)).toEqual({
    run: [
      'test/main/recorder/recorder.test.ts',
      'test/main/session/session.test.ts',
      'test/main/recorder/backlog.test.ts',
    ],
    leftOut: ['test/main/recorder/power-loss.test.ts'],
  });
  expect(nearTests(['main/recorder/recorder.ts'], tests, 0).run).toEqual([
    'test/main/recorder/recorder.test.ts',
  ]);
});

test('knows the test of a part of the window, a changed test, and that a changed text has none', () => {
  expect(nearTests(['renderer/watch/strip.tsx'], tests, 9).run).toEqual([
    'test/renderer/watch/strip.test.tsx',
  ]);
  expect(nearTests(['test/main/session/session.test.ts'], tests, 9).run).toEqual([
    'test/main/session/session.test.ts',
  ]);
  expect(nearTests(['README.md', 'package.json'], tests, 9)).toEqual({ run: [], leftOut: [] });
});

test('reads which files of the project a test names', () => {
  const text =
    "import { a } from '../../main/a.ts';\nimport b from 'zod';\nexport * from './c.ts';";
  expect([...importsIn('test/main/a.test.ts', text)]).toEqual(['main/a.ts', 'test/main/c.ts']);
});
