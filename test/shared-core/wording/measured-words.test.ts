import { expect, test } from 'vitest';
import {
  decimalsFor,
  intervalWords,
  measuredWords,
  numberWords,
} from '../../../shared-core/wording/measured-words.ts';

const plain = (words: string) => words.replaceAll('\u00a0', '~');

test('a number has the decimals asked for, a true minus, and no minus before nothing', () => {
  expect(
    [
      [78.44, 1],
      [-2.36, 1],
      [-0.04, 1],
      [-0.04, 2],
      [0, 0],
    ].map(([value = 0, decimals = 0]) => numberWords(value, decimals)),
  ).toEqual(['78.4', '−2.4', '0.0', '−0.04', '0']);
});

test('decimals leave two significant figures, of numbers that round up to a power of ten as well', () => {
  // 0.218 → 0.22, 0.0999 → 0.10, 9.96 → 10, 6.52 → 6.5, 65 and 650 whole, 0.000034.
  const expanded = [0.218, 0.0999, 9.96, 6.52, 65, 650, 0.000034];
  expect(expanded.map(decimalsFor)).toEqual([2, 2, 0, 1, 0, 0, 6]);
});

test('an uncertainty too small to be written has six decimals, none at all has two', () => {
  expect([1e-9, 0, -1, Number.NaN].map(decimalsFor)).toEqual([6, 2, 2, 2]);
});

test('a measured value is told with twice its standard uncertainty, to the same decimals', () => {
  expect(plain(measuredWords({ value: 78.4074, standardUncertainty: 0.109 }, '°C'))).toBe(
    '(78.41~±~0.22)~°C',
  );
  expect(plain(measuredWords({ value: -1.26, standardUncertainty: 0.3 }, 'K'))).toBe(
    '(−1.26~±~0.60)~K',
  );
});

test('an interval is told to two figures of half its width, with its unit once', () => {
  const interval = (low: number, high: number, unit = '% vol') =>
    plain(intervalWords({ value: (low + high) / 2, low, high }, unit));
  // Half widths 7.5, 75, 0.075.
  expect([
    interval(70.04, 85.04),
    interval(700.4, 850.4),
    interval(-0.05, 0.1, 'K'),
    interval(3, 4.5, ''),
  ]).toEqual(['70.0–85.0~% vol', '700–850~% vol', '−0.050–0.100~K', '3.00–4.50']);
});

test('an interval whose ends read alike is told as one number', () => {
  const narrow = { value: 78.4, low: 78.4, high: 78.4 };
  expect([intervalWords(narrow, '°C'), intervalWords(narrow, '')].map(plain)).toEqual([
    '78.40~°C',
    '78.40',
  ]);
});
