import type { CsvDialect } from './csv-dialect.ts';
import { type CsvLayout, detectLayout } from './csv-layout.ts';
import { detectDelimiter } from './detect-delimiter.ts';
import type { CsvRow } from './parse-csv.ts';
import { readTime } from './read-time.ts';
import { firstRows, tableRows } from './table-rows.ts';

/** A file as its first rows show it. */
export interface CsvLook {
  readonly delimiter: CsvDialect['delimiter'];
  readonly rows: readonly CsvRow[];
  /** Null where it can't be told which column holds what. */
  readonly layout: CsvLayout | null;
  /** Rows before this line hold titles and remarks. */
  readonly firstDataLine: number;
}

/**
 * The first rows of a file and what can be found out from them, for a person to put right: the rule of `readReadingsCsv`, except that
 * a file of which no column can be told has data from the first row with two numbers, dates or clock times on.
 *
 * @param text the beginning of a file; times and temperatures in any unit [s, min, h; °C, °F, K]
 * @param delimiter between the fields; found out where it is not said
 *
 * Source: this project's rule; rows by RFC 4180.
 * @example
 * lookAtCsv('Still 3\nt/s;head/°C\n0;21,3\n10;21,4\n').firstDataLine // => 3
 * lookAtCsv('Still 3\nt/s;head/°C\n0;21,3\n10;21,4\n').delimiter // => ";"
 */
export function lookAtCsv(
  text: string,
  delimiter: CsvDialect['delimiter'] = detectDelimiter(text),
): CsvLook {
  const allRows = tableRows(text, delimiter);
  const rows = firstRows(allRows());
  const found = detectLayout(rows, allRows);
  const layout = found.ok ? found.value : null;
  return { delimiter, rows, layout, firstDataLine: layout?.firstDataLine ?? firstDataLine(rows) };
}

function firstDataLine(rows: readonly CsvRow[]): number {
  const isData = ({ cells }: CsvRow) =>
    cells.filter((cell) => readTime(cell) !== undefined).length >= 2;
  return rows.find(isData)?.line ?? 1;
}
