import { fail, type Result, succeed } from '../result/index.ts';
import { asGiven, worded } from '../wording/index.ts';
import type { TwoPartClock } from './column-title.ts';
import { daySerials } from './day-serial.ts';
import { withoutGroups } from './digit-groups.ts';
import { type DateOrder, readTime } from './read-time.ts';
import { isSinceEpoch, sinceEpochS } from './since-epoch.ts';

/** The moment that a file's own dates count from. */
export interface FileBeginning {
  /** Seconds since 1970 on the calendar written. */
  readonly calendarS: number;
  /** No zone was written: it is the calendar of the logger's place. */
  readonly isLocal: boolean;
}

/** Turns the cells of a time column into seconds since the start, one after the other. */
export interface TimeReader {
  read(text: string): Result<number, string>;
  /** How often the times began anew, so that what followed was put behind what stood above. */
  restarts(): number;
  /** When the file's own calendar began to count; null where it has none. */
  began(): FileBeginning | null;
}

const dayS = 86_400;
/** No run lasts longer; what seems to is no time, and must not move the others. */
const longestS = 366 * dayS;

/** Rows that count on from an earlier time before they are believed to. */
const rowsOfRestart = 3;
/** A table that seems to begin anew more often has its rows in another order. */
const mostRestarts = 20;

/** A column counts in one of these ways; a cell that counts in another is no time of it. */
type Counting = 'elapsed' | 'clock' | 'date';
const countingWords: Readonly<Record<Counting, string>> = {
  elapsed: worded('a number of seconds'),
  clock: worded('a clock time'),
  date: worded('a date'),
};

interface Counted {
  readonly counting: Counting;
  readonly valueS: number;
  readonly isLocal?: boolean;
}

/** How the cells of a time column are written. */
interface TimeWriting {
  /** Seconds in the column's unit. */
  readonly perS: number;
  /** What clock times of two parts are. */
  readonly twoParts: TwoPartClock;
  /** Of day and month in dates. */
  readonly dateOrder: DateOrder;
  /** Beside a decimal comma points group digits. */
  readonly decimal: '.' | ',' | null;
}

/** Elapsed times are kept; dates and clock times count from the first one. */
export function createTimeReader(writing: TimeWriting): TimeReader {
  const { perS, twoParts, dateOrder, decimal } = writing;
  let counting: Counting | null = null;
  let originS: number | null = null;
  let isLocal = false;
  let daysPassedS = 0;
  let lastS = Number.NEGATIVE_INFINITY;
  let shiftS = 0;
  let restarts = 0;
  /** Times in a row that lie before the last one that counted, and before none of each other [s]. */
  let behind: number[] = [];

  /**
   * How much later a time is than it says [s], where a logger was started again or its clock was put back and it goes on counting from
   * there; 0 for a single time that lies behind, which is a slip.
   */
  function restartedByS(timeS: number): number {
    const before = behind.at(-1);
    behind = before === undefined || timeS < before ? [timeS] : [...behind, timeS];
    const [first = timeS] = behind;
    if (behind.length < rowsOfRestart || timeS === first || restarts === mostRestarts) return 0;
    restarts += 1;
    return lastS - first;
  }

  function count(text: string): Counted | undefined {
    const cell = readTime(decimal === ',' ? withoutGroups(text) : text, dateOrder);
    switch (cell?.kind) {
      case undefined:
        return undefined;
      case 'number': {
        if (isSinceEpoch(cell.value) && (perS === 1 || sinceEpochS(cell.value) !== cell.value)) {
          return { counting: 'date', valueS: sinceEpochS(cell.value) };
        }
        if (perS === daySerials.perS && daySerials.isSerial(cell.value)) {
          return { counting: 'date', valueS: daySerials.calendarS(cell.value), isLocal: true };
        }
        const isOfTheDay =
          counting === 'clock' ||
          (counting === null && daySerials.beginsWithinDay(text, cell.value));
        if (perS === daySerials.perS && isOfTheDay && cell.value < 1) {
          return { counting: 'clock', valueS: Math.round(cell.value * 86_400_000) / 1000 };
        }
        const valueS = cell.value * perS;
        return valueS > longestS ? undefined : { counting: 'elapsed', valueS };
      }
      case 'duration':
        return { counting: 'elapsed', valueS: cell.valueS };
      case 'stamp':
        return { counting: 'date', valueS: cell.valueS, isLocal: cell.isLocal };
      case 'clock':
        return { counting: 'clock', valueS: cell.valueS };
      case 'two-part-clock': {
        const parts = cell.first * 60 + cell.second;
        return { counting: 'clock', valueS: twoParts === 'mm:ss' ? parts : parts * 60 };
      }
    }
  }

  function sinceStartS(counted: Counted): number {
    switch (counted.counting) {
      case 'elapsed':
        return counted.valueS;
      case 'date':
        originS ??= counted.valueS;
        return Math.round((counted.valueS - originS) * 1e6) / 1e6;
      case 'clock': {
        // A run that starts in the first minute counts from zero; any other shows the time of day.
        originS ??= counted.valueS < 60 ? 0 : counted.valueS;
        const timeS = counted.valueS + daysPassedS - originS;
        if (timeS >= lastS - shiftS - dayS / 2) return timeS;
        daysPassedS += dayS;
        return timeS + dayS;
      }
    }
  }

  return {
    restarts: () => restarts,
    began: () => (counting === 'date' && originS !== null ? { calendarS: originS, isLocal } : null),
    read(text) {
      const counted = count(text);
      if (counted === undefined)
        return fail(worded('"{shown}" is no time', { shown: asShown(text) }));
      counting ??= counted.counting;
      if (counted.counting !== counting) {
        return fail(
          worded('the time "{shown}" is {kind}, but the times above it are not', {
            shown: asShown(text),
            kind: countingWords[counted.counting],
          }),
        );
      }
      const saidS = sinceStartS(counted) + shiftS;
      const addedS = saidS < lastS ? restartedByS(saidS) : 0;
      shiftS += addedS;
      const timeS = saidS + addedS;
      if (!(timeS >= 0))
        return fail(worded('the time {shown} lies before the start', { shown: asShown(text) }));
      if (timeS < lastS)
        return fail(worded('the time goes back to {shown}', { shown: asShown(text) }));
      if (timeS > longestS)
        return fail(
          worded('the time {shown} lies more than a year after the start', {
            shown: asShown(text),
          }),
        );
      lastS = timeS;
      if (behind.length > 0) behind = [];
      isLocal ||= counted.isLocal === true;
      return succeed(timeS);
    },
  };
}

const asShown = (text: string) => asGiven(text.trim().slice(0, 60));
