import type { CsvDialect } from './csv-dialect.ts';
import { parseCsv } from './parse-csv.ts';

const candidates: readonly CsvDialect['delimiter'][] = [';', '\t', ',', '|', ' '];
const sampleRows = 40;
const sampleCharacters = 20_000;

/**
 * The delimiter that cuts most of the first lines into the same number (at least two) of fields.
 * Semicolon and tab go before comma, which may be a decimal sign in such a file.
 *
 * @example
 * detectDelimiter('t;T\n0,5;21,3\n1,0;21,4\n') // => ";"
 * detectDelimiter('t,T\n0.5,21.3\n') // => ","
 */
export function detectDelimiter(text: string): CsvDialect['delimiter'] {
  const sample = text.slice(0, sampleCharacters);
  let best: CsvDialect['delimiter'] = ',';
  let bestAgreeing = 0;
  for (const delimiter of candidates) {
    const agreeing = agreeingRows(sample, delimiter);
    if (agreeing > bestAgreeing * 1.2) {
      best = delimiter;
      bestAgreeing = agreeing;
    }
  }
  return best;
}

/** How many rows share the commonest number of fields, when that is at least two. */
function agreeingRows(sample: string, delimiter: CsvDialect['delimiter']): number {
  const rowsByWidth = new Map<number, number>();
  let rows = 0;
  for (const { cells } of parseCsv(sample, delimiter)) {
    if (cells.length > 1) rowsByWidth.set(cells.length, (rowsByWidth.get(cells.length) ?? 0) + 1);
    rows += 1;
    if (rows === sampleRows) break;
  }
  return Math.max(0, ...rowsByWidth.values());
}
