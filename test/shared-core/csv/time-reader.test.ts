import { describe, expect, test } from 'vitest';
import { readReadingsCsv } from '#shared-core';
import { daySerials } from '../../../shared-core/csv/day-serial.ts';
import { isSinceEpoch, sinceEpochS } from '../../../shared-core/csv/since-epoch.ts';
import { isNewestFirst } from '../../../shared-core/csv/time-column.ts';
import { createTimeReader } from '../../../shared-core/csv/time-reader.ts';
import { judgeTwoPartClock } from '../../../shared-core/csv/two-part-clock.ts';

const usual = { perS: 1, twoParts: 'h:mm', dateOrder: 'day-month', decimal: null } as const;

/** The seconds that the cells of a column come to, or what is said of one that comes to none. */
function read(
  cells: readonly string[],
  writing: Partial<Parameters<typeof createTimeReader>[0]> = {},
) {
  const reader = createTimeReader({ ...usual, ...writing });
  const times = cells.map((cell) => {
    const time = reader.read(cell);
    return time.ok ? time.value : time.error;
  });
  return { times, restarts: reader.restarts(), began: reader.began() };
}

describe('a column of numbers', () => {
  test('counts in its unit, from where it begins', () => {
    expect(read(['0', '0,5', '1']).times).toEqual([0, 0.5, 1]);
    expect(read(['2', '2.5'], { perS: 60 }).times).toEqual([120, 150]);
    expect(read(['1.200,5'], { decimal: ',' }).times).toEqual([1200.5]);
    expect(read(['0']).began).toBeNull();
  });

  test('takes no time before the start, none that goes back, none that is more than a year', () => {
    expect(read(['-1', '5', '4', '5', '6', '31622401']).times).toEqual([
      'the time -1 lies before the start',
      5,
      'the time goes back to 4',
      5,
      6,
      '"31622401" is no time',
    ]);
    expect(read(['x']).times).toEqual(['"x" is no time']);
    expect(read(['31622400']).times).toEqual([31_622_400]);
  });

  test('is one of moments where it counts from 1970, in seconds or milliseconds, or in a spreadsheet’s days', () => {
    expect(read(['1741947300', '1741947310'])).toEqual({
      times: [0, 10],
      restarts: 0,
      began: { calendarS: 1_741_947_300, isLocal: false },
    });
    expect(read(['1741947300000', '1741947300250'], { perS: 0.001 }).times).toEqual([0, 0.25]);
    expect(read(['1741947300', '1741947310'], { perS: 60 }).times[0]).toBe(
      '"1741947300" is no time',
    );
    const days = read(['46000.5', '46000.500694444444'], { perS: 86_400 });
    expect(days.times[0]).toBe(0);
    expect(days.times[1]).toBeCloseTo(60, 2);
    expect(days.began).toEqual({ calendarS: (46_000.5 - 25_569) * 86_400, isLocal: true });
  });
});

describe('a column of clock times', () => {
  test('counts from the first, over midnight, and from zero where a run begins with its clock', () => {
    expect(read(['23:59:50', '00:00:05', '00:01:00']).times).toEqual([0, 15, 70]);
    expect(read(['0:00:10', '0:00:20']).times).toEqual([10, 20]);
    expect(read(['0:01:00', '0:01:20']).times).toEqual([0, 20]);
    expect(read(['14:05:10', '14:05:00']).times).toEqual([
      0,
      'the time 14:05:00 lies before the start',
    ]);
  });

  test('of two parts are what they are said to be', () => {
    expect(read(['00:30', '01:00'], { twoParts: 'mm:ss' }).times).toEqual([30, 60]);
    expect(read(['10:30', '11:00']).times).toEqual([0, 1800]);
  });

  test('takes no other kind of time', () => {
    expect(read(['10:30:00', '5', '2026-03-14 10:31', '5 s']).times).toEqual([
      0,
      'the time "5" is a number of seconds, but the times above it are not',
      'the time "2026-03-14 10:31" is a date, but the times above it are not',
      'the time "5 s" is a number of seconds, but the times above it are not',
    ]);
    expect(read(['5', '10:30:00']).times[1]).toBe(
      'the time "10:30:00" is a clock time, but the times above it are not',
    );
  });
});

describe('a column of dates', () => {
  test('counts from the first, and knows when that was, in whose zone', () => {
    const local = read(['14.03.2026 10:15:00', '14.03.2026 10:15:10.5']);
    expect(local).toEqual({
      times: [0, 10.5],
      restarts: 0,
      began: { calendarS: Date.UTC(2026, 2, 14, 10, 15) / 1000, isLocal: true },
    });
    expect(read(['2026-03-14T10:15:00Z']).began?.isLocal).toBe(false);
    expect(read(['03/04/2026 10:15'], { dateOrder: 'month-day' }).began?.calendarS).toBe(
      Date.UTC(2026, 2, 4, 10, 15) / 1000,
    );
    expect(read(['14.03.2026 10:15', '14.03.2027 10:15', '16.03.2027 10:15']).times[2]).toBe(
      'the time 16.03.2027 10:15 lies more than a year after the start',
    );
  });
});

describe('a logger that was started again', () => {
  test('goes on from where it was, once three rows count on from an earlier time', () => {
    const { times, restarts } = read(['0', '10', '50', '0', '10', '20', '30']);
    expect(times).toEqual([
      0,
      10,
      50,
      'the time goes back to 0',
      'the time goes back to 10',
      70,
      80,
    ]);
    expect(restarts).toBe(1);
  });

  test('is not one whose single times slip, or stand still behind', () => {
    expect(read(['0', '10', '20', '5', '30', '5', '40'])).toMatchObject({ restarts: 0 });
    expect(read(['0', '10', '20', '5', '5', '5', '5', '5'])).toMatchObject({ restarts: 0 });
    expect(read(['0', '50', '40', '30', '20', '10'])).toMatchObject({ restarts: 0 });
  });

  test('is believed no more than twenty times', () => {
    const sawtooth = Array.from({ length: 400 }, (_, index) => String(index % 5));
    expect(read(sawtooth).restarts).toBe(20);
  });
});

describe('numbers that are moments', () => {
  test('are seconds or milliseconds since 1970, of 2001 to 2286', () => {
    expect(
      [1e9 - 1, 1e9, 1e10 - 1, 1e10, 1e12 - 1, 1e12, 1e13 - 1, 1e13].map(isSinceEpoch),
    ).toEqual([false, true, true, false, false, true, true, false]);
    expect([1.5e9, 1.5e12].map(sinceEpochS)).toEqual([1.5e9, 1.5e9]);
  });

  test('are days of a spreadsheet where all lie in its years, with a fraction, and close together', () => {
    expect(daySerials.isLikely([46_000.5, 46_000.51, 46_000.52])).toBe(true);
    expect(daySerials.isLikely([46_000.5])).toBe(false);
    expect(daySerials.isLikely([46_000, 46_000])).toBe(false);
    expect(daySerials.isLikely([46_000.5, 46_000.53])).toBe(false);
    expect(daySerials.isLikely([46_000.5, 19_000.5])).toBe(false);
    expect([19_999, 20_000, 79_999, 80_000].map(daySerials.isSerial)).toEqual([
      false,
      true,
      true,
      false,
    ]);
    // 1970-01-01 is day 25 569.
    expect(daySerials.calendarS(25_570.5)).toBe(129_600);
  });

  test('are times of the day as its fraction, which else would be thousands of readings a second', () => {
    const rows = Array.from({ length: 12 }, (_, row) => 0.47228 + row / 86_400);
    const csv = `Uhrzeit;T\n${rows.map((day) => `${day.toFixed(9).replace('.', ',')};20`).join('\n')}\n`;
    const read = readReadingsCsv(csv);
    expect(read.ok && read.value.inputs.map(({ timeS }) => Math.round(timeS))).toEqual([
      0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11,
    ]);
    expect(daySerials.areFractions(rows)).toBe(true);
    expect(daySerials.areFractions(rows.slice(0, 9))).toBe(false);
    expect(daySerials.areFractions(rows.map((day) => day + 1))).toBe(false);
    expect(daySerials.areFractions(rows.map((_, row) => row / 100))).toBe(false);
    expect(daySerials.areFractions(rows.map(() => 0.5))).toBe(false);
    // Half a day, written by hand, is one since the beginning.
    expect(daySerials.beginsWithinDay('0.5', 0.5)).toBe(false);
    expect(daySerials.beginsWithinDay('0.000011574', 0.000011574)).toBe(false);
  });
});

describe('a table whose newest row is on top', () => {
  test('has four rows at least, of which none comes after the one above', () => {
    expect(isNewestFirst(['9', '7', '7', '1'])).toBe(true);
    expect(isNewestFirst(['9', '7', '1'])).toBe(false);
    expect(isNewestFirst(['9', '7', '8', '1'])).toBe(false);
    expect(isNewestFirst(['7', '7', '7', '7'])).toBe(false);
    expect(isNewestFirst(['1', '2', '3', '4'])).toBe(false);
    expect(isNewestFirst(['0:03:00', '0:02:00', 'x', '0:01:00', '0:00:30'])).toBe(true);
    expect(isNewestFirst(['12:30', '12:29', '11:59', '11:58'])).toBe(true);
    expect(isNewestFirst(['11:30', '12:29', '11:59', '11:58'])).toBe(false);
  });
});

describe('clock times of two parts', () => {
  const judged = (...cells: readonly string[]) => {
    const found = judgeTwoPartClock(cells);
    return found && [found.clock, found.remark === null ? 'sure' : 'doubted'];
  };

  test('are minutes and seconds where no day has such hours, or three parts follow', () => {
    expect(judged('00:10', '24:00')).toEqual(['mm:ss', 'sure']);
    expect(judged('59:50', '1:00:00')).toEqual(['mm:ss', 'sure']);
    expect(judged('08:50', '1:00:00')).toEqual(['mm:ss', 'sure']);
  });

  test('are hours and minutes from the morning on', () => {
    expect(judged('06:00', '06:01')).toEqual(['h:mm', 'sure']);
    expect(judged('05:59', '06:00')).toEqual(['h:mm', 'doubted']);
  });

  test('are minutes and seconds from zero on at even distances, with the doubt said', () => {
    expect(judged('00:00', '00:10', '00:20', '00:30', '00:50', '01:00')).toEqual([
      'mm:ss',
      'doubted',
    ]);
    expect(judged('00:00', '00:10', '00:25', '00:30')).toEqual(['h:mm', 'doubted']);
    expect(judged('00:00', '00:00', '00:00')).toEqual(['h:mm', 'doubted']);
    expect(judged('00:00')).toEqual(['h:mm', 'doubted']);
    expect(judgeTwoPartClock(['00:00', '00:10'])?.remark).toBe(
      'The times were read as minutes and seconds. If they are hours and minutes, write "(h:mm)" behind the title of their column.',
    );
    expect(judgeTwoPartClock(['02:00', '02:10'])?.remark).toBe(
      'The times were read as hours and minutes. If they are minutes and seconds, write "(mm:ss)" behind the title of their column.',
    );
  });

  test('are none where there are none', () => {
    expect(judged()).toBeNull();
    expect(judged('12', '1:02:03', 'x')).toBeNull();
  });
});
