import type { CsvDialect } from './csv-dialect.ts';
import { timeText } from './finer-time.ts';
import { type LongTable, longTable, whatIsMeasured, widened } from './long-table.ts';
import { type CsvRow, parseCsv } from './parse-csv.ts';
import { momentOf } from './read-time.ts';
import { isNewestFirst } from './time-column.ts';

/** What a table's beginning is told by. */
const rowsLookedAt = 80;

/** The first rows of a table. */
export function firstRows(rows: Iterable<CsvRow>): readonly CsvRow[] {
  const first: CsvRow[] = [];
  for (const row of rows) {
    first.push(row);
    if (first.length === rowsLookedAt) break;
  }
  return first;
}

/** A way to go through the rows of a table as often as need be: with a column for each thing measured, however it is written. */
export function tableRows(
  text: string,
  delimiter: CsvDialect['delimiter'],
): () => Iterable<CsvRow> {
  const written = () => parseCsv(text, delimiter);
  const long = longTable(firstRows(written()));
  const measured = long === null ? null : whatIsMeasured(long, written());
  if (long === null || measured === null) return written;
  const ordered = measured.isInBlocks ? inOrderOfTime([...written()], long) : null;
  return () => widened(long, measured, ordered ?? written());
}

/** The rows of a table that has one thing after the other, by their moments. */
function inOrderOfTime(rows: readonly CsvRow[], { titleRow, time, nameColumn }: LongTable) {
  const data = rows.filter(({ line }) => line > titleRow.line);
  const isBackwards = isNewestFirst(firstRows(data).map(({ cells }) => timeText(cells, time)));
  let name: string | undefined;
  let last = 0;
  let passed = 0;
  const timed = data.map((row) => {
    if (row.cells[nameColumn] !== name) [last, passed] = [Number.NEGATIVE_INFINITY, 0];
    name = row.cells[nameColumn];
    const moment = momentOf(timeText(row.cells, time));
    // What is no time stays where it stands.
    if (moment === undefined) return { row, at: last };
    const dayLength = moment.begunAnewAt ?? Number.POSITIVE_INFINITY;
    // Past midnight.
    if (moment.value + passed < last - dayLength / 2 && !isBackwards) passed += dayLength;
    last = moment.value + passed;
    return { row, at: last };
  });
  const sign = isBackwards ? -1 : 1;
  return timed.sort((one, other) => sign * (one.at - other.at || 0)).map(({ row }) => row);
}
