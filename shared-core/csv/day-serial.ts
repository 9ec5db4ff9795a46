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
  /** Whether numbers without a unit are times of the day as its fraction: in seconds there would be thousands of readings in each. */
  areFractions: (values: readonly number[]) => {
    const stepS = Math.abs((values.at(-1) ?? 0) - (values[0] ?? 0)) / (values.length - 1);
    return (
      values.length >= fewestFractions &&
      values.every((value) => value >= 0 && value < 1) &&
      stepS > 0 &&
      stepS < 1e-3
    );
  },
  /** Whether the first of such numbers is a time of the day, not one since a beginning: after five in the morning, to the second. */
  beginsWithinDay: (text: string, value: number) =>
    value > 0.2 && value < 1 && /[.,]\d{6,}\s*$/.test(text),
} as const;

const fewestFractions = 10;
