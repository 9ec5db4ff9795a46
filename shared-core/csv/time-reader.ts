import { fail, type Result, succeed } from '../result/index.ts';
import { asGiven, worded } from '../wording/index.ts';
import type { TwoPartClock } from './column-title.ts';
import { type DateOrder, readTime } from './read-time.ts';

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
  /** When the file's own calendar began to count; null where it has none. */
  began(): FileBeginning | null;
}

const dayS = 86_400;
/** Numbers in these ranges are dates: 2001 to 2286, in seconds or milliseconds since 1970. */
const epochS = [1e9, 1e10] as const;
const epochMs = [1e12, 1e13] as const;
/** No run lasts longer; what seems to is no time, and must not move the others. */
const longestS = 366 * dayS;

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

/**
 * `perS`: seconds in the column's unit. Elapsed times are kept; dates and clock times count from the first one.
 * `twoParts`: what clock times of two parts are. `order`: of day and month in dates.
 */
export function createTimeReader(
  perS: number,
  twoParts: TwoPartClock,
  order: DateOrder,
): TimeReader {
  let counting: Counting | null = null;
  let originS: number | null = null;
  let isLocal = false;
  let daysPassedS = 0;
  let lastS = Number.NEGATIVE_INFINITY;

  function count(text: string): Counted | undefined {
    const cell = readTime(text, order);
    switch (cell?.kind) {
      case undefined:
        return undefined;
      case 'number': {
        if (isWithin(cell.value, epochMs)) return { counting: 'date', valueS: cell.value / 1000 };
        if (isWithin(cell.value, epochS) && perS === 1) {
          return { counting: 'date', valueS: cell.value };
        }
        const valueS = cell.value * perS;
        return valueS > longestS ? undefined : { counting: 'elapsed', valueS };
      }
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
        if (timeS >= lastS - dayS / 2) return timeS;
        daysPassedS += dayS;
        return timeS + dayS;
      }
    }
  }

  return {
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
      const timeS = sinceStartS(counted);
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
      isLocal ||= counted.isLocal === true;
      return succeed(timeS);
    },
  };
}

const asShown = (text: string) => asGiven(text.trim().slice(0, 60));

function isWithin(value: number, [from, to]: readonly [number, number]): boolean {
  return value >= from && value < to;
}
