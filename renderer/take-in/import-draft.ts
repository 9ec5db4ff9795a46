import { type ColumnMapping, type CsvDialect, knownChannels, lookAtCsv, say } from '#shared-core';
import type { Encoding } from './file-beginning.ts';

/** What a column holds: nothing of use, the time or its finer part, the marks, free text, or a channel by its name. */
export type ColumnHolds = 'nothing' | 'time' | 'finer-time' | 'marks' | 'notes' | (string & {});

export interface DraftColumn {
  readonly title: string;
  /** A few of its cells. */
  readonly samples: readonly string[];
  readonly holds: ColumnHolds;
  /** As a person writes it; null leaves it to the cells or to the channel. */
  readonly unit: string | null;
  /** Index of the column that says how good each reading is, in this program's own tables. */
  readonly qualityColumn: number | null;
}

type TimeUnit = NonNullable<NonNullable<ColumnMapping['time']>['unit']>;
type DateOrder = NonNullable<NonNullable<ColumnMapping['time']>['dateOrder']>;

/** How a file is to be understood: first as it was found, then as the person says. */
export interface ImportDraft {
  readonly encoding: Encoding;
  readonly delimiter: CsvDialect['delimiter'];
  readonly decimal: 'either' | '.' | ',';
  readonly dateOrder: DateOrder;
  readonly timeUnit: TimeUnit;
  readonly columns: readonly DraftColumn[];
  /** Indexes of columns of which each may hold the head temperature, until a person says which. */
  readonly headDoubt: readonly number[];
}

const samplesShown = 3;
/** Columns offered; whoever has more names the others with `npm run analyse -- --columns`. */
export const mostColumnsShown = 40;

/** What can be found out about a file from its first lines. */
export function draftOf(
  text: string,
  encoding: Encoding,
  chosen?: CsvDialect['delimiter'],
): ImportDraft {
  const { delimiter, rows, layout: found, firstDataLine } = lookAtCsv(text, chosen);
  const data = rows.filter(({ line }) => line >= firstDataLine);
  const titles = rows.findLast(({ line }) => line < firstDataLine)?.cells ?? [];
  const width = Math.min(mostColumnsShown, Math.max(0, ...rows.map(({ cells }) => cells.length)));
  const headDoubt = (found?.headDoubt ?? []).filter((column) => column < width);
  const columns = Array.from({ length: width }, (_, column): DraftColumn => {
    const channel = found?.channels.find((other) => other.column === column);
    return {
      title: (channel?.title ?? titles[column] ?? '').trim().slice(0, 60),
      samples: samplesOf(data, column),
      holds: headDoubt.includes(column)
        ? `thermometer-${column + 1}`
        : holdsOf(column, found, channel?.channel),
      unit: channel?.unit ?? null,
      qualityColumn: channel?.qualityColumn ?? null,
    };
  });
  return {
    encoding,
    delimiter,
    decimal: found?.decimal ?? 'either',
    dateOrder: 'day-month',
    timeUnit: found?.twoParts ?? timeUnitOf(found?.perS ?? 1),
    columns,
    headDoubt,
  };
}

function holdsOf(
  column: number,
  found: {
    readonly timeColumn: number | null;
    readonly finerTimeColumns: readonly number[];
    readonly marksColumn: number | null;
    readonly notesColumn: number | null;
  } | null,
  channel: string | undefined,
): ColumnHolds {
  if (found?.timeColumn === column) return 'time';
  if (found?.finerTimeColumns.includes(column)) return 'finer-time';
  if (found?.marksColumn === column) return 'marks';
  if (found?.notesColumn === column) return 'notes';
  return channel ?? 'nothing';
}

const unitsOfTime: Readonly<Record<number, TimeUnit>> = {
  0.001: 'ms',
  60: 'min',
  3600: 'h',
  86400: 'd',
};

function timeUnitOf(perS: number): TimeUnit {
  return unitsOfTime[perS] ?? 's';
}

function samplesOf(data: ReturnType<typeof lookAtCsv>['rows'], column: number): readonly string[] {
  return data
    .map(({ cells }) => (cells[column] ?? '').trim().slice(0, 24))
    .filter((cell) => cell !== '')
    .slice(0, samplesShown);
}

const manyMay: ReadonlySet<ColumnHolds> = new Set(['nothing', 'finer-time']);

/** One column means something else; what only one column can hold is taken from the others. */
export function withColumn(
  draft: ImportDraft,
  index: number,
  change: Partial<Pick<DraftColumn, 'holds' | 'unit'>>,
): ImportDraft {
  const isSole = change.holds !== undefined && !manyMay.has(change.holds);
  return {
    ...draft,
    columns: draft.columns.map((column, other) => {
      if (other === index) return { ...column, ...change };
      return isSole && column.holds === change.holds ? { ...column, holds: 'nothing' } : column;
    }),
  };
}

/** What a column may be said to hold: the known channels, and the name found for a channel of its own. */
export function holdsOptions(found: string): readonly string[] {
  const usual: readonly string[] = [
    'nothing',
    'time',
    'finer-time',
    ...knownChannels,
    'marks',
    'notes',
  ];
  return usual.includes(found) ? usual : [...usual, found];
}

const withoutUnit: ReadonlySet<ColumnHolds> = new Set([
  'nothing',
  'time',
  'finer-time',
  'marks',
  'notes',
]);

/** Whether a column is none of readings, and so has no unit. */
export function isNoChannel(holds: ColumnHolds): boolean {
  return withoutUnit.has(holds);
}

export type DraftMapping =
  | { readonly kind: 'mapping'; readonly mapping: ColumnMapping }
  | { readonly kind: 'incomplete'; readonly sentence: string };

/** The mapping to send along, by column numbers, or what is still to be said. */
export function mappingOf({
  delimiter,
  decimal,
  dateOrder,
  timeUnit,
  columns,
  headDoubt,
}: ImportDraft): DraftMapping {
  const time = columns.findIndex(({ holds }) => holds === 'time');
  const finer = columns.flatMap(({ holds }, index) => (holds === 'finer-time' ? [index + 1] : []));
  const only = (wanted: ColumnHolds) => {
    const column = columns.findIndex(({ holds }) => holds === wanted);
    return column === -1 ? null : column + 1;
  };
  const channels = columns.flatMap(({ holds, unit, qualityColumn }, index) =>
    isNoChannel(holds)
      ? []
      : [
          {
            column: index + 1,
            channel: holds,
            unit,
            quality: qualityColumn === null ? null : qualityColumn + 1,
          },
        ],
  );
  if (time === -1 && !channels.some(({ channel }) => channel === 'receiver')) {
    const sentence = say('Say which column holds the time, or the volume of distillate.');
    return { kind: 'incomplete', sentence };
  }
  if (!channels.some(({ channel }) => channel === 'head')) {
    const doubted = headDoubt.map((column) => say('column {column}', { column: column + 1 }));
    const sentence =
      doubted.length < 2
        ? say('Say which column holds the head temperature.')
        : say('Say which column holds the head temperature: {columns}.', {
            columns: doubted.reduce((some, other) => say('{some} or {other}', { some, other })),
          });
    return { kind: 'incomplete', sentence };
  }
  return {
    kind: 'mapping',
    mapping: {
      delimiter,
      ...(decimal === 'either' ? {} : { decimal }),
      ...(time === -1
        ? {}
        : {
            time: {
              column: time + 1,
              unit: timeUnit,
              dateOrder,
              ...(finer.length > 0 && { finer }),
            },
          }),
      channels,
      marks: only('marks'),
      notes: only('notes'),
    },
  };
}
