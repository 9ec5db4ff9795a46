import type { Random } from './create-random.ts';

/**
 * Draws as many again as there are, in proportion to their weights, with one random number (systematic resampling): each is
 * picked the whole number of times below or above `n w`.
 *
 * @param weights ≥ 0 that sum to 1, at least one
 * @param random takes one uniform number from it
 * @returns for each place the index that was picked, in rising order
 *
 * Source: G. Kitagawa, J. Comput. Graph. Stat. 5 (1996) 1; from memory.
 * @example
 * Array.from(systematicPicks([0.5, 0, 0.5, 0], createRandom(1))) // => [0, 0, 2, 2]
 */
export function systematicPicks(weights: ArrayLike<number>, random: Random): Uint32Array {
  const count = weights.length;
  const picks = new Uint32Array(count);
  const start = random.uniform() / count;
  let index = 0;
  let sum = weights[0] ?? 1;
  for (let place = 0; place < count; place += 1) {
    const target = start + place / count;
    while (sum <= target && index < count - 1) {
      index += 1;
      sum += weights[index] ?? 0;
    }
    picks[place] = index;
  }
  return picks;
}
