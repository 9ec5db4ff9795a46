import { describe, expect, test } from 'vitest';
import { readTime } from '../../../shared-core/csv/read-time.ts';

const number = (value: number) => ({ kind: 'number', value });
const clock = (valueS: number) => ({ kind: 'clock', valueS });
const duration = (valueS: number) => ({ kind: 'duration', valueS });
const local = (iso: string) => ({ kind: 'stamp', valueS: Date.parse(iso) / 1000, isLocal: true });
const zoned = (iso: string) => ({ kind: 'stamp', valueS: Date.parse(iso) / 1000, isLocal: false });

describe('a time as a logger writes it', () => {
  test.each([
    ['0', number(0)],
    [' 12,5 ', number(12.5)],
    ['-3', number(-3)],
    ['+3.', number(3)],
    ['.5', number(0.5)],
    [',5', number(0.5)],
    ['1e3', number(1000)],
    ['1.5E-2', number(0.015)],
  ])('a number: %s', (text, expected) => {
    expect(readTime(text)).toEqual(expected);
  });

  test.each([
    ['1:02:03', clock(3723)],
    ['01:02:03.5', clock(3723.5)],
    ['01:02:03,25', clock(3723.25)],
    ['01:02:03:250', clock(3723.25)],
    ['123:00:00', clock(123 * 3600)],
    ['23:59:60', clock(86_400)],
    ['2:30 pm', clock(14.5 * 3600)],
    ['2:30:15 P.M.', clock(14.5 * 3600 + 15)],
    ['12:05 am', clock(300)],
    ['12:05 PM', clock(43_500)],
    ['11:59:55AM', clock(43_195)],
    ['02:03.5', clock(123.5)],
    ['02:03,25', clock(123.25)],
    ['90:30,5', clock(5430.5)],
    ['11h20', clock(40_800)],
    ['9 h 05', clock(32_700)],
  ])('a clock: %s', (text, expected) => {
    expect(readTime(text)).toEqual(expected);
  });

  test('a clock of two parts, which the cell alone cannot tell', () => {
    expect(readTime('10:15')).toEqual({ kind: 'two-part-clock', first: 10, second: 15 });
    expect(readTime('125:59')).toEqual({ kind: 'two-part-clock', first: 125, second: 59 });
  });

  test.each([
    ['5 min 10 s', duration(310)],
    ['1h2m3s', duration(3723)],
    ['1 h', duration(3600)],
    ['1.5 hours', duration(5400)],
    ['2 Std. 5 Minuten', duration(7500)],
    ['7 mins', duration(420)],
    ['90 sek', duration(90)],
    ['3,5 seconds', duration(3.5)],
    ['5\' 10"', duration(310)],
    ["5′ 10''", duration(310)],
    ['250 ms', duration(0.25)],
    ['1,5ms', duration(0.0015)],
    ['0 days 00:11:21', duration(681)],
    ['1 day, 0:00:01.5', duration(86_401.5)],
  ])('a time with its units: %s', (text, expected) => {
    expect(readTime(text)).toEqual(expected);
  });

  test.each([
    ['2026-03-14 10:15', local('2026-03-14T10:15:00Z')],
    ['2026-03-14T10:15:07.5', local('2026-03-14T10:15:07.500Z')],
    ['2026/3/4 10:15:00', local('2026-03-04T10:15:00Z')],
    ['2026.03.14 2:15 pm', local('2026-03-14T14:15:00Z')],
    ['2026-03-14T10:15:00Z', zoned('2026-03-14T10:15:00Z')],
    ['2026-03-14T10:15:00+01:00', zoned('2026-03-14T09:15:00Z')],
    ['2026-03-14T10:15:00-0330', zoned('2026-03-14T13:45:00Z')],
    ['2026-03-14T10:15:00.5 +02:00', zoned('2026-03-14T08:15:00.500Z')],
    ['14.03.2026 10:15:00', local('2026-03-14T10:15:00Z')],
    ['14-3-26, 10:15', local('2026-03-14T10:15:00Z')],
    ['04/03/2026 10:15', local('2026-03-04T10:15:00Z')],
    ['3/14/2026 10:15', local('2026-03-14T10:15:00Z')],
    ['14-Mar-2026 10:15', local('2026-03-14T10:15:00Z')],
    ['14. März 2026 10:15', local('2026-03-14T10:15:00Z')],
    ['March 14, 2026 10:15 am', local('2026-03-14T10:15:00Z')],
    ['14 août 2026, 10:15', local('2026-08-14T10:15:00Z')],
    ['20260314T101507', local('2026-03-14T10:15:07Z')],
    ['20260314T1015Z', zoned('2026-03-14T10:15:00Z')],
    ['Sat Mar 14 10:15:07 2026', local('2026-03-14T10:15:07Z')],
    ['Sat, 14 Mar 2026 10:15:07 GMT', zoned('2026-03-14T10:15:07Z')],
    ['Samstag, 14.03.2026 10:15', local('2026-03-14T10:15:00Z')],
    ['Mar 14, 2026 10:15', local('2026-03-14T10:15:00Z')],
    ['2026-03-14 10:15:07 UTC', zoned('2026-03-14T10:15:07Z')],
    ['2026-03-14 10:15:07.25 CET', local('2026-03-14T10:15:07.250Z')],
  ])('a moment: %s', (text, expected) => {
    expect(readTime(text)).toEqual(expected);
  });

  test('months by their names in four languages', () => {
    const names = [
      ['January', 'Januar', 'enero'],
      ['Feb', 'février', 'febrero'],
      ['March', 'März', 'mars', 'marzo'],
      ['Apr', 'avril', 'abril'],
      ['May', 'Mai', 'mayo'],
      ['June', 'Juni', 'juin'],
      ['Jul', 'juillet', 'julio'],
      ['Aug', 'août', 'agosto'],
      ['Sept', 'septembre'],
      ['Oct', 'Oktober', 'octobre'],
      ['Nov', 'noviembre'],
      ['Dec', 'Dezember', 'décembre', 'diciembre'],
    ];
    for (const [index, ofMonth] of names.entries()) {
      for (const name of ofMonth) {
        expect([name, readTime(`5 ${name} 2026 00:00`)]).toEqual([
          name,
          local(new Date(Date.UTC(2026, index, 5)).toISOString()),
        ]);
      }
    }
    expect(readTime('5 Brumaire 2026 10:15')).toBeUndefined();
  });

  test('month first where it is said to stand first, unless that is no month', () => {
    expect(readTime('04/03/2026 10:15', 'month-day')).toEqual(local('2026-04-03T10:15:00Z'));
    expect(readTime('14/03/2026 10:15', 'month-day')).toEqual(local('2026-03-14T10:15:00Z'));
    expect(readTime('12/12/2026 10:15', 'month-day')).toEqual(local('2026-12-12T10:15:00Z'));
    expect(readTime('12/13/2026 10:15')).toEqual(local('2026-12-13T10:15:00Z'));
  });

  test.each([
    '',
    ' ',
    'later',
    '1:60',
    '10:61:00',
    '10:15:61',
    '2026-13-01 10:15',
    '2026-00-01 10:15',
    '2026-03-00 10:15',
    '2026-03-32 10:15',
    '2026-03-14 10:75',
    '32.13.2026 10:15',
    '14.03.2026',
    '5 Mar 2026 10:99',
    '1 2',
    '1,2,3',
    '5 m 3',
    'ms',
  ])('none of these: "%s"', (text) => {
    expect(readTime(text)).toBeUndefined();
  });
});
