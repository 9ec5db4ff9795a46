import { fail, type Result, succeed } from '../result/index.ts';
import { readTime } from './read-time.ts';

/** Turns the cells of a time column into seconds since the start, one after the other. */
export interface TimeReader {
  read(text: string): Result<number, string>;
}

const dayS = 86_400;
/** A number of seconds this large is a date: 2001 and later, in seconds or milliseconds since 1970. */
const epochS = 1e9;
const epochMs = 1e12;

/** `perS`: seconds in the column's unit. Elapsed times are kept; stamps count from the first one. */
export function createTimeReader(perS: number): TimeReader {
  let originS: number | null = null;
  let daysPassedS = 0;
  let lastS = Number.NEGATIVE_INFINITY;

  function secondsOf(text: string): number | undefined {
    const cell = readTime(text);
    if (cell === undefined) return undefined;
    switch (cell.kind) {
      case 'number': {
        if (cell.value >= epochMs) return since(cell.value / 1000);
        if (cell.value >= epochS && perS === 1) return since(cell.value);
        return cell.value * perS;
      }
      case 'stamp':
        return since(cell.valueS);
      case 'clock': {
        // A run that starts in the first minute counts from zero; any other shows the time of day.
        originS ??= cell.valueS < 60 ? 0 : cell.valueS;
        const sinceStartS = cell.valueS + daysPassedS - originS;
        if (sinceStartS >= lastS - dayS / 2) return sinceStartS;
        daysPassedS += dayS;
        return sinceStartS + dayS;
      }
    }
  }

  function since(stampS: number): number {
    originS ??= stampS;
    return Math.round((stampS - originS) * 1e6) / 1e6;
  }

  return {
    read(text) {
      const timeS = secondsOf(text);
      if (timeS === undefined) return fail(`"${text.trim().slice(0, 60)}" is no time`);
      if (!(timeS >= 0)) return fail(`the time ${text.trim()} lies before the start`);
      if (timeS < lastS) return fail(`the time goes back to ${text.trim()}`);
      lastS = timeS;
      return succeed(timeS);
    },
  };
}
