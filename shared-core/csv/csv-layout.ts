import type { WireUnit } from '../frame/index.ts';
import { fail, type Result, succeed } from '../result/index.ts';
import type { Channel } from '../run/index.ts';
import { type ColumnRole, columnRole } from './column-title.ts';
import type { CsvRow } from './parse-csv.ts';
import { readTime } from './read-time.ts';

/** Which column holds what. */
export interface CsvLayout {
  readonly timeColumn: number;
  readonly perS: number;
  readonly channels: readonly ChannelColumn[];
  readonly marksColumn: number | null;
  /** Rows before this line hold titles and remarks. */
  readonly firstDataLine: number;
}

export interface ChannelColumn {
  readonly column: number;
  readonly title: string;
  readonly channel: Channel;
  readonly unit: WireUnit | null;
  readonly qualityColumn: number | null;
}

export type LayoutProblem =
  | { readonly kind: 'empty' }
  | { readonly kind: 'no-time-column'; readonly titles: readonly string[] }
  | { readonly kind: 'no-head-column'; readonly titles: readonly string[] };

/** Loggers put at most this many lines of remarks before the titles. */
const mostPreambleRows = 60;

/** Finds the columns from the first rows of a file. */
export function detectLayout(rows: readonly CsvRow[]): Result<CsvLayout, LayoutProblem> {
  const dataIndex = rows.findIndex((row, index) => looksLikeData(row, rows[index + 1]));
  const firstData = rows[dataIndex];
  if (firstData === undefined) {
    const titles = rows[0]?.cells ?? [];
    return fail(titles.length === 0 ? { kind: 'empty' } : { kind: 'no-time-column', titles });
  }
  const titleRow = titlesAbove(rows.slice(0, dataIndex), firstData);
  const titles = firstData.cells.map((_, column) => titleRow?.cells[column] ?? '');
  const roles = titles.map((title) => columnRole(title));
  const timeColumn = findTimeColumn(roles, firstData, titleRow === undefined);
  if (timeColumn === -1) return fail({ kind: 'no-time-column', titles });
  const channels = nameChannels(roles, titles, timeColumn, titleRow === undefined);
  if (!channels.some(({ channel }) => channel === 'head')) {
    return fail({ kind: 'no-head-column', titles });
  }
  const time = roles[timeColumn];
  const marksColumn = roles.findIndex(({ kind }) => kind === 'marks');
  return succeed({
    timeColumn,
    perS: (time?.kind === 'time' ? time.perS : null) ?? 1,
    channels,
    marksColumn: marksColumn === -1 ? null : marksColumn,
    // Rows between titles and readings may hold marks.
    firstDataLine: titleRow === undefined ? firstData.line : titleRow.line + 1,
  });
}

/** A row with a time and a number beside it; remarks such as "Rate, 10" have no such row below. */
function looksLikeData(row: CsvRow, below: CsvRow | undefined): boolean {
  const times = row.cells.filter((cell) => readTime(cell) !== undefined).length;
  const isWhole = below === undefined || below.cells.length === row.cells.length;
  return times >= 2 && isWhole;
}

/** The lowest row above the data without a number; titles may have a row of units under them. */
function titlesAbove(above: readonly CsvRow[], data: CsvRow): CsvRow | undefined {
  const candidates = above
    .slice(-mostPreambleRows)
    .filter(({ cells }) => cells.length >= Math.min(2, data.cells.length))
    .filter(({ cells }) => cells.every((cell) => readTime(cell) === undefined));
  const last = candidates.at(-1);
  const before = candidates.at(-2);
  const isUnitsRow = last?.cells.every((cell) => cell.trim() === '' || cell.trim().length <= 4);
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

function findTimeColumn(
  roles: readonly ColumnRole[],
  firstData: CsvRow,
  isUntitled: boolean,
): number {
  const readable = (column: number) => readTime(firstData.cells[column] ?? '') !== undefined;
  const titled = roles.findIndex(
    (role, column) => role.kind === 'time' && role.perS !== null && readable(column),
  );
  if (titled !== -1) return titled;
  const anyTime = roles.findIndex((role, column) => role.kind === 'time' && readable(column));
  if (anyTime !== -1) return anyTime;
  const stamped = roles.findIndex((role, column) => role.kind === 'date' && readable(column));
  return stamped === -1 && isUntitled ? 0 : stamped;
}

function nameChannels(
  roles: readonly ColumnRole[],
  titles: readonly string[],
  timeColumn: number,
  isUntitled: boolean,
): readonly ChannelColumn[] {
  const taken = new Set<Channel>();
  const headColumn = findHeadColumn(roles, timeColumn, isUntitled);
  const named = roles.flatMap((role, column) => {
    if (column === timeColumn || !('unit' in role)) return [];
    const wanted =
      column === headColumn ? 'head' : role.kind === 'channel' ? role.channel : role.name;
    let channel = wanted;
    for (
      let number = 2;
      taken.has(channel) || (channel === 'head' && column !== headColumn);
      number += 1
    ) {
      channel = `${wanted.slice(0, 28)}-${number}`;
    }
    taken.add(channel);
    const of = roles.findIndex((other) => other.kind === 'quality' && other.of === channel);
    const qualityColumn = of === -1 ? null : of;
    return [{ column, title: titles[column] ?? '', channel, unit: role.unit, qualityColumn }];
  });
  return named;
}

function findHeadColumn(
  roles: readonly ColumnRole[],
  timeColumn: number,
  isUntitled: boolean,
): number {
  const isChannel = (role: ColumnRole) => role.kind === 'channel' && role.channel === 'head';
  const candidates: readonly ((role: ColumnRole) => boolean)[] = [
    isChannel,
    (role) => role.kind === 'temperature',
    (role) => role.kind === 'channel' && role.unit === '°C' && role.channel.startsWith('t'),
    (role) => role.kind === 'other' && (isUntitled || roles.length === 2),
  ];
  for (const isCandidate of candidates) {
    const found = roles.findIndex((role, column) => column !== timeColumn && isCandidate(role));
    if (found !== -1) return found;
  }
  return -1;
}
