import { bareTimeUnit, type ColumnRole } from './column-title.ts';
import type { CsvRow } from './parse-csv.ts';
import { readTime } from './read-time.ts';

interface TimeTable {
  readonly titles: readonly string[];
  readonly roles: readonly ColumnRole[];
  readonly data: readonly CsvRow[];
  readonly timeColumn: number;
  readonly perS: number;
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
  const { data, timeColumn, perS } = table;
  const column = columnOfUnit(table, perS * 60, (at) => goesOn(data, at, timeColumn));
  return column === -1
    ? { timeColumn, perS }
    : coarsest({ ...table, timeColumn: column, perS: perS * 60 });
}

function finerColumns(table: TimeTable): readonly number[] {
  const { data, timeColumn, perS } = table;
  const column = columnOfUnit(table, perS / 60, (at) => goesOn(data, timeColumn, at));
  if (column === -1) return [];
  return [column, ...finerColumns({ ...table, timeColumn: column, perS: perS / 60 })];
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

function goesOn(data: readonly CsvRow[], coarseAt: number, fineAt: number): boolean {
  const pairs = data.map(({ cells }) => ({
    coarse: numberIn(cells[coarseAt]),
    fine: numberIn(cells[fineAt]),
  }));
  const isPart = pairs.every(
    ({ coarse, fine }) => Number.isInteger(coarse) && fine >= 0 && fine < 60,
  );
  if (!isPart || pairs.every(({ coarse }) => coarse === pairs[0]?.coarse)) return false;
  const steps = pairs.slice(1).map(({ coarse, fine }, at) => {
    const before = pairs[at] ?? { coarse, fine };
    const step = acrossSixty(coarse - before.coarse);
    return { step, both: 60 * step + fine - before.fine };
  });
  // Together they run one way, as a time does, or the other where the newest row is on top.
  const runs = steps.every(({ both }) => both >= 0) || steps.every(({ both }) => both <= 0);
  // What else is less than sixty, such as the lowest temperature of an hour, has fractions and does not divide the unit before.
  const divides =
    steps.some(({ step, both }) => step === 0 && both !== 0) ||
    pairs.every(({ fine }) => Number.isInteger(fine));
  return runs && divides;
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
