import { readFileSync } from 'node:fs';
import path from 'node:path';

/** Rows of numbers of a CSV file in test/reference, its comments and header left out. */
export function referenceRows(file: string): readonly (readonly number[])[] {
  const text = readFileSync(path.join(import.meta.dirname, '..', '..', 'reference', file), 'utf8');
  return text
    .split('\n')
    .filter((line) => /^[\d-]/.test(line))
    .map((line) => line.split(',').map(Number));
}
