import { expect, test } from 'vitest';
import { appendToSeries, emptySeries } from '#shared-core';
import { breakTimes } from '../../../renderer/strip/break-times.ts';
import { groupSigns } from '../../../renderer/strip/mark-signs.ts';

const at = (x: number, sign: string) => ({ x, sign });

test('signs with room stand over their marks; close ones stand side by side, many as a number', () => {
  expect([
    groupSigns([], 15),
    groupSigns([at(10, '▲'), at(40, 'R')], 15),
    groupSigns([at(10, 'R'), at(14, '✎')], 15),
    groupSigns([at(1, 'R'), at(2, '✎'), at(3, '•'), at(4, '•'), at(5, '•')], 15),
  ]).toEqual([
    [],
    [
      { x: 10, text: '▲' },
      { x: 40, text: 'R' },
    ],
    [{ x: 12, text: 'R✎' }],
    [{ x: 3, text: 'R+4' }],
  ]);
});

test('a group that grows over its neighbour takes it in, so no two groups ever overlap', () => {
  const groups = groupSigns([at(0, 'a'), at(16, 'b'), at(20, 'c'), at(22, 'd')], 15);
  expect(groups).toEqual([{ x: 14.5, text: 'a+3' }]);
});

test('a doubtful reading interrupts the line at its own time, among the losses of the probe', () => {
  const doubtful = appendToSeries(emptySeries(), [{ timeS: 4, value: 85 }]);
  const gap = (fromS: number) => ({ fromS, toS: null, reason: 'unplugged' });
  expect(breakTimes([gap(2), gap(9)], doubtful)).toEqual([2, 4, 9]);
});
