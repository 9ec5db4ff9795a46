import { z } from 'zod';
import { readUnit, type WireUnit } from '../frame/index.ts';
import { fail, type Result, succeed } from '../result/index.ts';
import { channelSchema } from '../run/index.ts';
import { byVolumeRemark, type ChannelColumn, type CsvLayout } from './csv-layout.ts';
import type { CsvRow } from './parse-csv.ts';
import { readTime } from './read-time.ts';

/** A column by its number, counted from 1, or by its title as it stands in the file. */
const columnSchema = z.union([z.number().int().min(1).max(500), z.string().min(1).max(200)]);

/** Which column of a logger's file holds what, where its titles don't say. */
export const columnMappingSchema = z.strictObject({
  delimiter: z.enum([',', ';', '\t', '|', ' ']).optional(),
  /** How decimals are written; without it either sign is taken for one. */
  decimal: z.enum(['.', ',']).optional(),
  /** Left out for a table by volume: then a receiver column in mL says to which volume a row belongs. */
  time: z
    .strictObject({
      column: columnSchema,
      /** Of plain numbers (`d`: days, also those that a spreadsheet counts dates in), or what clock times of two parts are; other clock times and dates need none. */
      unit: z.enum(['ms', 's', 'min', 'h', 'd', 'mm:ss', 'h:mm']).default('s'),
      /** Of 03/04/2026, whether the day or the month comes first. */
      dateOrder: z.enum(['day-month', 'month-day']).default('day-month'),
      /** Columns that go on with it, each in a sixtieth of the unit before: seconds beside minutes. */
      finer: z.array(columnSchema).max(2).default([]),
    })
    .optional(),
  channels: z
    .array(
      z.strictObject({
        column: columnSchema,
        channel: channelSchema,
        /** As a person writes it: °C, °F, K, g, mL, kPa, hPa … */
        unit: z.string().max(12).nullable().default(null),
        /** The column that says how good each reading is, in this program's own exports. */
        quality: columnSchema.nullable().default(null),
      }),
    )
    .min(1)
    .max(100),
  /** The column with marks, in this program's own exports. */
  marks: columnSchema.nullable().default(null),
  /** The column with free text. */
  notes: columnSchema.nullable().default(null),
});

export type ColumnMapping = z.input<typeof columnMappingSchema>;

export type MappingProblem =
  | { readonly kind: 'no-such-column'; readonly column: string; readonly titles: readonly string[] }
  | { readonly kind: 'unknown-unit'; readonly unit: string }
  | { readonly kind: 'no-times-in-column'; readonly column: string }
  | { readonly kind: 'neither-time-nor-volume' };

const secondsIn = { ms: 0.001, s: 1, min: 60, h: 3600, d: 86_400, 'mm:ss': 1, 'h:mm': 1 } as const;

/**
 * The layout of a file from a mapping: columns by number or title, data from the first row whose time can be read.
 *
 * @param rows the first rows of the file
 * @param mapping columns counted from 1, or their titles
 *
 * Source: this project's rule; no standard.
 * @example
 * const rows = [{ line: 1, cells: ['a', 'b'] }, { line: 2, cells: ['0,5', '20'] }];
 * const mapped = mappedLayout(rows, { time: { column: 'a', unit: 'min' }, channels: [{ column: 2, channel: 'head', unit: '°C' }] });
 * mapped.ok && [mapped.value.perS, mapped.value.firstDataLine] // => [60, 2]
 */
export function mappedLayout(
  rows: readonly CsvRow[],
  mapping: ColumnMapping,
): Result<CsvLayout, MappingProblem> {
  const find = (column: number | string) => findColumn(rows, column);
  const { time } = mapping;
  const volume = mapping.channels.find(({ channel }) => channel === 'receiver');
  const along = time?.column ?? volume?.column;
  if (along === undefined) return fail({ kind: 'neither-time-nor-volume' });
  const alongColumn = find(along);
  const named = [
    along,
    ...(time?.finer ?? []),
    ...mapping.channels.flatMap(({ column, quality }) => [column, quality ?? column]),
    ...[mapping.marks, mapping.notes].flatMap((column) => column ?? []),
  ];
  const missing = named.find((column) => find(column) === -1);
  if (missing !== undefined) {
    return fail({ kind: 'no-such-column', column: String(missing), titles: rows[0]?.cells ?? [] });
  }
  const firstData = rows.find(({ cells }) => readTime(cells[alongColumn] ?? '') !== undefined);
  if (firstData === undefined) {
    return fail({ kind: 'no-times-in-column', column: String(along) });
  }
  const order = time?.dateOrder ?? 'day-month';
  const titles = rows.findLast(({ line }) => line < firstData.line)?.cells ?? [];
  const channels: ChannelColumn[] = [];
  for (const { column, channel, unit = null, quality = null } of mapping.channels) {
    const known: WireUnit | null | undefined = unit === null ? null : readUnit(unit);
    if (known === undefined) return fail({ kind: 'unknown-unit', unit: unit ?? '' });
    const at = find(column);
    const title = typeof column === 'number' ? (titles[at] ?? '') : column;
    const qualityColumn = quality === null ? null : find(quality);
    channels.push({ column: at, title, channel, unit: known, qualityColumn });
  }
  const timeUnit = time?.unit ?? 's';
  return succeed({
    timeColumn: time === undefined ? null : alongColumn,
    perS: secondsIn[timeUnit],
    finerTimeColumns: (time?.finer ?? []).map(find),
    twoParts: timeUnit === 'mm:ss' || timeUnit === 'h:mm' ? timeUnit : null,
    dateOrder: order,
    decimal: mapping.decimal ?? null,
    channels: time === undefined ? byVolume(channels) : channels,
    marksColumn: mapping.marks == null ? null : find(mapping.marks),
    notesColumn: mapping.notes == null ? null : find(mapping.notes),
    firstDataLine: firstData.line,
    headDoubt: [],
    remarks: time === undefined ? [byVolumeRemark(titles[alongColumn] ?? '')] : [],
  });
}

/** A volume is read before the temperature that belongs to it; without a unit it is in mL. */
function byVolume(channels: readonly ChannelColumn[]): readonly ChannelColumn[] {
  const isVolume = ({ channel }: ChannelColumn) => channel === 'receiver';
  return [
    ...channels.filter(isVolume).map((column) => ({ ...column, unit: column.unit ?? 'mL' })),
    ...channels.filter((column) => !isVolume(column)),
  ];
}

function findColumn(rows: readonly CsvRow[], column: number | string): number {
  if (typeof column === 'number') {
    return rows.some(({ cells }) => cells.length >= column) ? column - 1 : -1;
  }
  const wanted = column.trim();
  for (const { cells } of rows) {
    const found = cells.findIndex((cell) => cell.trim() === wanted);
    if (found !== -1) return found;
  }
  return -1;
}
