import { describe, expect, test } from 'vitest';
import { bellAfter, fitsUntil, latestStartWords } from '../../../renderer/lesson/bell.ts';
import {
  expectedTime,
  expectedTimeWords,
  isCountable,
  isOfUse,
  startByClock,
} from '../../../renderer/lesson/expected-time.ts';

const min = 60;
/** 10:20 of some day in the computer's own time. */
const tenTwentyMs = new Date(2026, 2, 18, 10, 20).getTime();

/** As in a place that writes 24 hours, whatever this computer does. */
const plain = (words: string) =>
  words
    .replaceAll(/[\s\u2009\u202f]/g, '')
    .replaceAll('AM', '')
    .replaceAll('–', '-');

test('what is expected is read from the clock as it stands, where it was set during the run', () => {
  const after = (timeS: number, setMs: number) =>
    startByClock(tenTwentyMs, timeS, tenTwentyMs + 1000 * timeS + setMs) - tenTwentyMs;
  expect([after(600, 0), after(600, 4_000), after(600, -59_000)]).toEqual([0, 0, 0]);
  // An hour, and that less what the snapshot is late by.
  expect([after(600, 3_600_000), after(607.25, 3_601_500), after(600, -3_600_000)]).toEqual([
    3_600_000, 3_600_000, -3_600_000,
  ]);
  expect(startByClock(Number.NaN, 600, tenTwentyMs)).toBeNaN();
});

describe('what a teacher can plan by', () => {
  test.each([
    // [low, high] in minutes from now, and whether a timetable can use it
    ['an hour ahead, known to 25 min', 50, 75, true],
    ['so wide that it may be now or after the lesson', 2, 33, false],
    ['a plan of which neither plates nor heat are known', 31, 111, false],
    ['a plan with both', 38, 74, true],
    ['near, and known to 10 min', 2, 12, true],
    ['the next minutes', 0, 4, true],
    ['overdue at its early end', -3, 4, true],
  ])('%s', (_, low, high, isUseful) => {
    expect(isOfUse({ low: low * min, high: high * min })).toBe(isUseful);
  });

  test('only a range of five minutes at most is counted down', () => {
    expect([
      isCountable({ low: 4 * min, high: 9 * min }),
      isCountable({ low: 4 * min, high: 9.5 * min }),
      isCountable({ low: -9 * min, high: -1 }),
    ]).toEqual([true, false, false]);
  });

  test('a range is told as times of the clock, rounded outwards, seen from now', () => {
    const startMs = tenTwentyMs - 10 * min * 1000;
    const told = (low: number, high: number) =>
      plain(
        expectedTimeWords(
          expectedTime({ low: low * min, high: high * min, madeS: 10 * min }, startMs, tenTwentyMs),
        ),
      );
    const ranges = [
      [62, 83],
      [15.2, 18.7],
      [16, 63],
      [12, 43],
      [5, 18],
      [3, 9],
    ] as const;
    expect(ranges.map(([low, high]) => told(low, high))).toEqual([
      'about11:10-11:35',
      'about10:25-10:29',
      'tooearlytotell',
      'tooearlytotell',
      'about10:20-10:28',
      'anymomentnow',
    ]);
  });
});

test('a range that was of use as it was reckoned is told until it is over, and is no more too early the nearer it comes', () => {
  const planned = { low: 10 * min, high: 25 * min, madeS: 0 };
  const kinds = [0, 3, 9, 14, 24, 25].map(
    (sinceMin) => expectedTime(planned, 0, sinceMin * min * 1000).kind,
  );
  expect(kinds).toEqual(['window', 'window', 'window', 'window', 'window', 'overdue']);
});

describe('the bell', () => {
  test('is the next one after a moment, or none', () => {
    const at = (bell: string) => bellAfter(bell, tenTwentyMs);
    expect([at('11:45'), at('10:20'), at(''), at('soon')]).toEqual([
      tenTwentyMs + 85 * min * 1000,
      tenTwentyMs + 24 * 60 * min * 1000,
      null,
      null,
    ]);
  });

  test('comes after, within or before a range', () => {
    const bellMs = tenTwentyMs + 60 * min * 1000;
    const judged = (low: number, high: number) =>
      fitsUntil(bellMs, tenTwentyMs, { low: low * min, high: high * min });
    expect([judged(2, 33), judged(40, 60), judged(40, 61), judged(61, 70)]).toEqual([
      'fits',
      'fits',
      'perhaps',
      'does-not-fit',
    ]);
  });

  test('says by when the heat must be on, whole minutes earlier rather than later', () => {
    const bellMs = tenTwentyMs + 85 * min * 1000;
    const said = (low: number, high: number) =>
      plain(latestStartWords(bellMs, tenTwentyMs, { low: low * min, high: high * min }));
    expect(said(38, 73.5)).toContain(plain('Fits if the heat is on by 10:31.'));
    expect(said(31, 111)).toContain(plain('May not fit: for that the heat had to be on by 9:54.'));
    expect(said(90, 130)).toContain(plain('Does not fit any more'));
  });
});
