/**
 * Moments as a spreadsheet writes them in a table whose cells were not formatted as times: days since the end of 1899, the day's hours as
 * their fraction.
 *
 * Source: ISO/IEC 29500-1:2016, 18.17.4.1 (date systems: the serial of 1900-01-01 is 1, so 1970-01-01 is 25 569); from memory.
 */
export const daySerials = {
  perS: 86_400,
  /** Of the years 1954 to 2119. */
  isSerial: (value: number) => value >= 20_000 && value < 80_000,
  /** Seconds since 1970 on the calendar of whoever wrote it, to the millisecond: its fraction holds no more. */
  calendarS: (value: number) => Math.round((value - 25_569) * 86_400_000) / 1000,
  /** Whether numbers without a unit are such days: all in those years, and no row half an hour or more from the next. */
  isLikely: (values: readonly number[]) =>
    values.length >= 2 &&
    values.every(daySerials.isSerial) &&
    values.some((value) => !Number.isInteger(value)) &&
    values.every((value, at) => at === 0 || Math.abs(value - (values[at - 1] ?? value)) < 1 / 48),
} as const;
