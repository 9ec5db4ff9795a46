import { expect, test } from 'vitest';
import { createRandom, type Random } from '../../../shared-core/random/create-random.ts';
import { systematicPicks } from '../../../shared-core/random/systematic-picks.ts';

/** A source whose uniform numbers are all the same. */
const always = (value: number): Random => ({ ...createRandom(1), uniform: () => value });
const picked = (weights: readonly number[], uniform: number) =>
  Array.from(systematicPicks(weights, always(uniform)));

test('places lie evenly on the summed weights, from where one random number says', () => {
  // Sums 0.1, 0.3, 0.6, 1; places at (u + i)/4.
  const weights = [0.1, 0.2, 0.3, 0.4];
  expect(picked(weights, 0)).toEqual([0, 1, 2, 3]);
  expect(picked(weights, 0.5)).toEqual([1, 2, 3, 3]);
  expect(picked(weights, 0.999)).toEqual([1, 2, 3, 3]);
  expect(picked([0, 0, 1], 0.5)).toEqual([2, 2, 2]);
  expect(picked([1, 0, 0], 0.5)).toEqual([0, 0, 0]);
  expect(picked([1], 0.9)).toEqual([0]);
});

test('what weighs nothing is not picked, and equal weights are picked once each, even from the lowest random number', () => {
  expect(picked([0, 1], 0)).toEqual([1, 1]);
  expect(picked([0.5, 0.5], 0)).toEqual([0, 1]);
  expect(picked([0.25, 0.25, 0.25, 0.25], 0)).toEqual([0, 1, 2, 3]);
});

test('weights that sum to a little less than 1 give the rest to the last', () => {
  expect(picked([0.5, 0.4], 0.99)).toEqual([0, 1]);
});

test('each is picked as often as its weight says, to within one, whatever the random number', () => {
  const random = createRandom('picks');
  const raw = Array.from({ length: 40 }, () => random.exponential());
  const total = raw.reduce((sum, weight) => sum + weight, 0);
  const weights = raw.map((weight) => weight / total);
  for (let draw = 0; draw < 200; draw += 1) {
    const counts = new Array<number>(40).fill(0);
    for (const pick of systematicPicks(weights, random)) counts[pick]! += 1;
    for (const [index, count] of counts.entries()) {
      expect(Math.abs(count - 40 * weights[index]!)).toBeLessThan(1);
    }
  }
});
