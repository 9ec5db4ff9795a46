import { readWireNumber } from '../frame/index.ts';
import { isClockFormat } from './column-title.ts';
import type { CsvRow } from './parse-csv.ts';
import { readTime } from './read-time.ts';

/** The first rows of a table, taken apart. */
export interface TableBeginning {
  readonly titleRow: CsvRow | undefined;
  /** As many as the table is wide; empty where none stands above. */
  readonly titles: readonly string[];
  readonly data: readonly CsvRow[];
}

/** Which of the first rows is the titles', and from which on there are readings. */
export function titlesAndData(rows: readonly CsvRow[]): TableBeginning {
  const firstData = rows.findIndex((row, index) => looksLikeData(row, rows[index + 1]));
  const dataIndex = firstData === -1 ? rows.length : firstData;
  const titleRow = titlesAbove(rows.slice(0, dataIndex));
  const data = rows.slice(dataIndex);
  // Rows may leave out the empty cells at their end: what begins later in the run is known by its title.
  const width = Math.max(data[0]?.cells.length ?? 0, titleRow?.cells.length ?? 0);
  // A table whose remarks begin with a sign has its titles behind one.
  const titles = Array.from({ length: width }, (_, column) =>
    (titleRow?.cells[column] ?? '').replace(column === 0 ? /^\s*[#%]\s*/ : '', ''),
  );
  return { titleRow, titles, data };
}

/** A row with a time and another number; remarks such as "Rate, 10" have no such row below. */
function looksLikeData(row: CsvRow, below: CsvRow | undefined): boolean {
  const hasTime = row.cells.some((cell) => readTime(cell) !== undefined);
  const numbers = row.cells.filter((cell) => isNumber(cell) || readTime(cell) !== undefined);
  const isWhole = below === undefined || below.cells.length === row.cells.length;
  return hasTime && numbers.length >= 2 && isWhole;
}

const isNumber = (cell: string) => readWireNumber(cell, true).kind === 'number';

/** More of the column's cells hold numbers than hold text. */
export function holdsNumbers(data: readonly CsvRow[], column: number): boolean {
  const filled = data.map(({ cells }) => cells[column] ?? '').filter((cell) => cell.trim() !== '');
  return filled.filter(isNumber).length * 2 > filled.length;
}

/** What the column's cells hold is neither a number nor the lack of one. */
export function holdsWords(data: readonly CsvRow[], column: number): boolean {
  const filled = data.map(({ cells }) => cells[column] ?? '').filter((cell) => cell.trim() !== '');
  return filled.length > 0 && filled.every((cell) => readWireNumber(cell, true).kind === 'neither');
}

/** The number of each row, one more than that above. */
export function countsRows(data: readonly CsvRow[], column: number): boolean {
  const numbers = data.map(({ cells }) => Number(cells[column] || Number.NaN));
  return (
    numbers.length >= fewestCounted &&
    numbers.every((number, at) => number === (numbers[0] ?? 0) + at && Number.isInteger(number))
  );
}

/** Two or three readings may be whole numbers in a row by chance. */
const fewestCounted = 5;

/** The lowest row above the data without a number; titles may have a row of units under them. */
function titlesAbove(above: readonly CsvRow[]): CsvRow | undefined {
  const candidates = above
    .filter(({ cells }) => cells.length >= 2)
    .filter(({ cells }) => cells.every((cell) => readTime(cell) === undefined));
  const last = candidates.at(-1);
  const before = candidates.at(-2);
  const isUnitsRow = last?.cells.every((cell) => cell.trim().length <= 4 || isClockFormat(cell));
  if (last === undefined || before === undefined || !isUnitsRow) return last;
  if (before.cells.length !== last.cells.length) return last;
  // "Time","Head" over "s","°C" reads as "Time (s)","Head (°C)".
  return {
    line: last.line,
    cells: before.cells.map((cell, column) => {
      const unit = last.cells[column]?.trim().replace(/^[([]|[)\]]$/g, '') ?? '';
      return unit === '' ? cell : `${cell} (${unit})`;
    }),
  };
}
