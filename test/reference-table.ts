import { readFileSync } from 'node:fs';
import path from 'node:path';

/** Rows of a CSV file in test/reference as numbers by column name; `#` lines are citations. */
export function referenceTable(file: string): readonly Readonly<Record<string, number>>[] {
  const lines = readFileSync(path.join(import.meta.dirname, 'reference', file), 'utf8')
    .split(/\r?\n/)
    .filter((line) => line !== '' && !line.startsWith('#'));
  const [header = '', ...rows] = lines;
  const names = header.split(',');
  return rows.map((row) => {
    const cells = row.split(',').map(Number);
    return Object.fromEntries(names.map((name, column) => [name, cells[column] ?? Number.NaN]));
  });
}
