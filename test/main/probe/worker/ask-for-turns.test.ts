import { constants } from 'node:os';
import { expect, test } from 'vitest';
import { askForTurns } from '../../../../main/probe/worker/ask-for-turns.ts';

test('the serial process asks to go before others', () => {
  const asked: number[] = [];
  askForTurns((priority) => asked.push(priority));
  expect(asked).toEqual([constants.priority.PRIORITY_HIGH]);
});

test('where the system refuses that, the serial process reads all the same', () => {
  expect(() =>
    askForTurns(() => {
      throw new Error('EACCES: permission denied');
    }),
  ).not.toThrow();
});
