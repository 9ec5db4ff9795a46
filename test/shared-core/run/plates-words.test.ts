import { expect, test } from 'vitest';
import { platesWords } from '../../../shared-core/run/plates-words.ts';

test('a column is told by its plates: none, one, several, or not known', () => {
  expect([null, 0, 1, 1.5, 12].map(platesWords)).toEqual([
    'plates not known',
    'no column',
    '1 plate',
    '1.5 plates',
    '12 plates',
  ]);
});
