import { readWireNumber } from '../frame/index.ts';
import type { CsvRow } from './parse-csv.ts';

/** A table by volume whose volumes are not all the distillate so far: in which line they fall, or null where they never grow. */
export interface NotATotal {
  readonly kind: 'not-a-total';
  readonly title: string;
  readonly line: number | null;
}

/** Why the volumes of a table are no running total, over all its rows; null where they are one. */
export function notATotal(
  rows: Iterable<CsvRow>,
  firstDataLine: number,
  { column, title }: { readonly column: number; readonly title: string },
): NotATotal | null {
  let first: number | null = null;
  let last: number | null = null;
  let count = 0;
  for (const { line, cells } of rows) {
    const read = readWireNumber(cells[column] ?? '', true);
    if (line < firstDataLine || read.kind !== 'number') continue;
    if (last !== null && read.value < last) return { kind: 'not-a-total', title, line };
    first ??= read.value;
    last = read.value;
    count += 1;
  }
  return count > 1 && first === last ? { kind: 'not-a-total', title, line: null } : null;
}
