import { expect, test } from 'vitest';
import { overlayFigure } from '../../../shared-core/figures/overlay-figure.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import { plainReport } from './support/plain-report.ts';

const one = plainReport();
const classOf = (count: number) =>
  Array.from({ length: count }, (_, index) => ({ ...one, runId: `r${index}`, name: `G${index}` }));
const tables = (count: number) =>
  reportOf(classOf(count)).blocks.flatMap((block) => (block.kind === 'table' ? [block] : []));

test('a class has its spread and a row a run, where columns side by side would not fit', () => {
  const [spread, runs] = tables(7);
  expect(runs?.rows).toHaveLength(7);
  expect(runs?.columns).toHaveLength(6);
  const [plateau = '', strength = ''] = runs?.rows[0]?.slice(1) ?? [];
  expect(spread?.rows.map((row) => row.slice(0, 3))).toEqual([
    ['Runs', '7', '7'],
    ['Mean', plateau, strength],
    ['Standard deviation', '0.00', '0.00'],
    ['Least', plateau, strength],
    ['Greatest', plateau, strength],
  ]);
  expect(tables(6)[0]?.columns).toHaveLength(7);
  expect(reportOf(classOf(7)).subtitle).toBe('r0 to r6');
});

test('lines that could not be told apart are not laid over each other', () => {
  expect(overlayFigure(classOf(6))).not.toBeNull();
  expect(overlayFigure(classOf(7))).toBeNull();
});
