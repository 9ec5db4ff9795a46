import { usualSpelling } from './usual-spelling.ts';

/** What a time cell holds. */
export type TimeCell =
  /** A plain number, in the unit of its column. */
  | { readonly kind: 'number'; readonly value: number }
  /** Hours, minutes and seconds, of the day or since the start [s]. */
  | { readonly kind: 'clock'; readonly valueS: number }
  /** Hours, minutes or seconds with their units in the cell [s]: never of the day. */
  | { readonly kind: 'duration'; readonly valueS: number }
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
const clock = String.raw`(\d{1,3}):(\d{2})(?::(\d{2}(?:[.,]\d+|:\d{3})?))?(?:\s*([ap])\.?m\.?)?`;
const clockPattern = new RegExp(`^${clock}$`, 'i');
const twoPartPattern = /^(\d{1,3}):([0-5]\d)([.,]\d+)?$/;
const zone = String.raw`\s*(Z|[+-]\d{2}:?\d{2})?`;
const isoPattern = new RegExp(
  String.raw`^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:T|\s+)${clock}${zone}$`,
  'i',
);
const dayPattern = new RegExp(
  String.raw`^(\d{1,2})[-/.](\d{1,2})[-/.](\d{2}|\d{4}),?\s+${clock}${zone}$`,
  'i',
);
const month = String.raw`(\p{L}{3,10})\.?`;
const namedDayPattern = new RegExp(
  String.raw`^(?:(\d{1,2})\.?[-/\s]\s*${month}|${month}\s+(\d{1,2}))[-/,\s]\s*(\d{4}),?\s+${clock}${zone}$`,
  'iu',
);
/** Months by their first letters in English, German, French and Spanish. */
const monthNames = [
  /^jan|^ene/,
  /^f[eé][bv]/,
  /^mar|^mär|^mae/,
  /^apr|^avr|^abr/,
  /^ma[iy]/,
  /^jun|^juin/,
  /^jul|^juil/,
  /^aug|^ao[uû]|^ago/,
  /^sep/,
  /^o[ck]t/,
  /^nov/,
  /^de[cz]|^dic|^déc/,
] as const;
/** As a table of a statistics program writes a time since the start. */
const daysPattern = new RegExp(String.raw`^(\d{1,3})\s*(?:days?|d|tage?),?\s+${clock}$`, 'i');
const amount = String.raw`(\d+(?:[.,]\d+)?)\s*`;
const durationPattern = new RegExp(
  String.raw`^(?:${amount}(?:h|hrs?|hours?|std)\.?)?\s*(?:${amount}(?:m|min|mins|minutes?|minuten|['′])\.?)?\s*(?:${amount}(?:s|secs?|seconds?|sek|sekunden|["″]|''))?\.?$`,
  'i',
);
/** Milliseconds with their unit are no part of a longer duration. */
const millisecondsPattern = new RegExp(`^${amount}ms$`, 'i');

/**
 * Reads a time as loggers write it: seconds, `h:mm:ss`, `h:mm` or `mm:ss`, with units, ISO 8601, dates with a month by name, or day and month first dates
 * (day first unless that is no date, or month first by `order`). Undefined when it is none of these.
 *
 * @param order which of two numbers under 13 is the day
 *
 * @example
 * readTime('12,5') // => { "kind": "number", "value": 12.5 }
 * readTime('01:02:03') // => { "kind": "clock", "valueS": 3723 }
 * readTime('02:03') // => { "kind": "two-part-clock", "first": 2, "second": 3 }
 * readTime('02:03.5') // => { "kind": "clock", "valueS": 123.5 }
 * readTime('2h03') // => { "kind": "clock", "valueS": 7380 }
 * readTime('5 min 10 s') // => { "kind": "duration", "valueS": 310 }
 * readTime('1970-01-02 00:00:01') // => { "kind": "stamp", "valueS": 86401, "isLocal": true }
 * readTime('02.01.1970 00:00:01') // => { "kind": "stamp", "valueS": 86401, "isLocal": true }
 * readTime('2-Jan-1970 00:00:01') // => { "kind": "stamp", "valueS": 86401, "isLocal": true }
 * readTime('01/02/1970 00:00:01', 'month-day') // => { "kind": "stamp", "valueS": 86401, "isLocal": true }
 */
export function readTime(text: string, order: DateOrder = 'day-month'): TimeCell | undefined {
  const trimmed = text.trim();
  const read = readUsual(trimmed, order);
  if (read !== undefined) return read;
  const respelled = usualSpelling(trimmed);
  return respelled === trimmed ? undefined : readUsual(respelled, order);
}

function readUsual(trimmed: string, order: DateOrder): TimeCell | undefined {
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
  if (valueS === undefined) return durationOf(trimmed);
  return {
    kind: 'stamp',
    valueS,
    isLocal: !/(?:Z|:\d{2}(?:[.,]\d+)?\s*[+-]\d{2}:?\d{2})$/i.test(trimmed),
  };
}

/** A time as a number that orders it among others of its column, and after which such a number begins anew where it is a time of the day. */
export function momentOf(text: string): { value: number; begunAnewAt: number | null } | undefined {
  const time = readTime(text);
  switch (time?.kind) {
    case undefined:
      return undefined;
    case 'number':
      return { value: time.value, begunAnewAt: null };
    case 'two-part-clock':
      return { value: 60 * time.first + time.second, begunAnewAt: 24 * 60 };
    case 'clock':
      return { value: time.valueS, begunAnewAt: 86_400 };
    case 'duration':
    case 'stamp':
      return { value: time.valueS, begunAnewAt: null };
  }
}

function durationOf(text: string): TimeCell | undefined {
  const days = daysPattern.exec(text);
  if (days !== null) {
    const withinS = clockS(days, 2);
    if (withinS === undefined) return undefined;
    return { kind: 'duration', valueS: 86_400 * Number(days[1]) + withinS };
  }
  const number = (digits: string | undefined) => Number((digits ?? '0').replace(',', '.'));
  const milliseconds = millisecondsPattern.exec(text);
  if (milliseconds) return { kind: 'duration', valueS: number(milliseconds[1]) / 1000 };
  const parts = text === '' ? null : durationPattern.exec(text);
  if (parts === null) return undefined;
  const [, hours, minutes, seconds] = parts;
  return {
    kind: 'duration',
    valueS: 3600 * number(hours) + 60 * number(minutes) + number(seconds),
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
  if (dated === null) return namedStampS(text);
  const [, first, second, writtenYear] = dated;
  const year = writtenYear?.length === 2 ? 2000 + Number(writtenYear) : Number(writtenYear);
  const isDayFirst = order === 'day-month' ? Number(second) <= 12 : Number(first) > 12;
  const [day, month] = isDayFirst ? [first, second] : [second, first];
  const days = dayS(year, Number(month), Number(day));
  const time = clockS(dated, 4);
  return days === undefined || time === undefined ? undefined : days + time - zoneS(dated[8]);
}

function namedStampS(text: string): number | undefined {
  const dated = namedDayPattern.exec(text);
  if (dated === null) return undefined;
  const [, dayBefore, monthAfter, monthBefore, dayAfter, year] = dated;
  const name = (monthAfter ?? monthBefore ?? '').toLowerCase();
  const month = 1 + monthNames.findIndex((pattern) => pattern.test(name));
  const days = dayS(Number(year), month, Number(dayBefore ?? dayAfter));
  const time = clockS(dated, 6);
  return days === undefined || time === undefined ? undefined : days + time - zoneS(dated[10]);
}

function dayS(year: number, month: number, day: number): number | undefined {
  if (month < 1 || month > 12 || day < 1 || day > 31) return undefined;
  return Date.UTC(year, month - 1, day) / 1000;
}

function clockS(match: RegExpExecArray, at: number): number | undefined {
  const [hours, minutes, seconds] = [match[at], match[at + 1], match[at + 2]];
  const half = match[at + 3]?.toLowerCase();
  const second = Number((seconds ?? '0').replace(/[,:]/, '.'));
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
