import { expect, test } from 'vitest';
import { createSecondBin } from '../../../../shared-core/monitor/sense/second-bin.ts';

function binned(...values: readonly number[]) {
  const bin = createSecondBin();
  values.forEach((value, index) => {
    bin.add(index / 10, value);
  });
  return bin.take();
}

test('a second is the mean of its readings, at their mean time, with their spread', () => {
  expect([binned(), binned(78.4), binned(3, 1, 2)]).toEqual([
    null,
    { timeS: 0, value: 78.4, count: 1, spread: 0 },
    { timeS: expect.closeTo(0.1, 9), value: 2, count: 3, spread: 2 },
  ]);
});

test('from four readings on the outer quarters do not count', () => {
  expect([binned(1, 2, 4, 500)?.value, binned(500, 3, -90, 4, 5, 1, 2, 0)?.value]).toEqual([
    3,
    // 1, 2, 3, 4 of −90, 0, 1, 2, 3, 4, 5, 500.
    2.5,
  ]);
});

test('a taken second is empty, and one of more readings than it holds keeps the first 256', () => {
  const bin = createSecondBin();
  bin.add(1, 5);
  bin.take();
  expect(bin.take()).toBeNull();
  for (let index = 0; index < 300; index += 1) bin.add(2, index < 256 ? 10 : 99);
  expect(bin.take()).toEqual({ timeS: 2, value: 10, count: 256, spread: 0 });
});
