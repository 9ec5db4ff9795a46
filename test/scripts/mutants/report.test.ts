import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { readReport } from '../../../scripts/mutants/read-report.ts';
import { describeSurvivor, tally } from '../../../scripts/mutants/tally.ts';

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

test('a survivor is told in one line: where, what stood there, what was put in its place', () => {
  expect(reported('NoCoverage', 'Timeout').map(describeSurvivor)).toEqual([
    'shared-core/half.ts:2 survived: x / 2 → x * 2',
    'shared-core/half.ts:2 timed-out: x / 2 → x * 2',
  ]);
});
