import { expect, test } from 'vitest';
import { createPlateauFilter } from '../../../../shared-core/monitor/situation/plateau-filter.ts';

const white = { whiteSdK: 0.05, slowSdK: 0, wanderK2PerS: 0 };

test('with white noise alone the level is the mean of all blocks, but for the little that a plateau may drift', () => {
  const filter = createPlateauFilter();
  const blocks = [78.41, 78.38, 78.45, 78.4, 78.36];
  for (const [index, meanC] of blocks.entries()) filter.see(2 * index, meanC, white);
  const mean = blocks.reduce((sum, value) => sum + value, 0) / blocks.length;
  expect(filter.levelC()).toBeCloseTo(mean, 4);
});

test('the variance of a surprise is that of the block and of what is known of the level: σ² (1 + 1/n)', () => {
  const filter = createPlateauFilter();
  const variances = [0, 2, 4, 6].map((timeS) => filter.see(timeS, 78.4, white)?.variance ?? null);
  expect(variances).toEqual([
    null,
    expect.closeTo(0.05 ** 2 * (1 + 1 / 1), 6),
    expect.closeTo(0.05 ** 2 * (1 + 1 / 2), 6),
    expect.closeTo(0.05 ** 2 * (1 + 1 / 3), 6),
  ]);
});

test('slow scatter is kept by e^(−t/τ) and no more than it is worth of a block', () => {
  const filter = createPlateauFilter();
  const slow = { ...white, slowSdK: 0.1 };
  filter.see(0, 78.4, slow);
  const step = filter.see(30, 78.4, slow);
  const kept = Math.exp(-30 / 15);
  // Level and slow part of the first block are known only by their sum: 2 (1 − kept) s² is left between the blocks, and 2 σ².
  expect(step?.kept).toBeCloseTo(kept, 12);
  expect(step?.variance).toBeCloseTo(2 * (1 - kept) * 0.1 ** 2 + 2 * 0.05 ** 2, 4);
});

test('a head that wanders is followed: a step of the level is taken over the quicker, the more it wanders', () => {
  const after = (wanderK2PerS: number): number => {
    const filter = createPlateauFilter();
    for (let timeS = 0; timeS < 600; timeS += 2)
      filter.see(timeS, 78.4, { ...white, wanderK2PerS });
    for (let timeS = 600; timeS < 660; timeS += 2) {
      filter.see(timeS, 78.9, { ...white, wanderK2PerS });
    }
    return filter.levelC() - 78.4;
  };
  const [still, usual, restless] = [0, 0.02 ** 2 / 60, 0.2 ** 2 / 60].map(after);
  expect(still).toBeLessThan(usual ?? 0);
  expect(usual).toBeLessThan(restless ?? 0);
  expect(restless).toBeGreaterThan(0.45);
});

test('after a restart the first block gives the level and tells nothing else', () => {
  const filter = createPlateauFilter();
  for (let timeS = 0; timeS < 60; timeS += 2) filter.see(timeS, 78.4, white);
  filter.restart();
  expect(filter.see(60, 81, white)).toBeNull();
  expect(filter.levelC()).toBe(81);
  expect(filter.see(62, 81.02, white)?.stepS).toBe(2);
  expect(filter.surpriseK()).toBeCloseTo(0.02, 9);
});
