import { expect, test } from 'vitest';
import { createHeadBlocks } from '../../../../shared-core/monitor/situation/head-blocks.ts';

test('a block is the mean of its readings, and stands for the time since the one before, 2 to 5 s', () => {
  const blocks = createHeadBlocks();
  blocks.add(1, 78.2);
  blocks.add(2, 78.4);
  const first = blocks.close(2);
  blocks.add(60, 79);
  const afterSilence = blocks.close(60);
  blocks.add(61, 80);
  const soonAfter = blocks.close(61);
  expect([first, afterSilence, soonAfter]).toEqual([
    { timeS: 2, meanC: expect.closeTo(78.3, 9), readings: 2, stepS: 2 },
    { timeS: 60, meanC: 79, readings: 1, stepS: 5 },
    { timeS: 61, meanC: 80, readings: 1, stepS: 2 },
  ]);
});

test.each([
  [1, 0, [false, true, false, true, false]],
  [1, 7, [true, false, true, false, true]],
  [2, 1, [true, true, true]],
  [10, 5, [true, true, true]],
])('readings every %s s from %s s on end blocks of two seconds', (everyS, fromS, ended) => {
  const blocks = createHeadBlocks();
  blocks.add(fromS, 78);
  expect(ended.map((_, index) => blocks.add(fromS + everyS * (index + 1), 78))).toEqual(ended);
});

test('what came before an upset is in no block', () => {
  const blocks = createHeadBlocks();
  blocks.add(3, 60);
  blocks.interrupt();
  blocks.add(4, 78);
  expect(blocks.close(4)).toMatchObject({ meanC: 78, readings: 1 });
});
