import {
  type CsvDialect,
  type CsvFormat,
  csvDialects,
  inDecimals,
  writeCsvRow,
} from '#shared-core';
import type { Sheet, SheetChart } from '../workbook/workbook.ts';

/** A column of a table: one description for CSV, data package and workbook. */
export interface TableField {
  readonly name: string;
  /** `datetime`: milliseconds as {@link wallMs} gives them; written as {@link csvDateTime}. */
  readonly type: 'number' | 'integer' | 'string' | 'datetime';
  /** UCUM code; null for words and pure numbers. */
  readonly unit: string | null;
  readonly description: string;
  /** Decimals kept; all when left out. */
  readonly decimals?: number;
  /** Words with numbers in them, which take the decimal sign of the table. */
  readonly isSentence?: boolean;
}

export type TableCell = number | string | null;

export interface Table {
  /** Lower-case words joined by hyphens: the file's name and the resource's. */
  readonly name: string;
  readonly title: string;
  /** Columns that tell every row from the others. */
  readonly primaryKey?: readonly string[];
  readonly fields: readonly TableField[];
  readonly rows: () => Iterable<readonly TableCell[]>;
}

/** A column with its cells: all there is of it stands in one place. */
export interface Column<Row> extends TableField {
  readonly value: (row: Row) => TableCell;
}

/** A column of words. */
export function words<Row>(
  name: string,
  description: string,
  value: (row: Row) => TableCell,
): Column<Row> {
  return { name, type: 'string', unit: null, description, value };
}

/** A column of numbers in a unit (UCUM), null where that stands beside them, to so many decimals; empty where there is none. */
export function amount<Row>(
  name: string,
  unit: string | null,
  description: string,
  value: (row: Row) => number | null | undefined,
  decimals?: number,
): Column<Row> {
  return {
    name,
    type: 'number',
    unit,
    description,
    ...(decimals === undefined ? {} : { decimals }),
    value: (row) => value(row) ?? null,
  };
}

/** What a table is by its columns. */
export function byColumns<Row>(
  columns: readonly Column<Row>[],
  each: () => Iterable<Row>,
): Pick<Table, 'fields' | 'rows'> {
  return {
    fields: columns.map(({ value: _, ...field }) => field),
    *rows() {
      for (const row of each()) yield columns.map(({ value }) => value(row));
    },
  };
}

const rowsAtOnce = 500;

/** A table as CSV text in pieces. */
export function* tableCsv({ fields, rows }: Table, format: CsvFormat): Generator<string> {
  const dialect = csvDialects[format];
  let piece = writeCsvRow(
    fields.map(({ name }) => name),
    dialect,
  );
  let count = 0;
  for (const row of rows()) {
    piece += writeCsvRow(
      fields.map((field, index) => csvCell(row[index] ?? null, field, dialect.decimal)),
      dialect,
    );
    count += 1;
    if (count % rowsAtOnce !== 0) continue;
    yield piece;
    piece = '';
  }
  yield piece;
}

function csvCell(
  cell: TableCell,
  { type, decimals, isSentence }: TableField,
  decimal: CsvDialect['decimal'],
): TableCell {
  if (typeof cell === 'string' && isSentence === true) return inDecimals(cell, decimal);
  if (typeof cell !== 'number') return cell;
  if (type === 'datetime') return csvDateTime(cell);
  return decimals === undefined ? cell : rounded(cell, decimals);
}

/** A moment as the clock on the wall shows it [ms], in the zone that it is written in: spreadsheets know no zones. */
export function wallMs(iso: string): number {
  return Date.parse(iso.replace(/(?:Z|[+-]\d\d:\d\d)$/, 'Z'));
}

/**
 * Date and time by the clock on the wall, without a zone's letter: spreadsheets of every locale take this form for a date and time,
 * but `2026-03-18T09:15:00Z` for text.
 */
function csvDateTime(epochMs: number): string {
  return new Date(epochMs).toISOString().slice(0, 19).replace('T', ' ');
}

/** The same form for Table Schema. */
export const csvDateTimeFormat = '%Y-%m-%d %H:%M:%S';

function rounded(value: number, decimals: number): number {
  const power = 10 ** decimals;
  return Math.round(value * power) / power;
}

/** Rows as the CSV has them; begun anew each time they are asked for. */
function roundedRows(fields: Table['fields'], rows: Table['rows']): Iterable<readonly TableCell[]> {
  return {
    *[Symbol.iterator]() {
      for (const row of rows()) {
        yield row.map((cell, index) => {
          const decimals = fields[index]?.decimals;
          return typeof cell === 'number' && decimals !== undefined
            ? rounded(cell, decimals)
            : cell;
        });
      }
    },
  };
}

/** The same table as a sheet of a workbook. */
export function tableSheet(
  { fields, rows, ...table }: Table,
  name: string,
  chart?: SheetChart,
): Sheet {
  return {
    name,
    columns: fields.map(({ name: title, type, decimals }) => ({
      title,
      type: type === 'datetime' ? 'date-time' : type === 'string' ? 'text' : 'number',
      ...(decimals === undefined ? {} : { decimals }),
    })),
    rows: roundedRows(fields, rows),
    ...(chart === undefined ? {} : { chart: { ...chart, title: chart.title || table.title } }),
  };
}
