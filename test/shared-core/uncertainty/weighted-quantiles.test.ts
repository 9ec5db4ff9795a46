import { expect, test } from 'vitest';
import { createRandom } from '../../../shared-core/random/index.ts';
import { weightedQuantiles } from '../../../shared-core/uncertainty/weighted-quantiles.ts';

const shares = [0, 0.001, 0.05, 0.25, 0.5, 0.9, 0.95, 0.999, 1];

/** By the definition alone: of all values, in rising order, the first at which the weight reaches the share. */
function oneAfterTheOther(values: readonly number[], weights: readonly number[]): number[] {
  const upTo = (value: number): number =>
    values.reduce((sum, each, at) => (each <= value ? sum + (weights[at] as number) : sum), 0);
  const rising = [...values].sort((a, b) => a - b);
  const total = upTo(Number.POSITIVE_INFINITY);
  return shares.map(
    (share) => rising.find((value) => upTo(value) >= share * total) ?? (rising.at(-1) as number),
  );
}

test('values are those that going through all of them one after the other gives, however unlike their weights are', () => {
  const random = createRandom('weighted quantiles');
  const weightings: readonly ((at: number) => number)[] = [
    () => 1 / 320,
    () => random.uniform() ** 8,
    // Nearly all at one end or the other.
    (at) => (at === 0 ? 1000 : 1),
    (at) => (at < 3 ? 0 : 1),
    () => (random.uniform() < 0.9 ? 0 : 1e-12),
  ];
  for (const weigh of weightings) {
    for (const count of [1, 2, 3, 7, 64, 321]) {
      const values = Array.from(
        { length: count },
        () => 100 + Math.round(40 * random.normal()) / 4,
      );
      const weights = values.map((_, at) => weigh(at));
      if (Math.max(...weights) === 0) weights[0] = 1;
      expect(weightedQuantiles(values, weights, shares)).toEqual(oneAfterTheOther(values, weights));
    }
  }
});
