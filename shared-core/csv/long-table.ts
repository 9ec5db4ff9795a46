import { readUnit } from '../frame/index.ts';
import { columnRole } from './column-title.ts';
import type { SplitTime } from './finer-time.ts';
import type { CsvRow } from './parse-csv.ts';
import { countsRows, holdsNumbers, titlesAndData } from './table-beginning.ts';
import { timeOfTable } from './table-time.ts';

/** Which column of a long table holds what: one that has a row for each value, and says in it what was measured. */
export interface LongTable {
  readonly titleRow: CsvRow;
  readonly titles: readonly string[];
  readonly nameColumn: number;
  readonly unitColumn: number | null;
  readonly valueColumns: readonly number[];
  /** What stays as it is: times, remarks, numbers of rows. */
  readonly keptColumns: readonly number[];
  /** Of those, where the time stands. */
  readonly time: SplitTime;
}

/** Titles of a column that says what a row's value is of. */
const nameTitle =
  /^(?:channels?|sensors?|probes?|names?|series|variables?|quantit(?:y|ies)|parameters?|fields?|sources?|measurand|entity|kan(?:al|äle)|fühler|sensoren|name|reihe|größe|messgröße|messstelle|quelle|bezeichnung|capteur|voie|grandeur|nom|canal|variable|magnitud)(?:[ _-]?(?:id|name|no|nr|number))?\.?$/i;
/** Titles of a column that say nothing of what its values are. */
const valueTitle =
  /^(?:values?|readings?|data|result|state|messwerte?|werte?|valeurs?|valor(?:es)?|y)$/i;
const mostNames = 40;
/** A name may be a number, as of a channel, where the numbers go round, as a scanner of channels does. */
const mostNumbered = 16;

/**
 * Finds out whether a table is a long one, from its first rows. A text is believed to name what is measured by its title, or because it
 * says a place of the still; where the title of the values says it already, one name alone is only a name of the logger.
 */
export function longTable(rows: readonly CsvRow[]): LongTable | null {
  const beginning = titlesAndData(rows);
  const { titleRow, titles, data } = beginning;
  if (titleRow === undefined || data.length === 0) return null;
  const { roles, ...time } = timeOfTable(beginning, () => data);
  if (time.timeColumn === -1) return null;
  const isOther = (column: number) => {
    const kind = roles[column]?.kind;
    const isTime = column === time.timeColumn || time.finerTimeColumns.includes(column);
    return !isTime && kind !== 'time' && kind !== 'date' && kind !== 'notes' && kind !== 'marks';
  };
  const others = titles.map((_, column) => column).filter(isOther);
  const nameColumn = others.find((column) => holdsNames(titles[column] ?? '', data, column));
  if (nameColumn === undefined) return null;
  const valueColumns = others.filter(
    (column) => column !== nameColumn && holdsNumbers(data, column) && !countsRows(data, column),
  );
  const names = namesIn(data, nameColumn);
  const [name = ''] = names;
  const title = titles[valueColumns[0] ?? -1] ?? '';
  // A single name beside a title that says what the values are tells of the logger, or of the first of several blocks.
  const isSingle = names.size === 1 && (valueColumns.length > 1 || saysOther(title, name));
  if (valueColumns.length === 0 || isSingle) return null;
  const unitColumn = others.find((column) => column !== nameColumn && holdsUnits(data, column));
  const taken = new Set([nameColumn, unitColumn, ...valueColumns]);
  const keptColumns = titles.map((_, column) => column).filter((column) => !taken.has(column));
  return {
    titleRow,
    titles,
    nameColumn,
    unitColumn: unitColumn ?? null,
    valueColumns,
    keptColumns,
    time,
  };
}

function saysOther(title: string, name: string): boolean {
  const placed = columnRole(name);
  return !saysNothing(title) && placed.kind === 'channel' && placed.channel !== 'head';
}

/** A title of values that says no more than their unit. */
const saysNothing = (title: string) => valueTitle.test(withoutUnit(title));

const withoutUnit = (title: string) => title.replace(/\s*[([{][^)\]}]*[)\]}]\s*$/, '').trim();

const nameOf = (row: CsvRow, column: number) => (row.cells[column] ?? '').trim();

function namesIn(data: readonly CsvRow[], column: number): ReadonlySet<string> {
  return new Set(data.map((row) => nameOf(row, column)).filter((name) => name !== ''));
}

function holdsNames(title: string, data: readonly CsvRow[], column: number): boolean {
  const names = namesIn(data, column);
  if (names.size === 0 || names.size > mostNames) return false;
  const isTitled = nameTitle.test(title.trim());
  if (holdsNumbers(data, column)) return isTitled && goesRound(data, column, names.size);
  const isPlace = (name: string) => columnRole(name).kind === 'channel';
  return isTitled || (names.size > 1 && [...names].every(isPlace));
}

/** Whether whole numbers come in the same order again and again. */
function goesRound(data: readonly CsvRow[], column: number, count: number): boolean {
  const isRound = ({ cells }: CsvRow, at: number) =>
    /^\d{1,3}$/.test(cells[column]?.trim() ?? '') &&
    (at < count || cells[column] === data[at - count]?.cells[column]);
  return count > 1 && count <= mostNumbered && data.length >= 2 * count && data.every(isRound);
}

function holdsUnits(data: readonly CsvRow[], column: number): boolean {
  return data.every((row) => (readUnit(nameOf(row, column)) ?? null) !== null);
}

/** What a long table tells of, over all its rows. */
export interface Measured {
  /** Each name with its first unit, in the order they come. */
  readonly units: ReadonlyMap<string, string>;
  /** One thing stands after the other. */
  readonly isInBlocks: boolean;
}

/** Goes through the table once; null where it names more than anybody measures, and so is none of these. */
export function whatIsMeasured(
  { titleRow, nameColumn, unitColumn }: LongTable,
  rows: Iterable<CsvRow>,
): Measured | null {
  const units = new Map<string, string>();
  let last: string | null = null;
  let changes = 0;
  for (const row of rows) {
    if (row.line <= titleRow.line) continue;
    const name = nameOf(row, nameColumn);
    if (name !== last) changes += 1;
    last = name;
    if (units.has(name)) continue;
    units.set(name, unitColumn === null ? '' : nameOf(row, unitColumn));
    if (units.size > mostNames) return null;
  }
  return { units, isInBlocks: units.size > 1 && changes === units.size };
}

/**
 * The rows of a long table with a column for each thing measured, in which a row holds the one value it had.
 *
 * @param data its rows below the titles, in the order of their times
 */
export function* widened(
  table: LongTable,
  { units }: Measured,
  data: Iterable<CsvRow>,
): Generator<CsvRow> {
  const { titleRow, titles, keptColumns, valueColumns, nameColumn } = table;
  const places = new Map([...units.keys()].map((name, at) => [name, at * valueColumns.length]));
  yield {
    line: titleRow.line,
    cells: [
      ...keptColumns.map((column) => titles[column] ?? ''),
      ...[...units].flatMap(([name, unit]) =>
        valueColumns.map((column) => wideTitle(table, name, titles[column] ?? '', unit)),
      ),
    ],
  };
  const empty = Array.from({ length: places.size * valueColumns.length }, () => '');
  for (const row of data) {
    if (row.line <= titleRow.line) continue;
    const cells = keptColumns.map((column) => row.cells[column] ?? '').concat(empty);
    const place = keptColumns.length + (places.get(nameOf(row, nameColumn)) ?? 0);
    for (const [at, column] of valueColumns.entries()) cells[place + at] = row.cells[column] ?? '';
    yield { line: row.line, cells };
  }
}

function wideTitle(
  { titles, nameColumn, valueColumns }: LongTable,
  name: string,
  title: string,
  unit: string,
): string {
  const named = /^\d*$/.test(name) ? `${titles[nameColumn]?.trim() ?? ''} ${name}`.trim() : name;
  const role = columnRole(title);
  const ofTitle = 'unit' in role ? (role.unit ?? '') : '';
  const said = saysNothing(title) && valueColumns.length === 1 ? '' : withoutUnit(title);
  const stated = unit === '' ? ofTitle : unit;
  return [named, said, stated === '' ? '' : `(${stated})`].filter((part) => part !== '').join(' ');
}
