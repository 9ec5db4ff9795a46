import type { CsvDialect } from './csv-dialect.ts';

/** A cell: numbers are written in full precision, null stays empty. */
export type CsvCell = string | number | null;

/** Starts that spreadsheets take for a formula. */
const formulaStart = /^[=+\-@\t\r]/;

/**
 * One row of RFC 4180 with its CR LF. Fields with the delimiter, quotes or line breaks are quoted;
 * text that a spreadsheet would run as a formula gets an apostrophe in front.
 * Source: RFC 4180, section 2; formula neutralisation is common practice, no source.
 *
 * @example
 * writeCsvRow([1.5, 'a "b"', null], { delimiter: ';', decimal: ',' }) // => "1,5;\"a \"\"b\"\"\";\r\n"
 * writeCsvRow(['=1+1'], { delimiter: ',', decimal: '.' }) // => "'=1+1\r\n"
 */
export function writeCsvRow(cells: readonly CsvCell[], dialect: CsvDialect): string {
  return `${cells.map((cell) => writeCell(cell, dialect)).join(dialect.delimiter)}\r\n`;
}

function writeCell(cell: CsvCell, { delimiter, decimal }: CsvDialect): string {
  if (cell === null) return '';
  if (typeof cell === 'number') {
    const digits = String(cell);
    return decimal === ',' ? digits.replace('.', ',') : digits;
  }
  const text = formulaStart.test(cell) ? `'${cell}` : cell;
  const needsQuotes = text.includes(delimiter) || /["\r\n]/.test(text);
  return needsQuotes ? `"${text.replaceAll('"', '""')}"` : text;
}
