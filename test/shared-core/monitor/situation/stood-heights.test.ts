import { expect, test } from 'vitest';
import { createStoodHeights } from '../../../../shared-core/monitor/situation/stood-heights.ts';

/** What a head came back from that came back after each of these stretches of blocks. */
function cameBackFrom(...stretches: readonly (readonly number[])[]): number | null {
  const heights = createStoodHeights();
  for (const stretch of stretches) {
    for (const meanC of stretch) heights.see(meanC);
    heights.comeBack();
  }
  return heights.cameBackFromC();
}

test('a height counts when three blocks in a row stood there, and only once the head came back from it', () => {
  expect([
    cameBackFrom([79, 79]),
    cameBackFrom([79, 79, 78.8]),
    cameBackFrom([79, 85, 79, 78, 78]),
    cameBackFrom([79, 79], [79]),
    cameBackFrom([79, 79, 79], [78, 78, 78]),
    cameBackFrom([78, 78, 78], [79, 79, 79, 60]),
  ]).toEqual([null, 78.8, 79, null, 79, 79]);
  const heights = createStoodHeights();
  for (const meanC of [79, 79, 79]) heights.see(meanC);
  expect(heights.cameBackFromC()).toBeNull();
});

test('a height is what a head held for three blocks, and counts once the head has come back, also beside what it held for less', () => {
  const heights = createStoodHeights();
  for (const meanC of [78, 80, 81, 79.5, 78]) heights.see(meanC);
  const before = heights.cameBackFromC();
  heights.comeBack();
  expect([before, heights.cameBackFromC()]).toEqual([null, 79.5]);
  for (const meanC of [90, 90]) heights.see(meanC);
  heights.comeBack();
  expect(heights.cameBackFromC()).toBe(79.5);
});
