import { describe, expect, test } from 'vitest';
import {
  numberFrom,
  numberWords,
  problemWords,
  quantityWords,
  rangeWords,
} from '../../../renderer/words/index.ts';

describe('numbers in words', () => {
  test('the person’s decimal sign and a true minus are used', () => {
    expect([numberWords(78.44, 1, '.'), numberWords(-0.96, 1, ',')]).toEqual(['78.4', '−1,0']);
  });

  test('a value that rounds to zero has no minus', () => {
    expect(numberWords(-0.04, 1, '.')).toBe('0.0');
  });

  test('a missing number is a dash, never NaN', () => {
    expect(numberWords(Number.NaN, 1, '.')).toBe('–');
  });

  test('number and unit never part at a line end', () => {
    expect(quantityWords(78.4, 1, '°C', '.')).toBe('78.4\u00a0°C');
  });

  test('an interval that rounds to one number says about', () => {
    expect([
      rangeWords({ low: 88.2, high: 92.7 }, 0, '% vol', '.'),
      rangeWords({ low: 90.1, high: 90.3 }, 0, '% vol', '.'),
    ]).toEqual(['88–93\u00a0% vol', 'about 90\u00a0% vol']);
  });
});

describe('numberFrom', () => {
  test.each([
    ['78,4', 78.4],
    [' 1 013.2 ', 1013.2],
    ['−430', -430],
    ['.5', 0.5],
  ])('reads %j as %d', (text, value) => {
    expect(numberFrom(text)).toBe(value);
  });

  test.each(['', 'nine', '1,2,3', '1e5', 'Infinity', '--1'])('%j is no number', (text) => {
    expect(numberFrom(text)).toBeNull();
  });
});

describe('problemWords', () => {
  test('a port without permission on Linux comes with the exact command and the new log-in', () => {
    const words = problemWords({
      kind: 'port-permission-denied',
      path: '/dev/ttyACM0',
      platform: 'linux',
    });
    expect(words).toContain('sudo usermod -aG dialout $USER');
    expect(words).toContain('log out and in again');
  });

  test.each(['Its header is damaged.', 'EIO: i/o error, read'])(
    'a run that could not be read is told in whole sentences: %s',
    (message) => {
      expect(problemWords({ kind: 'run-unreadable', runId: 'run', message })).toBe(
        `This run could not be read. ${message.replace(/\.$/, '')}. The file is left as it is.`,
      );
    },
  );
});
