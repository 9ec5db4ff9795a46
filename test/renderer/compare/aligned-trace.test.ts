import { expect, test } from 'vitest';
import { drawnUntilS } from '../../../renderer/compare/aligned-trace.ts';

test('the paper of a comparison ends with the last trace on it, however long a run was left to cool', () => {
  const left = [
    [7.5, 78],
    [22.5, 79],
    [37.5, null],
    [18_007.5, null],
  ] as const;
  const stopped = [[7.5, 78.2]] as const;
  expect([drawnUntilS([left, stopped]), drawnUntilS([[], [[7.5, null]]])]).toEqual([30, 0]);
});
