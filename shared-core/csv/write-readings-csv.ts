import { volumeReadings } from '../by-volume/index.ts';
import type { Mark, ReadingUnit, RunInput } from '../run/index.ts';
import type { StageSpan } from '../stages/index.ts';
import { type CsvDialect, type CsvFormat, csvDialects } from './csv-dialect.ts';
import { writeMarkCell } from './mark-cell.ts';
import { type CsvCell, writeCsvRow } from './write-csv-row.ts';

const unitInTitle: Readonly<Record<ReadingUnit, string>> = {
  '°C': 'degC',
  g: 'g',
  mL: 'mL',
  kPa: 'kPa',
  '1': '1',
};

export interface RunTable {
  readonly inputs: readonly RunInput[];
  /** Null leaves the column out: a table of what was recorded, without what was made of it. */
  readonly stages: readonly StageSpan[] | null;
  /** Null while the run is under way: its table has no end. */
  readonly endS: number | null;
  /** Measurements made after the run; they stand below its end. */
  readonly lateMarks?: readonly Mark[] | undefined;
}

/**
 * A run as CSV text in pieces of some hundred rows: `time_s`, a value and a quality column for each
 * channel, `stage` if known, `marks`. Readings of one moment share a row; a mark has a row of its own. Rows stand in the order
 * of time, whatever reached the log first: a reader may take no row that goes back. Values keep full precision, so reading it back
 * gives the monitor the same inputs.
 */
export function* writeReadingsCsv(table: RunTable, format: CsvFormat): Generator<string> {
  const dialect = csvDialects[format];
  const columns = columnsOf(table.inputs);
  const titles = [...columns.keys()].flatMap((key) => {
    const [channel, unit] = splitKey(key);
    return [`${channel}_${unitInTitle[unit]}`, `${channel}_quality`];
  });
  // A table by volume was taken in without times, and none are made up for it.
  const isByVolume = volumeReadings(table.inputs) !== null;
  const stages = isByVolume ? null : table.stages;
  const time = isByVolume ? [] : ['time_s'];
  yield writeCsvRow([...time, ...titles, ...(stages === null ? [] : ['stage']), 'marks'], dialect);

  const stageAt = stages === null ? null : createStageFinder(stages);
  let piece = '';
  let pieceRows = 0;
  for (const { timeS, cells, mark } of rowsOf(table, columns, dialect.decimal)) {
    const stage = stageAt === null ? [] : [stageAt(timeS)];
    piece += writeCsvRow([...(isByVolume ? [] : [timeS]), ...cells, ...stage, mark], dialect);
    pieceRows += 1;
    if (pieceRows < 500) continue;
    yield piece;
    piece = '';
    pieceRows = 0;
  }
  if (piece !== '') yield piece;
}

interface Row {
  readonly timeS: number;
  readonly cells: readonly CsvCell[];
  readonly mark: string | null;
}

function* rowsOf(
  { inputs, endS, lateMarks = [] }: RunTable,
  columns: ReadonlyMap<string, number>,
  decimal: CsvDialect['decimal'],
): Generator<Row> {
  const width = columns.size * 2;
  let open: { timeS: number; cells: CsvCell[]; lastColumn: number } | null = null;
  for (const input of inTimeOrder(inputs)) {
    const column = input.kind === 'reading' ? (columns.get(keyOf(input)) ?? 0) : -1;
    // A new row keeps the order in which the monitor saw the inputs.
    if (open !== null && (input.timeS !== open.timeS || column <= open.lastColumn)) {
      yield { timeS: open.timeS, cells: open.cells, mark: null };
      open = null;
    }
    if (input.kind === 'reading') {
      open ??= { timeS: input.timeS, cells: Array<CsvCell>(width).fill(null), lastColumn: -1 };
      open.cells[column * 2] = input.value;
      open.cells[column * 2 + 1] = input.quality;
      open.lastColumn = column;
    } else {
      const cell = input.kind === 'mark' ? input : ({ kind: 'link', change: input } as const);
      const empty = Array<CsvCell>(width).fill(null);
      yield { timeS: input.timeS, cells: empty, mark: writeMarkCell(cell, decimal) };
    }
  }
  if (open !== null) yield { timeS: open.timeS, cells: open.cells, mark: null };
  if (endS === null) return;
  for (const cell of [{ kind: 'end' } as const, ...lateMarks]) {
    const mark = writeMarkCell(cell, decimal);
    yield { timeS: endS, cells: Array<CsvCell>(width).fill(null), mark };
  }
}

/** What happened at one moment keeps its order. */
const inTimeOrder = (inputs: readonly RunInput[]) => [...inputs].sort((a, b) => a.timeS - b.timeS);

/** Column number of each channel and unit, in the order of their first reading. */
function columnsOf(inputs: readonly RunInput[]): ReadonlyMap<string, number> {
  const columns = new Map<string, number>();
  for (const input of inputs) {
    if (input.kind !== 'reading') continue;
    const key = keyOf(input);
    if (!columns.has(key)) columns.set(key, columns.size);
  }
  return columns;
}

const keyOf = ({ channel, unit }: { readonly channel: string; readonly unit: ReadingUnit }) =>
  `${channel} ${unit}`;

function splitKey(key: string): readonly [string, ReadingUnit] {
  const [channel = '', unit = '1'] = key.split(' ');
  return [channel, unit as ReadingUnit];
}

/** The stage at a time, for times that only go forward. */
function createStageFinder(stages: readonly StageSpan[]): (timeS: number) => string {
  let current = 0;
  return (timeS) => {
    for (let next = stages[current + 1]; next !== undefined && timeS >= next.fromS; ) {
      current += 1;
      next = stages[current + 1];
    }
    return stages[current]?.stage ?? '';
  };
}
