import { expect, test } from 'vitest';
import { clockWords } from '../../../shared-core/wording/clock-words.ts';

test('a moment is told by the second that has struck, its hours as many as they are', () => {
  expect([0, 59.99, 60, 3599.9, 3600, 90_061].map(clockWords)).toEqual([
    '0:00:00',
    '0:00:59',
    '0:01:00',
    '0:59:59',
    '1:00:00',
    '25:01:01',
  ]);
});

test('a moment before the run is told as its beginning', () => {
  expect(clockWords(-5)).toBe('0:00:00');
});
