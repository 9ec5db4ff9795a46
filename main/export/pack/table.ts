import { type CsvFormat, csvDialects, writeCsvRow } from '#shared-core';
import type { Sheet, SheetChart } from '../workbook/workbook.ts';

/** A column of a table: one description for CSV, data package and workbook. */
export interface TableField {
  readonly name: string;
  /** `datetime`: milliseconds since 1970, UTC; written by ISO 8601. */
  readonly type: 'number' | 'integer' | 'string' | 'datetime';
  /** UCUM code; null for words and pure numbers. */
  readonly unit: string | null;
  readonly description: string;
  /** Decimals kept; all when left out. */
  readonly decimals?: number;
}

export type TableCell = number | string | null;

export interface Table {
  /** Lower-case words joined by hyphens: the file's name and the resource's. */
  readonly name: string;
  readonly title: string;
  readonly fields: readonly TableField[];
  readonly rows: () => Iterable<readonly TableCell[]>;
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
      fields.map((field, index) => csvCell(row[index] ?? null, field)),
      dialect,
    );
    count += 1;
    if (count % rowsAtOnce !== 0) continue;
    yield piece;
    piece = '';
  }
  yield piece;
}

function csvCell(cell: TableCell, { type, decimals }: TableField): TableCell {
  if (typeof cell !== 'number') return cell;
  if (type === 'datetime') return isoSecond(cell);
  return decimals === undefined ? cell : rounded(cell, decimals);
}

export const isoSecond = (epochMs: number) => `${new Date(epochMs).toISOString().slice(0, 19)}Z`;

function rounded(value: number, decimals: number): number {
  const power = 10 ** decimals;
  return Math.round(value * power) / power;
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
    rows: { [Symbol.iterator]: () => rows()[Symbol.iterator]() },
    ...(chart === undefined ? {} : { chart: { ...chart, title: chart.title || table.title } }),
  };
}
