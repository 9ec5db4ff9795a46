import { expect, test } from 'vitest';
import {
  localDayWords,
  localTimeWords,
  offsetWords,
} from '../../../shared-core/wording/local-time-words.ts';

test('a moment is told to the minute in the zone it is written in, which is told with it', () => {
  expect(
    ['2026-03-18T10:15:42.123+01:00', '2026-03-18T10:15:00Z', '2026-03-18T10:15-03:30'].map(
      localTimeWords,
    ),
  ).toEqual([
    '2026-03-18 10:15 (UTC+01:00)',
    '2026-03-18 10:15 (UTC+00:00)',
    '2026-03-18 10:15 (UTC−03:30)',
  ]);
});

test('a moment that says no zone is of the world’s', () => {
  expect(offsetWords('2026-03-18T10:15:00')).toBe('UTC+00:00');
});

test('the day of a moment is that of the other one’s zone, before midnight there and after', () => {
  const day = (iso: string, zone: string) => localDayWords(iso, `2026-03-18T10:15:00${zone}`);
  expect([
    day('2026-03-18T23:30:00Z', '+01:00'),
    day('2026-03-18T22:30:00Z', '+01:00'),
    day('2026-03-18T18:31:00Z', '+05:30'),
    day('2026-03-18T18:29:00Z', '+05:30'),
    day('2026-03-18T03:29:00Z', '-03:30'),
    day('2026-03-18T03:31:00Z', '-03:30'),
    day('2026-03-18T23:59:00Z', 'Z'),
  ]).toEqual([
    '2026-03-19',
    '2026-03-18',
    '2026-03-19',
    '2026-03-18',
    '2026-03-17',
    '2026-03-18',
    '2026-03-18',
  ]);
});

test('what is no moment is shown as it is, its day as far as a day is written', () => {
  expect(localTimeWords('some day')).toBe('some day');
  expect(localDayWords('2026-13-99T00:00:00Z', '2026-03-18T10:15:00Z')).toBe('2026-13-99');
});
