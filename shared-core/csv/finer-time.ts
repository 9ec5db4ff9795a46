import { bareTimeUnit, type ColumnRole } from './column-title.ts';
import type { CsvRow } from './parse-csv.ts';
import { readTime } from './read-time.ts';

interface TimeTable {
  readonly titles: readonly string[];
  readonly roles: readonly ColumnRole[];
  readonly data: readonly CsvRow[];
  readonly timeColumn: number;
  readonly perS: number;
  /** All rows of the table, for what its first rows leave open: an hour is longer than they are. */
  readonly allRows: () => Iterable<CsvRow>;
}

/** Where a time stands: in a column, and in those that go on with it in finer units. */
export interface SplitTime {
  readonly timeColumn: number;
  /** Seconds in a unit of that column. */
  readonly perS: number;
  /** Each in a sixtieth of the unit before. */
  readonly finerTimeColumns: readonly number[];
}

/**
 * A time in whole hours or minutes and what goes on with it: columns each titled with a sixtieth of the unit before, below sixty in all
 * rows, and a time together with it. Two columns with the same time in two units are none.
 */
export function splitTime(table: TimeTable): SplitTime {
  const whole = coarsest(table);
  return { ...whole, finerTimeColumns: finerColumns({ ...table, ...whole }) };
}

function coarsest(table: TimeTable): Pick<SplitTime, 'timeColumn' | 'perS'> {
  const { timeColumn, perS } = table;
  const column = columnOfUnit(table, perS * 60, (at) => goesOn(table, at, timeColumn));
  return column === -1
    ? { timeColumn, perS }
    : coarsest({ ...table, timeColumn: column, perS: perS * 60 });
}

function finerColumns(table: TimeTable): readonly number[] {
  const { timeColumn, perS } = table;
  const below = (column: number) => finerColumns({ ...table, timeColumn: column, perS: perS / 60 });
  const column = columnOfUnit(
    table,
    perS / 60,
    (at) =>
      goesOn(table, timeColumn, at) ||
      // All within one hour and one minute of it: the seconds go on with both.
      (isSteady(table.data, timeColumn) && isSteady(table.data, at) && below(at).length > 0),
  );
  return column === -1 ? [] : [column, ...below(column)];
}

function columnOfUnit(
  { titles, roles, timeColumn }: TimeTable,
  perS: number,
  isPart: (column: number) => boolean,
): number {
  if (timeColumn === -1) return -1;
  return roles.findIndex((role, at) => {
    const unit = role.kind === 'time' ? role : bareTimeUnit(titles[at] ?? '');
    return at !== timeColumn && unit?.perS === perS && isPart(at);
  });
}

function goesOn({ data, allRows }: TimeTable, coarseAt: number, fineAt: number): boolean {
  const turn = isSteady(data, coarseAt) ? turnOf(allRows(), data, coarseAt) : [];
  const pairs = [data, turn].map((rows) =>
    rows.map(({ cells }) => ({ coarse: numberIn(cells[coarseAt]), fine: numberIn(cells[fineAt]) })),
  );
  const all = pairs.flat();
  const isPart = all.every(
    ({ coarse, fine }) => Number.isInteger(coarse) && fine >= 0 && fine < 60,
  );
  if (!isPart) return false;
  const steps = pairs.flatMap(stepsOf);
  // Together they run one way, as a time does, or the other where the newest row is on top.
  const runs = steps.every(({ both }) => both >= 0) || steps.every(({ both }) => both <= 0);
  const moves = steps.some(({ both }) => both !== 0);
  // What else is less than sixty, such as the lowest temperature of an hour, has fractions and does not divide the unit before.
  const divides =
    steps.some(({ step, both }) => step === 0 && both !== 0) ||
    all.every(({ fine }) => Number.isInteger(fine));
  return runs && moves && divides;
}

function stepsOf(pairs: readonly { readonly coarse: number; readonly fine: number }[]) {
  return pairs.slice(1).map(({ coarse, fine }, at) => {
    const before = pairs[at] ?? { coarse, fine };
    const step = acrossSixty(coarse - before.coarse);
    return { step, both: 60 * step + fine - before.fine };
  });
}

/** Whether a column is the same in all rows. */
function isSteady(data: readonly CsvRow[], column: number): boolean {
  const first = numberIn(data[0]?.cells[column]);
  return data.every(({ cells }) => numberIn(cells[column]) === first);
}

/** The two rows between which a column that is the same in the first rows changes for the first time; none where it never does. */
function turnOf(
  rows: Iterable<CsvRow>,
  data: readonly CsvRow[],
  column: number,
): readonly CsvRow[] {
  const [begin] = data;
  const first = numberIn(begin?.cells[column]);
  let before = begin;
  for (const row of rows) {
    if (begin === undefined || before === undefined || row.line <= begin.line) continue;
    const number = numberIn(row.cells[column]);
    if (number !== first && !Number.isNaN(number)) return [before, row];
    if (number === first) before = row;
  }
  return [];
}

/** Minutes begin anew with each hour: from 59 to 0 is one on. */
function acrossSixty(step: number): number {
  return Math.abs(step) > 30 ? step - 60 * Math.sign(step) : step;
}

function numberIn(cell: string | undefined): number {
  const time = readTime(cell ?? '');
  return time?.kind === 'number' ? time.value : Number.NaN;
}

const unitNames: Readonly<Record<number, string>> = { 3600: 'h', 60: 'min', 1: 's' };

/** A time that stands in several cells as one text: `5 min 10 s`; the cell itself where it stands in one. */
export function timeText(
  cells: readonly string[],
  { timeColumn, perS, finerTimeColumns }: SplitTime,
): string {
  const first = cells[timeColumn] ?? '';
  if (finerTimeColumns.length === 0) return first;
  return [first, ...finerTimeColumns.map((column) => cells[column] ?? '')]
    .map((cell, at) => `${cell.trim()} ${unitNames[perS / 60 ** at] ?? ''}`)
    .join(' ');
}
