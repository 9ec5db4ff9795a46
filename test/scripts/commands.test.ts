import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { projectRoot } from '../../scripts/testing/step.ts';
import { problemReportSchema } from '../../shared-core/contract/problem-report.ts';

function answerOf(...words: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['scripts/run.mjs', ...words], {
    cwd: projectRoot,
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
}

test.each([
  'start',
  'test',
  'test-near',
  'build',
  'analyse',
  'virtual-probe',
  'check-runs',
  'real-traces',
  'measure-window',
  'bench',
  'take-pictures',
  'check-desktop',
  'package',
  'mutants',
  'problem-report',
])('%s --help says how it is used and does nothing else', (name) => {
  const { status, stdout, stderr } = answerOf(name, '--help');
  expect([status, stderr]).toEqual([0, '']);
  expect(stdout).toMatch(/Usage: npm (run|start|test)/);
});

test.each([
  ['start', '--nonsense'],
  ['start', '--port', 'abc'],
  ['test', '--nonsense'],
  ['test-near', '--nonsense'],
  ['test-near', '--since', 'nowhere'],
  ['analyse', '--nonsense'],
  ['analyse', 'nowhere.csv'],
  ['virtual-probe', '--nonsense'],
  ['problem-report', '--nonsense'],
  ['check-runs', '--nonsense'],
  ['check-runs', 'nowhere'],
  ['check-runs', '--repair', 'nowhere', '--nonsense'],
  ['real-traces', '--nonsense'],
  ['bench', 'nonsense'],
  ['mutants', '--nonsense'],
  ['mutants', 'shared-core/nowhere'],
  ['mutants', 'renderer'],
  ['mutants', 'shared-core/frame', 'nonsense'],
])('%s with the wrong %s says in words what is wrong, without a stack', (...words) => {
  const { status, stdout, stderr } = answerOf(...words);
  expect([status === 0, stdout]).toEqual([false, '']);
  expect(stderr).toMatch(/not known|Unknown option|no bench|no file|no folder|whole number/i);
  expect(stderr).not.toMatch(/^\s+at /m);
});

test('DEVELOPERS.md stays a map of at most 12 kB, and every file it points to is there', () => {
  const text = readFileSync(path.join(projectRoot, 'DEVELOPERS.md'), 'utf8');
  expect(Buffer.byteLength(text)).toBeLessThanOrEqual(12 * 1024);
  const linked = [...text.matchAll(/\]\(([^)#:]+)\)/g)].map(([, file = '']) => file);
  expect(linked.length).toBeGreaterThan(0);
  for (const file of linked)
    expect(readFileSync(path.join(projectRoot, file), 'utf8')).not.toBe('');
});

test('problem-report tells of a computer where no services run, and not where its folders are', () => {
  const folder = path.join(projectRoot, 'nowhere');
  const { status, stdout, stderr } = answerOf('problem-report', folder);
  expect([status, stderr]).toEqual([0, '']);
  const report = problemReportSchema.parse(JSON.parse(stdout));
  expect(report).toMatchObject({ program: { shell: 'command' }, probe: null });
  expect(stdout).not.toContain(projectRoot);
});
