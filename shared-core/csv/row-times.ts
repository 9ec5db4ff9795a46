import { type Result, succeed } from '../result/index.ts';
import type { TwoPartClock } from './column-title.ts';
import type { CsvLayout } from './csv-layout.ts';
import { timeText } from './finer-time.ts';
import { createMinuteSpreader, withinMinutes } from './full-minutes.ts';
import type { CsvRow } from './parse-csv.ts';
import { createTimeReader, type FileBeginning, type TimeReader } from './time-reader.ts';

/** Gives the rows of a table their times, one after the other. */
export interface RowTimes {
  read(cells: readonly string[]): Result<number, string>;
  restarts(): number;
  began(): FileBeginning | null;
  readonly remarks: readonly string[];
}

/**
 * The times of a table's rows as they are written [s since the first]; spread over their minute where they are written to the minute;
 * none in a table by volume.
 *
 * @param rows goes through the table from its oldest row on
 */
export function rowTimes(
  rows: () => Iterable<CsvRow>,
  layout: CsvLayout,
  twoParts: TwoPartClock,
): RowTimes {
  const times = createTimeReader({ ...layout, twoParts });
  const { timeColumn } = layout;
  const { restarts, began } = times;
  if (timeColumn === null) return { restarts, began, remarks: [], read: () => succeed(0) };
  const place = { ...layout, timeColumn };
  const headColumn = layout.channels.find(({ channel }) => channel === 'head')?.column ?? -1;
  const isReading = (cells: readonly string[]) => (cells[headColumn] ?? '').trim() !== '';
  function* timesOfReadings(reader: TimeReader): Generator<number> {
    for (const { line, cells } of rows()) {
      if (line < layout.firstDataLine || !isReading(cells)) continue;
      const time = reader.read(timeText(cells, place));
      if (time.ok) yield time.value;
    }
  }
  const within = withinMinutes(timesOfReadings(createTimeReader({ ...layout, twoParts })));
  const spreader = within === null ? null : createMinuteSpreader(within);
  return {
    restarts,
    began,
    remarks: within === null ? [] : [within.remark],
    read(cells) {
      const time = times.read(timeText(cells, place));
      return time.ok && spreader !== null
        ? succeed(spreader.spread(time.value, isReading(cells)))
        : time;
    },
  };
}
