import { expect, test } from 'vitest';
import {
  logNormalCumulative,
  normalCumulative,
} from '../../../../shared-core/monitor/situation/normal.ts';

test('agrees with the tables of the normal distribution, and its logarithm with itself far out', () => {
  // (1 + erf(z/√2))/2 at z = 0.5, 1, 2, 3, by the error function of Python's mathematics.
  const tabled = [0.691462461274, 0.841344746069, 0.977249868052, 0.998650101968];
  const misses = [0.5, 1, 2, 3].map((z, index) => normalCumulative(z) - (tabled[index] as number));
  expect(Math.max(...misses.map(Math.abs))).toBeLessThan(8e-8);
  for (const z of [-5.5, -8, -20]) {
    expect(logNormalCumulative(z) / Math.log(normalCumulative(z))).toBeCloseTo(1, 3);
  }
});

test('is 1 to the last bit well before the far tail is left out, and never less again', () => {
  for (let z = 8.4; z < 45; z += 0.01) expect(normalCumulative(z)).toBe(1);
  expect(normalCumulative(8)).toBeLessThan(1);
});
