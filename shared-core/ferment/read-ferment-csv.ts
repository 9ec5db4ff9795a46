import {
  createTimeReader,
  daySerials,
  detectDelimiter,
  isNewestFirst,
  parseCsv,
} from '../csv/index.ts';
import { readWireNumber } from '../frame/index.ts';
import { fail, type Result, succeed } from '../result/index.ts';
import { type FermentColumn, fermentColumn } from './ferment-columns.ts';
import type { FermentReading } from './ferment-log.ts';
import { gravityFromPlato } from './gravity-and-extract.ts';

/** Why nothing of a ferment's table can be used. */
export type FermentCsvProblem =
  | { readonly kind: 'empty' }
  | { readonly kind: 'not-text' }
  | { readonly kind: 'no-time-column'; readonly titles: readonly string[] }
  | { readonly kind: 'nothing-read'; readonly titles: readonly string[] };

/** A ferment's table as read, with what of it could not be used in sentences. */
export interface ReadFermentCsv {
  readonly readings: readonly FermentReading[];
  readonly problems: readonly string[];
}

const mostProblems = 50;
const mostRows = 300_000;
/** Titles stand in one of the first rows; above them may be remarks. */
const titleRows = 20;

/**
 * Reads the table of a ferment: a time (`time_h`, days, or dates) and any of `gravity`, `mass_g`, `temperature_C`,
 * `bubbles_per_min`, with either delimiter and decimal sign. Other columns are left alone; what can't be used is told by its line.
 *
 * Source: this project's rule; no standard.
 * @example
 * const read = readFermentCsv('time_h;gravity\n0;1,080\n24;x\n');
 * read.ok && read.value.readings.length // => 1
 * read.ok && read.value.problems // => ["Line 3: \"x\" in the column \"gravity\" is not a number."]
 */
export function readFermentCsv(text: string): Result<ReadFermentCsv, FermentCsvProblem> {
  if (text.slice(0, 4096).includes('\0')) return fail({ kind: 'not-text' });
  const delimiter = detectDelimiter(text.replace(/^\ufeff/, ''));
  const rows = parseCsv(text, delimiter);
  const above: string[] = [];
  for (const { cells, line } of rows) {
    const columns = cells.map((title) => fermentColumn(title));
    const isTitles =
      columns.some((column) => column?.kind === 'time') &&
      columns.some((column) => column !== null && column.kind !== 'time');
    if (isTitles) return readRows(rows, cells, columns);
    above.push(...cells);
    if (line > titleRows) break;
  }
  if (above.length === 0) return fail({ kind: 'empty' });
  const hasTime = above.some((title) => fermentColumn(title)?.kind === 'time');
  return fail({ kind: hasTime ? 'nothing-read' : 'no-time-column', titles: above.slice(0, 12) });
}

interface Found {
  readonly readings: FermentReading[];
  readonly problems: string[];
}

function readRows(
  rows: Iterable<{ readonly line: number; readonly cells: readonly string[] }>,
  titles: readonly string[],
  columns: readonly (FermentColumn | null)[],
): Result<ReadFermentCsv, FermentCsvProblem> {
  const timeAt = columns.findIndex((column) => column?.kind === 'time');
  const time = columns[timeAt];
  const data = [...rows];
  const times = data.map(({ cells }) => withNoon(cells[timeAt] ?? ''));
  const perS =
    (time?.kind === 'time' ? time.perS : null) ?? (hasDays(times) ? daySerials.perS : 3600);
  const reader = createTimeReader({
    perS,
    twoParts: 'h:mm',
    dateOrder: 'day-month',
    decimal: null,
  });
  const found: Found = { readings: [], problems: [] };
  for (const { line, cells } of isNewestFirst(times) ? data.toReversed() : data) {
    const timed = reader.read(withNoon(cells[timeAt] ?? ''));
    if (!timed.ok) {
      found.problems.push(`Line ${line}: ${timed.error}.`);
      continue;
    }
    const reading = readCells(cells, titles, columns, (problem) =>
      found.problems.push(`Line ${line}: ${problem}.`),
    );
    if (reading !== null) found.readings.push({ ...reading, timeH: timed.value / 3600 });
    if (found.readings.length === mostRows) {
      found.problems.push(`Only the first ${mostRows} rows were read.`);
      break;
    }
  }
  return found.readings.length === 0
    ? fail({ kind: 'nothing-read', titles })
    : succeed({ readings: withMassesAsLoss(found.readings), problems: shortened(found.problems) });
}

/** No ferment lasts for twenty thousand hours: such numbers are the days of a spreadsheet. */
function hasDays(times: readonly string[]): boolean {
  return (
    times.length > 0 && times.every((time) => daySerials.isSerial(Number(time.replace(',', '.'))))
  );
}

/** A day without an hour is its noon. */
function withNoon(cell: string): string {
  const day = cell.trim();
  return /^(\d{4}-\d{1,2}-\d{1,2}|\d{1,2}[./]\d{1,2}[./]\d{2,4})$/.test(day) ? `${day} 12:00` : day;
}

type Reading = Omit<FermentReading, 'timeH'>;
const nothing: Reading = {
  gravity: null,
  massG: null,
  temperatureC: null,
  bubblesPerMin: null,
  isDegassed: false,
};

function readCells(
  cells: readonly string[],
  titles: readonly string[],
  columns: readonly (FermentColumn | null)[],
  tell: (problem: string) => void,
): Reading | null {
  let reading = nothing;
  for (const [at, column] of columns.entries()) {
    const cell = (cells[at] ?? '').trim();
    if (column === null || column.kind === 'time' || cell === '') continue;
    if (column.kind === 'degassed') {
      reading = { ...reading, isDegassed: /^(1|x|y|yes|ja|true|wahr)$/i.test(cell) };
      continue;
    }
    const number = readWireNumber(cell, true);
    if (number.kind === 'no-value') continue;
    const title = (titles[at] ?? '').trim().slice(0, 40);
    if (number.kind === 'neither') {
      tell(`"${cell.slice(0, 40)}" in the column "${title}" is not a number`);
      continue;
    }
    const read = measuredBy(column, number.value);
    if (read === null)
      tell(`${cell.slice(0, 40)} in the column "${title}" can't be ${canBe[column.kind]}`);
    else reading = { ...reading, ...read };
  }
  return reading === nothing ? null : reading;
}

const canBe = {
  gravity: 'a gravity of a ferment (0.97 to 1.2)',
  mass: 'a mass of a ferment (up to 10 t)',
  temperature: 'a temperature that yeast survives',
  bubbles: 'a number of bubbles in a minute (0 to 5000)',
} as const;

type NumberColumn = Exclude<FermentColumn, { readonly kind: 'time' | 'degassed' }>;

function measuredBy(column: NumberColumn, value: number): Partial<Reading> | null {
  const within = (number: number, low: number, high: number) => number >= low && number <= high;
  switch (column.kind) {
    case 'gravity': {
      const gravity = gravityOf(column.scale, value);
      return gravity !== null && within(gravity, 0.97, 1.2) ? { gravity } : null;
    }
    case 'mass': {
      const massG = (column.isLoss ? -1 : 1) * column.perG * value;
      return within(Math.abs(massG), 0, 1e7) ? { massG } : null;
    }
    case 'temperature': {
      const temperatureC = column.isFahrenheit ? ((value - 32) * 5) / 9 : value;
      return within(temperatureC, 0, 60) ? { temperatureC } : null;
    }
    case 'bubbles':
      return within(value, 0, 5000) ? { bubblesPerMin: value } : null;
  }
}

function gravityOf(scale: 'gravity' | 'plato' | 'oechsle', value: number): number | null {
  if (scale === 'plato') return value >= -8 && value <= 40 ? gravityFromPlato(value) : null;
  if (scale === 'oechsle') return 1 + value / 1000;
  // Written in kg/m³ or without its point: 1080 is 1.080.
  return value > 100 ? value / 1000 : value;
}

/** A column that begins at nothing and rises holds what was lost. */
function withMassesAsLoss(readings: readonly FermentReading[]): readonly FermentReading[] {
  const masses = readings.map(({ massG }) => massG).filter((mass) => mass !== null);
  const [first = 1] = masses;
  const last = masses.at(-1) ?? 0;
  if (Math.abs(first) > 1 || last <= first) return readings;
  return readings.map((reading) => ({
    ...reading,
    massG: reading.massG === null ? null : -reading.massG,
  }));
}

function shortened(problems: readonly string[]): readonly string[] {
  const more = problems.length - mostProblems;
  return more <= 0
    ? problems
    : [...problems.slice(0, mostProblems), `${more} more lines could not be used.`];
}

/**
 * A plain sentence that says what is wrong with a ferment's table and what would help.
 *
 * Source: this project's words.
 * @example
 * explainFermentCsvProblem({ kind: 'empty' }) // => "The file is empty."
 */
export function explainFermentCsvProblem(problem: FermentCsvProblem): string {
  switch (problem.kind) {
    case 'empty':
      return 'The file is empty.';
    case 'not-text':
      return 'The file is not text. Save it as CSV first.';
    case 'no-time-column':
      return `No time column was found${among(problem.titles)}. Give one the title "time_h" (hours since the yeast went in).`;
    case 'nothing-read':
      return `No row holds a time and a reading${among(problem.titles)}. Give the columns the titles "time_h" and "gravity", "mass_g" or "bubbles_per_min".`;
  }
}

function among(titles: readonly string[]): string {
  const shown = titles.filter((title) => title.trim() !== '').slice(0, 12);
  return shown.length === 0
    ? ''
    : ` among ${shown.map((title) => `"${title.trim().slice(0, 40)}"`).join(', ')}`;
}
