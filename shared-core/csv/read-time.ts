/** What a time cell holds. */
export type TimeCell =
  /** A plain number, in the unit of its column. */
  | { readonly kind: 'number'; readonly value: number }
  /** Hours, minutes and seconds, of the day or since the start [s]. */
  | { readonly kind: 'clock'; readonly valueS: number }
  /** Two numbers under 60, the first perhaps more: `h:mm` or `mm:ss`, which the cell alone can't tell. */
  | { readonly kind: 'two-part-clock'; readonly first: number; readonly second: number }
  /** Date and time as seconds on one calendar [s]. */
  | {
      readonly kind: 'stamp';
      readonly valueS: number;
      /** The calendar is that of the logger's place: no zone was written. */
      readonly isLocal: boolean;
    };

/** Whether a date such as 03/04/2026 begins with its day or its month. */
export type DateOrder = 'day-month' | 'month-day';

const numberPattern = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d{1,3})?$/i;
const clock = String.raw`(\d{1,3}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?(?:\s*([ap])\.?m\.?)?`;
const clockPattern = new RegExp(`^${clock}$`, 'i');
const twoPartPattern = /^(\d{1,3}):([0-5]\d)([.,]\d+)?$/;
const isoPattern = new RegExp(
  String.raw`^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:T|\s+)${clock}\s*(Z|[+-]\d{2}:?\d{2})?$`,
  'i',
);
const dayPattern = new RegExp(
  String.raw`^(\d{1,2})[-/.](\d{1,2})[-/.](\d{2}|\d{4}),?\s+${clock}$`,
  'i',
);

/**
 * Reads a time as loggers write it: seconds, `h:mm:ss`, `h:mm` or `mm:ss`, ISO 8601, or day and month first dates
 * (day first unless that is no date, or month first by `order`). Undefined when it is none of these.
 *
 * @param order which of two numbers under 13 is the day
 *
 * @example
 * readTime('12,5') // => { "kind": "number", "value": 12.5 }
 * readTime('01:02:03') // => { "kind": "clock", "valueS": 3723 }
 * readTime('02:03') // => { "kind": "two-part-clock", "first": 2, "second": 3 }
 * readTime('02:03.5') // => { "kind": "clock", "valueS": 123.5 }
 * readTime('1970-01-02 00:00:01') // => { "kind": "stamp", "valueS": 86401, "isLocal": true }
 * readTime('02.01.1970 00:00:01') // => { "kind": "stamp", "valueS": 86401, "isLocal": true }
 * readTime('01/02/1970 00:00:01', 'month-day') // => { "kind": "stamp", "valueS": 86401, "isLocal": true }
 */
export function readTime(text: string, order: DateOrder = 'day-month'): TimeCell | undefined {
  const trimmed = text.trim();
  if (numberPattern.test(trimmed)) {
    return { kind: 'number', value: Number(trimmed.replace(',', '.')) };
  }
  const twoPart = twoPartPattern.exec(trimmed);
  if (twoPart !== null) {
    const [first, second] = [Number(twoPart[1]), Number(twoPart[2])];
    if (twoPart[3] === undefined) return { kind: 'two-part-clock', first, second };
    // Nobody writes fractions of minutes after a colon: these are seconds.
    return {
      kind: 'clock',
      valueS: 60 * first + second + Number(`0${twoPart[3].replace(',', '.')}`),
    };
  }
  const clockOnly = clockPattern.exec(trimmed);
  if (clockOnly !== null) {
    const valueS = clockS(clockOnly, 1);
    return valueS === undefined ? undefined : { kind: 'clock', valueS };
  }
  const valueS = stampS(trimmed, order);
  if (valueS === undefined) return undefined;
  return {
    kind: 'stamp',
    valueS,
    isLocal: !/(?:Z|:\d{2}(?:[.,]\d+)?\s*[+-]\d{2}:?\d{2})$/i.test(trimmed),
  };
}

function stampS(text: string, order: DateOrder): number | undefined {
  const iso = isoPattern.exec(text);
  if (iso !== null) {
    const [, year, month, day] = iso;
    const days = dayS(Number(year), Number(month), Number(day));
    const time = clockS(iso, 4);
    return days === undefined || time === undefined ? undefined : days + time - zoneS(iso[8]);
  }
  const dated = dayPattern.exec(text);
  if (dated === null) return undefined;
  const [, first, second, writtenYear] = dated;
  const year = writtenYear?.length === 2 ? 2000 + Number(writtenYear) : Number(writtenYear);
  const isDayFirst = order === 'day-month' ? Number(second) <= 12 : Number(first) > 12;
  const [day, month] = isDayFirst ? [first, second] : [second, first];
  const days = dayS(year, Number(month), Number(day));
  const time = clockS(dated, 4);
  return days === undefined || time === undefined ? undefined : days + time;
}

function dayS(year: number, month: number, day: number): number | undefined {
  if (month < 1 || month > 12 || day < 1 || day > 31) return undefined;
  return Date.UTC(year, month - 1, day) / 1000;
}

function clockS(match: RegExpExecArray, at: number): number | undefined {
  const [hours, minutes, seconds] = [match[at], match[at + 1], match[at + 2]];
  const half = match[at + 3]?.toLowerCase();
  const second = Number((seconds ?? '0').replace(',', '.'));
  if (Number(minutes) > 59 || second >= 61) return undefined;
  let hour = Number(hours);
  if (half !== undefined) hour = (hour % 12) + (half === 'p' ? 12 : 0);
  return hour * 3600 + Number(minutes) * 60 + second;
}

function zoneS(zone: string | undefined): number {
  if (zone === undefined || /z/i.test(zone)) return 0;
  const sign = zone.startsWith('-') ? -1 : 1;
  const digits = zone.replace(/\D/g, '');
  return sign * (Number(digits.slice(0, 2)) * 3600 + Number(digits.slice(2)) * 60);
}
