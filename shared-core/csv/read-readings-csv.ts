import {
  createPowerOnScreen,
  type PowerOnScreen,
  readWireNumber,
  toChannelValue,
} from '../frame/index.ts';
import { fail, type Result, succeed } from '../result/index.ts';
import { type Mark, type Reading, type RunInput, readingQualitySchema } from '../run/index.ts';
import { asGiven, worded } from '../wording/index.ts';
import { type ColumnMapping, type MappingProblem, mappedLayout } from './column-mapping.ts';
import type { TwoPartClock } from './column-title.ts';
import {
  type ChannelColumn,
  type CsvLayout,
  detectLayout,
  type LayoutProblem,
} from './csv-layout.ts';
import { detectDelimiter } from './detect-delimiter.ts';
import { withoutGroups } from './digit-groups.ts';
import { createFahrenheitSuspicion, type FahrenheitSuspicion } from './fahrenheit-suspicion.ts';
import { readMarkCell } from './mark-cell.ts';
import type { CsvRow } from './parse-csv.ts';
import { readTime } from './read-time.ts';
import { rowTimes } from './row-times.ts';
import { firstRows, tableRows } from './table-rows.ts';
import { isNewestFirst } from './time-column.ts';
import type { FileBeginning } from './time-reader.ts';
import { judgeTwoPartClock } from './two-part-clock.ts';
import { type NotATotal, notATotal } from './volume-total.ts';

export type CsvProblem =
  | LayoutProblem
  | MappingProblem
  | NotATotal
  | { readonly kind: 'too-many-readings'; readonly most: number }
  | { readonly kind: 'not-text' }
  | { readonly kind: 'no-readings'; readonly rejectedRows: readonly RejectedRow[] };

/** A row, or a value in it, that could not be used. */
export interface RejectedRow {
  readonly line: number;
  readonly reason: string;
}

/** What a table says beside its readings. */
export interface CsvFacts {
  readonly endS: number;
  /** Marks below the line that ends the run: measurements made after it. */
  readonly lateMarks: readonly Mark[];
  /** When the run began by the file's own dates; null where it has none. */
  readonly began: FileBeginning | null;
  readonly channels: readonly ChannelColumn[];
  readonly rejectedRows: readonly RejectedRow[];
  /** What had to be chosen for the whole file, in sentences: the person may know better. */
  readonly remarks: readonly string[];
}

export interface ReadCsv extends CsvFacts {
  /** In time order, as the monitor takes them. */
  readonly inputs: readonly RunInput[];
}

/** Two days at ten a second. */
const mostReadings = 2_000_000;
/** Rows whose rejection is kept one by one; the others are counted. */
const mostRejected = 10_000;

/**
 * Reads any logger's CSV: finds delimiter, decimal sign, titles and units by itself. Empty cells are
 * gaps; a row or value that can't be used is reported with its line, never silently dropped.
 *
 * @param mapping which column holds what, for files whose titles don't say
 *
 * @example
 * const read = readReadingsCsv('Time (s);Head (°C)\n0;20,5\n10;x\n');
 * read.ok && read.value.inputs // => [{ "kind": "reading", "timeS": 0, "channel": "head", "value": 20.5, "unit": "°C", "quality": "good" }]
 * read.ok && read.value.rejectedRows // => [{ "line": 3, "reason": "\"x\" in the column \"Head (°C)\" is not a number" }]
 */
export function readReadingsCsv(
  text: string,
  mapping?: ColumnMapping,
): Result<ReadCsv, CsvProblem> {
  const inputs: RunInput[] = [];
  const steps = readReadingsCsvInSteps(text, (input) => inputs.push(input), mapping);
  for (;;) {
    const step = steps.next();
    if (step.done !== true) continue;
    return step.value.ok ? succeed({ ...step.value.value, inputs }) : step.value;
  }
}

/** Rows read before whoever drives the steps gets its turn: some milliseconds. */
const rowsAtOnce = 2000;

/**
 * {@link readReadingsCsv} in steps, for whoever has something else to do meanwhile, such as recording a run. Each step
 * yields how many rows were read so far.
 *
 * @param keep takes the inputs one by one, in time order: two million of them are too much to hold as objects
 *
 * @example
 * const kept = [];
 * const step = readReadingsCsvInSteps('time_s,head_degC\n0,20\n', (input) => kept.push(input.value)).next();
 * [step.done, ...kept] // => [true, 20]
 */
export function* readReadingsCsvInSteps(
  text: string,
  keep: (input: RunInput) => void,
  mapping?: ColumnMapping,
): Generator<number, Result<CsvFacts, CsvProblem>> {
  if (text.slice(0, 4096).includes('\0')) return fail({ kind: 'not-text' });
  const delimiter = mapping?.delimiter ?? detectDelimiter(text);
  const allRows = tableRows(text, delimiter);
  const rows = firstRows(allRows());
  const layout = mapping === undefined ? detectLayout(rows, allRows) : mappedLayout(rows, mapping);
  if (!layout.ok) return layout;
  const [volume] = layout.value.channels;
  if (layout.value.timeColumn === null && volume !== undefined) {
    const problem = notATotal(allRows(), layout.value.firstDataLine, volume);
    if (problem !== null) return fail(problem);
  }
  const isBackwards = beginsWithNewest(rows, layout.value);
  const backwards = isBackwards ? [...allRows()].reverse() : null;
  const inOrder = () => backwards ?? allRows();
  const { twoParts, remark } = twoPartsOf(inOrder(), layout.value);
  const read = yield* readRows(inOrder, layout.value, twoParts, keep);
  if (read === 'too-many') return fail({ kind: 'too-many-readings', most: mostReadings });
  const remarks = [
    ...layout.value.remarks,
    ...(remark === null ? [] : [remark]),
    ...(isBackwards
      ? [worded('The table begins with its newest row; it was read from its end.')]
      : []),
    ...read.remarks,
  ];
  const { readings, ...facts } = read;
  return readings > 0
    ? succeed({ ...facts, remarks })
    : fail({ kind: 'no-readings', rejectedRows: read.rejectedRows });
}

/** What clock times of two parts are: as the title says, or by all of the file's times together. */
function twoPartsOf(rows: Iterable<CsvRow>, layout: CsvLayout) {
  if (layout.twoParts !== null) return { twoParts: layout.twoParts, remark: null };
  if (layout.timeColumn === null) return { twoParts: 'h:mm' as const, remark: null };
  const judged = judgeTwoPartClock(timeCells(rows, layout.firstDataLine, layout.timeColumn));
  return { twoParts: judged?.clock ?? 'h:mm', remark: judged?.remark ?? null };
}

/** The cells of the time column as long as they are clock times; none where the first rows hold others. */
function* timeCells(
  rows: Iterable<CsvRow>,
  firstDataLine: number,
  timeColumn: number,
): Generator<string> {
  for (const { line, cells } of rows) {
    if (line < firstDataLine) continue;
    const cell = cells[timeColumn] ?? '';
    const kind = readTime(cell)?.kind;
    if (kind === 'number' || kind === 'stamp' || kind === 'duration') return;
    yield cell;
  }
}

/** Some loggers write their newest row on top. */
function beginsWithNewest(
  rows: readonly CsvRow[],
  { timeColumn, firstDataLine }: CsvLayout,
): boolean {
  if (timeColumn === null) return false;
  const data = rows.filter(({ line }) => line >= firstDataLine);
  return isNewestFirst(data.map(({ cells }) => cells[timeColumn] ?? ''));
}

function* readRows(
  inOrder: () => Iterable<CsvRow>,
  layout: CsvLayout,
  twoParts: TwoPartClock,
  keep: (input: RunInput) => void,
): Generator<number, (CsvFacts & { readonly readings: number }) | 'too-many'> {
  let readings = 0;
  const rejectedRows: RejectedRow[] = [];
  const lateMarks: Mark[] = [];
  const times = rowTimes(inOrder, layout, twoParts);
  const fahrenheit = createFahrenheitSuspicion();
  const screen = createPowerOnScreen();
  let notListed = { line: 0, count: 0 };
  let marks = 0;
  let endS = 0;
  let hasEnded = false;
  /** A remark that a logger repeats in each row was made once. */
  let lastNote = '';
  let rowsRead = 0;
  let line = 0;
  const reject = (reason: string) => {
    if (rejectedRows.length < mostRejected) rejectedRows.push({ line, reason });
    else notListed = { line, count: notListed.count + 1 };
  };
  for (const row of inOrder()) {
    const { cells } = row;
    line = row.line;
    if (line < layout.firstDataLine) continue;
    rowsRead += 1;
    if (rowsRead % rowsAtOnce === 0) yield rowsRead;
    if (readings > mostReadings) return 'too-many';
    const time = times.read(cells);
    if (!time.ok) {
      reject(time.error);
      continue;
    }
    const timeS = time.value;
    endS = timeS;
    for (const column of layout.channels) {
      const reading = readReading(timeS, cells, column, layout.decimal, screen, fahrenheit);
      if (!reading.ok) reject(reading.error);
      else if (reading.value !== null) {
        readings += 1;
        keep(reading.value);
      }
    }
    const note = layout.notesColumn === null ? '' : noteText(cells[layout.notesColumn]);
    if (note !== '' && note !== lastNote) {
      marks += 1;
      keep({ kind: 'mark', timeS, markId: marks, mark: { type: 'note', text: note } });
    }
    lastNote = note;
    const markText = layout.marksColumn === null ? '' : (cells[layout.marksColumn] ?? '').trim();
    if (markText === '') continue;
    const mark = readMarkCell(markText);
    if (mark === undefined)
      reject(worded('"{mark}" is no mark that can be read', { mark: markText.slice(0, 60) }));
    else if (mark.kind === 'link') keep({ kind: 'link', timeS, ...mark.change });
    else if (mark.kind === 'mark') {
      marks += 1;
      const made: Mark = { kind: 'mark', timeS, markId: marks, mark: mark.mark };
      if (hasEnded) lateMarks.push(made);
      else keep(made);
    } else hasEnded = true;
  }
  if (notListed.count > 0) {
    const reason = worded('here end {count} more rows or values that could not be used', {
      count: notListed.count,
    });
    rejectedRows.push({ line: notListed.line, reason });
  }
  const remark = fahrenheit.remark();
  const remarks = [
    ...restartRemark(times.restarts()),
    ...times.remarks,
    ...(remark === null ? [] : [remark]),
  ];
  const began = times.began();
  return { readings, endS, lateMarks, began, channels: layout.channels, rejectedRows, remarks };
}

function restartRemark(restarts: number): readonly string[] {
  if (restarts === 0) return [];
  return [
    worded(
      'The times begin anew within the table ({count, plural, one {once} other {# times}}): what follows was put right behind what stands above, since nothing tells how long lay between.',
      { count: restarts },
    ),
  ];
}

/** Of the length that a note may have. */
const noteText = (cell: string | undefined) => (cell ?? '').trim().slice(0, 2000);

/** The reading in a cell, null when the cell is empty, or why it can't be used. */
function readReading(
  timeS: number,
  cells: readonly string[],
  { column, title, channel, unit, qualityColumn }: ChannelColumn,
  decimal: CsvLayout['decimal'],
  screen: PowerOnScreen,
  fahrenheit: FahrenheitSuspicion,
): Result<Reading | null, string> {
  const text = (cells[column] ?? '').trim();
  if (text === '') return succeed(null);
  const number = readWireNumber(decimal === ',' ? withoutGroups(text) : text, decimal !== '.');
  if (number.kind === 'no-value')
    return fail(
      worded('no value in the column "{title}" ("{text}")', {
        title: asGiven(title),
        text: asGiven(text),
      }),
    );
  if (number.kind === 'neither') {
    return fail(
      worded('"{text}" in the column "{title}" is not a number', {
        text: asGiven(text.slice(0, 60)),
        title: asGiven(title),
      }),
    );
  }
  if (channel === 'head' && (number.unit ?? unit) === null) fahrenheit.see(number.value);
  const raw = { name: null, value: number.value, unit: number.unit ?? unit };
  const converted = toChannelValue(channel, raw, '°C');
  if (!converted.ok)
    return fail(
      worded('{text} in the column "{title}" can\'t be a measured value', {
        text: asGiven(text),
        title: asGiven(title),
      }),
    );
  const stated = qualityColumn === null ? '' : (cells[qualityColumn] ?? '').trim();
  const quality = stated === '' ? null : readingQualitySchema.safeParse(stated);
  const value = quality?.success === true ? converted.value : screen.screen(converted.value);
  return succeed({
    kind: 'reading',
    timeS,
    channel,
    value: value.value,
    unit: value.unit,
    quality: quality?.success === true ? quality.data : value.quality,
  });
}
