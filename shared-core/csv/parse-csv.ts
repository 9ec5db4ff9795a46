import type { CsvDialect } from './csv-dialect.ts';

/** One record of a CSV text and the line it begins on, counted from 1. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

/** A record has at most this many fields; what is beyond stands in no logger's file. */
export const mostColumns = 500;

/**
 * Reads RFC 4180 leniently, record by record: CR LF, LF or CR end a line, blank lines are skipped,
 * quotes count only at the start of a field, and a field whose quote never closes ends with its line.
 * Fields after the 500th are left out. Between fields set apart by spaces any number of them is one.
 */
export function* parseCsv(text: string, delimiter: CsvDialect['delimiter']): Generator<CsvRow> {
  let line = 1;
  let position = text.startsWith('\ufeff') ? 1 : 0;
  while (position < text.length) {
    const startLine = line;
    const cells: string[] = [];
    let isBlank = true;
    for (;;) {
      if (delimiter === ' ') {
        while (text[position] === ' ') position += 1;
        if (cells.length > 0 && /[\r\n]/.test(text[position] ?? '\n')) break;
      }
      const quoted =
        text.charCodeAt(position) === quoteCode ? readQuoted(text, position, delimiter) : null;
      // Most fields are bare, and a table has millions: these are cut out without a word more.
      const end = quoted?.end ?? endOfBare(text, position, delimiter);
      const value = quoted?.value ?? text.slice(position, end);
      if (cells.length < mostColumns) {
        cells.push(value);
        isBlank &&= value.trim() === '';
      }
      line += quoted?.lineBreaks ?? 0;
      position = end;
      if (text[position] !== delimiter) break;
      position += 1;
    }
    if (text[position] === '\r') position += 1;
    if (text[position] === '\n') position += 1;
    line += 1;
    if (!isBlank) yield { line: startLine, cells };
  }
}

interface QuotedField {
  readonly value: string;
  readonly end: number;
  readonly lineBreaks: number;
}

const [quoteCode, lineFeedCode, returnCode] = [0x22, 0x0a, 0x0d];

function endOfBare(text: string, start: number, delimiter: string): number {
  const delimiterCode = delimiter.charCodeAt(0);
  let end = start;
  while (end < text.length) {
    const code = text.charCodeAt(end);
    if (code === delimiterCode || code === lineFeedCode || code === returnCode) break;
    end += 1;
  }
  return end;
}

/** Longest quoted field that is believed; a stray quote must not swallow the rest of the file. */
const longestQuoted = 20_000;

/** A quoted field, or null when its quote does not close before something that ends a field. */
function readQuoted(text: string, start: number, delimiter: string): QuotedField | null {
  let from = start + 1;
  for (;;) {
    const quote = text.indexOf('"', from);
    if (quote === -1 || quote - start > longestQuoted) return null;
    if (text[quote + 1] === '"') {
      from = quote + 2;
      continue;
    }
    const next = text[quote + 1];
    if (next !== undefined && next !== delimiter && next !== '\n' && next !== '\r') return null;
    const value = text.slice(start + 1, quote).replaceAll('""', '"');
    return { value, end: quote + 1, lineBreaks: countLineBreaks(value) };
  }
}

function countLineBreaks(value: string): number {
  return value.match(/\r\n|\r|\n/g)?.length ?? 0;
}
