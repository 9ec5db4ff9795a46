import { expect, test } from 'vitest';
import { createStoodHeights } from '../../../../shared-core/monitor/situation/stood-heights.ts';

/** What a head came back from that was upset after each of these stretches of blocks. */
function cameBackFrom(...stretches: readonly (readonly number[])[]): number {
  const heights = createStoodHeights();
  for (const stretch of stretches) {
    for (const meanC of stretch) heights.see(meanC);
    heights.interrupt();
  }
  return heights.cameBackFromC();
}

test('a height counts when three blocks in a row stood there, and only once the head was upset', () => {
  expect([
    cameBackFrom([79, 79]),
    cameBackFrom([79, 79, 78.8]),
    cameBackFrom([79, 85, 79, 78, 78]),
    cameBackFrom([79, 79], [79]),
    cameBackFrom([79, 79, 79], [78, 78, 78]),
    cameBackFrom([78, 78, 78], [79, 79, 79, 60]),
  ]).toEqual([Number.NEGATIVE_INFINITY, 78.8, 79, Number.NEGATIVE_INFINITY, 79, 79]);
  const heights = createStoodHeights();
  for (const meanC of [79, 79, 79]) heights.see(meanC);
  expect(heights.cameBackFromC()).toBe(Number.NEGATIVE_INFINITY);
});
