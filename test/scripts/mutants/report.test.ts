import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { withTally } from '../../../scripts/mutants/keep-tally.ts';
import { readReport } from '../../../scripts/mutants/read-report.ts';
import { describeSurvivor, isSurvivor, tally } from '../../../scripts/mutants/tally.ts';

const source = 'export const half = (x: number) =>\n  x / 2;\n';

function reported(...statuses: readonly string[]) {
  const folder = mkdtempSync(path.join(tmpdir(), 'mutants-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const file = path.join(folder, 'report.json');
  const place = (line: number, column: number) => ({ line, column });
  const mutants = statuses.map((status, id) => ({
    id: String(id),
    status,
    replacement: 'x * 2',
    location: { start: place(2, 3), end: place(2, 8) },
  }));
  writeFileSync(file, JSON.stringify({ files: { 'shared-core/half.ts': { source, mutants } } }));
  return readReport(file);
}

test('a change that only ran too long, or that no test reached, is not counted as killed; one before any test is left out', () => {
  const mutants = reported(
    'Killed',
    'Survived',
    'NoCoverage',
    'Timeout',
    'RuntimeError',
    'Ignored',
  );
  expect(tally('shared-core', mutants)).toEqual({
    folder: 'shared-core',
    mutants: 5,
    killed: 2,
    survived: 2,
    timedOut: 1,
    scoreWithoutTimeouts: 40,
  });
});

test('a folder in which nothing can be changed has no score', () => {
  expect(tally('shared-core', reported())).toEqual({
    folder: 'shared-core',
    mutants: 0,
    killed: 0,
    survived: 0,
    timedOut: 0,
    scoreWithoutTimeouts: null,
  });
});

test('of a sample the mutants drawn are counted, with what it says of all; a sample of all says no more than all', () => {
  const sample = { count: 2, seed: 'x' };
  const drawn = {
    folder: 'main',
    mutants: 2,
    killed: 1,
    survived: 1,
    timedOut: 0,
    scoreWithoutTimeouts: 50,
  };
  // (2 + z²) / 2 ∓ z √(2 (½ ½ + z² / 8)), over 2 + z², is 0.0945 and 0.9055 with z = 1.96.
  expect([
    tally(
      'main',
      reported('Killed', 'CompileError', 'Survived', 'CompileError', 'Ignored'),
      sample,
    ),
    tally('main', reported('Killed', 'Survived', 'Ignored'), sample),
  ]).toEqual([{ ...drawn, of: 4, low: 9.5, high: 90.5, seed: 'x' }, drawn]);
});

test('a survivor is told in one line: where, what stood there, what was put in its place', () => {
  const mutants = reported('NoCoverage', 'Killed', 'Timeout', 'CompileError');
  expect(mutants.filter(isSurvivor).map(describeSurvivor)).toEqual([
    'shared-core/half.ts:2 survived: x / 2 → x * 2',
    'shared-core/half.ts:2 timed-out: x / 2 → x * 2',
  ]);
});

test('a sample takes the place of a sample, and all take the place of either; what was explained stays', () => {
  const now = new Date('2026-03-01T12:00:00Z');
  const all = tally('main', reported('Killed', 'Survived'));
  const drawn = tally('main', reported('Killed', 'CompileError'), { count: 1, seed: 'x' });
  const kept = ({ folder: _, ...numbers }: typeof all) => ({
    app: {},
    main: { measured: '2026-03-01', ...numbers, equivalent: ['why'] },
  });
  const explained = { main: { equivalent: ['why'] }, app: {} };
  const afterDraw = withTally(explained, drawn, now);
  const afterAll = withTally(afterDraw, all, now);
  expect([afterDraw, withTally(afterDraw, drawn, now), afterAll]).toEqual([
    kept(drawn),
    kept(drawn),
    kept(all),
  ]);
  expect(withTally(afterAll, drawn, now)).toBe(afterAll);
});
