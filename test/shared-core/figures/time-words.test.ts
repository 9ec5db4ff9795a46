import { expect, test } from 'vitest';
import { axisTimeWords } from '../../../shared-core/figures/time-words.ts';

test('a time of an axis is told in the coarsest words that are exact', () => {
  expect([0, 40, 90, 60, 1500, 3540, 3600, 3900, 5700, 7200].map(axisTimeWords)).toEqual([
    '0 min',
    '40 s',
    '90 s',
    '1 min',
    '25 min',
    '59 min',
    '1 h',
    '1 h 05',
    '1 h 35',
    '2 h',
  ]);
});
