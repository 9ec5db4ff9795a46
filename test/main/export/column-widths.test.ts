import { expect, test } from 'vitest';
import type { DocumentTable } from '#shared-core';
import { columnWidths } from '../../../main/export/column-widths.ts';

const columns = [
  { title: 'Cut', width: 1, align: 'start' },
  { title: 'To', width: 1, align: 'end' },
  { title: 'Strength from', width: 4, align: 'start' },
] as const;
const tableOf = (...rows: readonly (readonly string[])[]): DocumentTable => ({
  kind: 'table',
  caption: 'Liquids',
  columns,
  rows,
});
const letters = (word: string, isTitle: boolean) => word.length * (isTitle ? 1.5 : 1);

test('columns have their shares as long as each word has room', () => {
  expect(columnWidths(tableOf(['1', '0:48', 'head temp.']), 60, letters)).toEqual([10, 10, 40]);
});

test('a column is as wide as its longest word, at the cost of those that can spare it', () => {
  const [cut = 0, to = 0, from = 0] = columnWidths(
    tableOf(['2', '11:00:00', 'measured']),
    36,
    letters,
  );
  expect(to).toBe(8);
  expect(cut).toBeGreaterThanOrEqual(letters('Cut', true));
  expect(from).toBeGreaterThanOrEqual(letters('Strength', true));
  expect(cut + to + from).toBeCloseTo(36, 9);
});

test('words in no column are kept whole that have not room enough in all of them', () => {
  expect(columnWidths(tableOf(['a'.repeat(40), '11:00:00', 'b']), 36, letters)).toEqual([6, 6, 24]);
});
