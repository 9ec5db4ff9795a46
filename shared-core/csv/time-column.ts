import { readWireNumber } from '../frame/index.ts';
import { bareTimeUnit, type ColumnRole } from './column-title.ts';
import { daySerials } from './day-serial.ts';
import type { CsvRow } from './parse-csv.ts';
import { momentOf, readTime, type TimeCell } from './read-time.ts';
import { isSinceEpoch } from './since-epoch.ts';

/**
 * What the columns hold, a time among them wherever there is one: by a title that says so; else by one that is nothing but a unit of
 * time; else by cells that are dates or clock times and can be nothing else.
 */
export function rolesWithTime(
  titles: readonly string[],
  byTitle: readonly ColumnRole[],
  data: readonly CsvRow[],
): readonly ColumnRole[] {
  const bare = titles.map((title) => bareTimeUnit(title));
  const moments = byTitle.map((_, column) => (holdsMoments(data, column) ? momentColumn : null));
  const hasOther = bare.some((role) => role !== null) || moments.some((role) => role !== null);
  // Beside "min" and "s", or beside dates and clock times, a "T" in plain numbers is the temperature.
  const roles = byTitle.map((role, column) =>
    hasOther && isT(titles[column]) && moments[column] === null ? lettered : role,
  );
  const isTimed = roles.some(
    ({ kind }, column) => (kind === 'time' || kind === 'date') && isReadable(data[0], column),
  );
  if (isTimed) return roles;
  for (const found of [bare, moments]) {
    const column = found.findIndex((role, at) => role !== null && isReadable(data[0], at));
    const role = found[column];
    if (role) return roles.with(column, role);
  }
  return roles;
}

/** Whether a title is the one letter that stands for time and for temperature. */
export const isT = (title: string | undefined) => title?.trim().toLowerCase() === 't';
/** Such a column that is a temperature. */
export const lettered = { kind: 'temperature', name: 't', unit: null } as const;

const momentColumn = { kind: 'time', perS: null } as const;

function isReadable(row: CsvRow | undefined, column: number): boolean {
  return row === undefined || readTime(row.cells[column] ?? '') !== undefined;
}

/** Dates, clock times and times with their unit, from the first row on; a plain number may be anything, unless it counts from 1970. */
function holdsMoments(data: readonly CsvRow[], column: number): boolean {
  const times = data.map(({ cells }) => readTime(cells[column] ?? ''));
  return times.length > 0 && times.every((time) => time !== undefined && isMoment(time));
}

function isMoment(time: TimeCell): boolean {
  return time.kind !== 'number' || isSinceEpoch(time.value);
}

/** The column of the times among columns whose roles are known; -1 where there is none. */
export function findTimeColumn(
  roles: readonly ColumnRole[],
  firstData: CsvRow | undefined,
  isUntitled: boolean,
): number {
  const titled = roles.findIndex(
    (role, column) => role.kind === 'time' && role.perS !== null && isReadable(firstData, column),
  );
  if (titled !== -1) return titled;
  const anyTime = roles.findIndex(
    ({ kind }, column) => kind === 'time' && isReadable(firstData, column),
  );
  if (anyTime !== -1) return anyTime;
  const stamped = roles.findIndex(
    ({ kind }, column) => kind === 'date' && isReadable(firstData, column),
  );
  return stamped === -1 && isUntitled && firstData !== undefined ? 0 : stamped;
}

/** Seconds in one of a time column's units: as its title says, as the days of a spreadsheet, else seconds. */
export function secondsPerUnit(
  role: ColumnRole | undefined,
  data: readonly CsvRow[],
  column: number,
): number {
  const stated = role?.kind === 'time' ? role.perS : null;
  if (stated !== null) return stated;
  const numbers = data.flatMap(({ cells }) => {
    const time = readTime(cells[column] ?? '');
    return time?.kind === 'number' ? [time.value] : [];
  });
  const isInDays = daySerials.isLikely(numbers) || daySerials.areFractions(numbers);
  return isInDays ? daySerials.perS : 1;
}

const decimalComma = /^\s*[+-]?\d+,\d+(?![\d.,])/;
const decimalPoint = /^\s*[+-]?\d+\.\d+/;

/**
 * The decimal sign of a table, where its readings show one and no other: then points in "1.250" only group digits. Null where they leave
 * it open.
 */
export function decimalOfTable(data: readonly CsvRow[], timeColumn: number): ',' | null {
  const numbers = data.flatMap(({ cells }) =>
    cells.filter(
      (cell, column) => column !== timeColumn && readWireNumber(cell, true).kind === 'number',
    ),
  );
  const hasCommas = numbers.some((cell) => decimalComma.test(cell));
  return hasCommas && !numbers.some((cell) => decimalPoint.test(cell)) ? ',' : null;
}

/** Whether a table begins with its newest row: of the moments of its first rows none comes after the one above it. */
export function isNewestFirst(cells: readonly string[]): boolean {
  const times = cells.flatMap((cell) => momentOf(cell)?.value ?? []);
  const [first, last] = [times[0], times.at(-1)];
  if (times.length < fewestRows || first === undefined || last === undefined) return false;
  return first > last && times.every((time, at) => at === 0 || time <= (times[at - 1] ?? time));
}

/** Two rows may also be a clock that passed midnight, or was put back. */
const fewestRows = 4;
