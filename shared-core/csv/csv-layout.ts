import { readWireNumber, type WireUnit } from '../frame/index.ts';
import { fail, type Result, succeed } from '../result/index.ts';
import type { Channel } from '../run/index.ts';
import { asGiven, worded } from '../wording/index.ts';
import type { ColumnRole, TwoPartClock } from './column-title.ts';
import type { CsvRow } from './parse-csv.ts';
import type { DateOrder } from './read-time.ts';
import { countsRows, holdsNumbers, holdsWords, titlesAndData } from './table-beginning.ts';
import { timeOfTable } from './table-time.ts';
import { decimalOfTable, isT, lettered } from './time-column.ts';

/** Which column holds what. */
export interface CsvLayout {
  /** Null for a table by volume, whose readings have no time. */
  readonly timeColumn: number | null;
  readonly perS: number;
  /** Columns that go on with the time, each in a sixtieth of the unit before: seconds beside minutes. */
  readonly finerTimeColumns: readonly number[];
  /** What clock times of two parts are, where the title or the person says it. */
  readonly twoParts: TwoPartClock | null;
  readonly dateOrder: DateOrder;
  /** Null takes either sign for a decimal one. */
  readonly decimal: '.' | ',' | null;
  readonly channels: readonly ChannelColumn[];
  readonly marksColumn: number | null;
  /** Free text beside the readings. */
  readonly notesColumn: number | null;
  /** Rows before this line hold titles and remarks. */
  readonly firstDataLine: number;
  /** Columns of which each may hold the head temperature, where the file leaves open which. */
  readonly headDoubt: readonly number[];
  /** What was chosen without the file's saying so, in sentences. */
  readonly remarks: readonly string[];
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

/**
 * Finds the columns from the first rows of a file. By hand: a reader of CSV finds rows and types, but not which of five columns is
 * the still head's, and this layer imports no package but the schemas'.
 */
export function detectLayout(
  rows: readonly CsvRow[],
  allRows: () => Iterable<CsvRow> = () => rows,
): Result<CsvLayout, LayoutProblem> {
  if (rows.length === 0) return fail({ kind: 'empty' });
  const beginning = titlesAndData(rows);
  const { titleRow, titles, data } = beginning;
  const { roles, timeColumn: timed, perS, finerTimeColumns } = timeOfTable(beginning, allRows);
  const volume = findVolumeColumn(roles, titles, data, timed === -1);
  const isByVolume = volume !== -1 && (timed === -1 || isLoneT(titles, roles, timed));
  const [timeFound, volumeColumn] = isByVolume ? [-1, volume] : [timed, -1];
  if (timeFound === -1 && volumeColumn === -1) return fail({ kind: 'no-time-column', titles });
  const timeColumn = timeFound === -1 ? volumeColumn : timeFound;
  const holding = roles.map((role, column) => {
    if (finerTimeColumns.includes(column)) return textColumn;
    // A second "t" beside the time is a temperature.
    if (role.kind === 'time' && isT(titles[column])) return lettered;
    // A column of the sensors' names has the title of a temperature.
    if (role.kind === 'temperature' && holdsWords(data, column)) return textColumn;
    const isReading =
      holdsNumbers(data, column) && (column === timeColumn || !countsRows(data, column));
    return role.kind === 'other' && !isReading ? textColumn : role;
  });
  const channels = nameChannels(holding, titles, timeColumn, titleRow === undefined);
  if (!channels.some(({ channel }) => channel === 'head')) {
    return fail({ kind: 'no-head-column', titles });
  }
  const candidates = headCandidates(holding, timeColumn, titleRow === undefined);
  const time = roles[timeFound];
  const only = (wanted: 'marks' | 'notes') => {
    const column = roles.findIndex(({ kind }) => kind === wanted);
    return column === -1 ? null : column;
  };
  return succeed({
    timeColumn: timeFound === -1 ? null : timeFound,
    perS,
    finerTimeColumns,
    twoParts: (time?.kind === 'time' ? time.twoParts : null) ?? null,
    dateOrder: 'day-month',
    decimal: decimalOfTable(data, timeColumn),
    channels:
      volumeColumn === -1
        ? channels
        : [volumeChannel(volumeColumn, titles), ...withoutReceiver(channels)],
    marksColumn: only('marks'),
    notesColumn: only('notes'),
    // Rows between titles and readings may hold marks.
    firstDataLine: titleRow === undefined ? (rows[0]?.line ?? 1) : titleRow.line + 1,
    headDoubt: candidates.length > 1 ? candidates : [],
    remarks: [
      ...(volumeColumn === -1 ? [] : [byVolumeRemark(titles[volumeColumn] ?? '')]),
      ...headRemarks(candidates, channels),
    ],
  });
}

/** The column whose title says a volume, and whose numbers never fall; where there is no time, any that says a volume: what is wrong with it is said of it then. */
function findVolumeColumn(
  roles: readonly ColumnRole[],
  titles: readonly string[],
  data: readonly CsvRow[],
  isTimeless: boolean,
): number {
  const isVolume = (role: ColumnRole, title: string) =>
    ('unit' in role && role.unit === 'mL') ||
    /^\s*ml\s*$/i.test(title) ||
    (role.kind === 'channel' && role.channel === 'receiver' && role.unit === null);
  const saying = roles.flatMap((role, column) =>
    isVolume(role, titles[column] ?? '') ? [column] : [],
  );
  const total = saying.find((column) => neverFalls(data, column));
  return total ?? (isTimeless ? saying[0] : undefined) ?? -1;
}

/** Beside a volume a single "T" is the temperature, not the time, unless another column is one. */
function isLoneT(
  titles: readonly string[],
  roles: readonly ColumnRole[],
  timeColumn: number,
): boolean {
  const isHot = ({ kind }: ColumnRole, column: number) =>
    column !== timeColumn && (kind === 'temperature' || isHead(roles[column]));
  return isT(titles[timeColumn]) && !roles.some(isHot);
}

const isHead = (role: Holding | undefined) => role?.kind === 'channel' && role.channel === 'head';

function neverFalls(data: readonly CsvRow[], column: number): boolean {
  const values = data.flatMap(({ cells }) => {
    const read = readWireNumber(cells[column] ?? '', true);
    return read.kind === 'number' ? [read.value] : [];
  });
  return values.length > 0 && values.every((value, index) => value >= (values[index - 1] ?? value));
}

/** Stands first among the channels: a volume is read before the temperature that belongs to it. */
function volumeChannel(column: number, titles: readonly string[]): ChannelColumn {
  const title = titles[column] ?? '';
  return { column, title, channel: 'receiver', unit: 'mL', qualityColumn: null };
}

const withoutReceiver = (channels: readonly ChannelColumn[]) =>
  channels.filter(({ channel }) => channel !== 'receiver');

/** What is said of a table that is taken without times. */
export const byVolumeRemark = (title: string) =>
  worded(
    'The table has no times; it is taken by the volume in "{title}". What needs a time (stages, calls, duration) is left out.',
    { title: title.trim().slice(0, 40) },
  );

const textColumn = { kind: 'text' } as const;

type Holding = ColumnRole | typeof textColumn;

function nameChannels(
  roles: readonly Holding[],
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

/** Says which column was taken for the head's where several might have been. */
function headRemarks(
  [taken, ...others]: readonly number[],
  channels: readonly ChannelColumn[],
): readonly string[] {
  if (taken === undefined || others.length === 0) return [];
  const name = (at: number) => {
    const title = channels.find(({ column }) => column === at)?.title.trim() ?? '';
    const column = at + 1;
    return title === ''
      ? worded('column {column}', { column })
      : worded('"{title}" (column {column})', { title: asGiven(title.slice(0, 40)), column });
  };
  return [
    worded(
      '{taken} was taken for the head temperature, but {others} might be it as well. Give the right one the title "head_degC", or name it with --columns.',
      {
        taken: name(taken),
        others: others
          .map(name)
          .reduce((some, other) => worded('{some}, {other}', { some, other })),
      },
    ),
  ];
}

function findHeadColumn(
  roles: readonly Holding[],
  timeColumn: number,
  isUntitled: boolean,
): number {
  return headCandidates(roles, timeColumn, isUntitled)[0] ?? -1;
}

/** The columns that may hold the head temperature, all by the best reason that any of them gives. */
function headCandidates(
  roles: readonly Holding[],
  timeColumn: number,
  isUntitled: boolean,
): readonly number[] {
  // The only column of numbers beside the time needs no title.
  const isLone =
    roles.filter((role, column) => column !== timeColumn && role.kind === 'other').length === 1;
  const candidates: readonly ((role: Holding) => boolean)[] = [
    isHead,
    (role) => role.kind === 'temperature',
    (role) => role.kind === 'channel' && role.unit === '°C' && role.channel.startsWith('t'),
    (role) => role.kind === 'other' && (isUntitled || isLone),
  ];
  for (const isCandidate of candidates) {
    const found = roles.flatMap((role, column) =>
      column !== timeColumn && isCandidate(role) ? [column] : [],
    );
    if (found.length > 0) return found;
  }
  return [];
}
