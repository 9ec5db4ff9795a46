import { expect, test } from 'vitest';
import {
  clockWords,
  durationWords,
  lastedWords,
  untilWords,
} from '../../../renderer/words/index.ts';

test.each([
  [0, '0:00:00'],
  [432.9, '0:07:12'],
  [36_061, '10:01:01'],
])('run time %d s reads %s', (timeS, words) => {
  expect(clockWords(timeS)).toBe(words);
});

test.each([
  [40, '40 s'],
  [720, '12 min'],
  [3900, '1 h 5 min'],
  [7200, '2 h'],
])('a duration of %d s reads %s', (durationS, words) => {
  expect(durationWords(durationS)).toBe(words);
});

test.each([
  [{ low: 250, high: 410 }, 'in 4–7 min'],
  [{ low: 10, high: 400 }, 'within 7 min'],
  [{ low: 5, high: 42 }, 'within 50 s'],
  [{ low: -30, high: -1 }, 'any moment now'],
  [{ low: 290, high: 300 }, 'in 4–5 min'],
])('a forecast of %o reads “%s”', (interval, words) => {
  expect(untilWords(interval)).toBe(words);
});

test.each([
  [{ value: 1500, low: 1379, high: 1661 }, '25 min (22 min – 28 min)'],
  [{ value: 1500, low: 1500, high: 1500 }, '25 min (25 min – 25 min)'],
  [{ value: 3725, low: 3599, high: 3961 }, '1 h 2 min (59 min – 1 h 7 min)'],
  [{ value: 130, low: 0, high: 150 }, '2 min (0 s – 3 min)'],
])('a length of %o reads “%s”', (length, words) => {
  expect(lastedWords(length)).toBe(words);
});
