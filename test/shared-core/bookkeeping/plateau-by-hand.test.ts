import fc from 'fast-check';
import { expect, test } from 'vitest';
import { OutOfRangeError } from '#shared-core';
import {
  type HeadPoint,
  longestPlateau,
  plateauStatistics,
} from '../../../shared-core/bookkeeping/plateau-statistics.ts';

const points = (spacingS: number, temperaturesC: readonly number[]): readonly HeadPoint[] =>
  temperaturesC.map((temperatureC, index) => ({ timeS: 100 + spacingS * index, temperatureC }));
const close = (value: number) => expect.closeTo(value, 6);

test('mean, scatter and drift of five readings are those of a calculation by hand', () => {
  // Deviations −0.16, 0.04, −0.06, 0.14, 0.04 K: Σ² = 0.052; neighbours Σ = −0.0116, so none are alike: u = √(0.013/5).
  // Σt² = 8.1e6 s², Σtd = 450 s·K: 0.2 K/h; left over (0.052 − 0.025)/3 = 0.009: u = 3600 √(0.009/8.1e6).
  expect(plateauStatistics(points(900, [78.1, 78.3, 78.2, 78.4, 78.3]))).toEqual({
    span: { fromS: 100, toS: 3700 },
    readings: 5,
    meanC: close(78.26),
    medianC: 78.3,
    standardDeviationK: close(Math.sqrt(0.013)),
    standardUncertaintyOfMeanK: close(Math.sqrt(0.013 / 5)),
    lowestC: 78.1,
    highestC: 78.4,
    driftKPerH: { value: close(0.2), standardUncertainty: close(0.12) },
  });
});

test('alike neighbours count for fewer readings, as by hand, and an even number has its median between two', () => {
  // Σ² = 4, neighbours 1 − 1 + 1 = 1: r = 0.25, n_eff = 4 × 0.75/1.25 = 2.4. Slope −4/5 K/s; left over (4 − 3.2)/2 = 0.4.
  expect(plateauStatistics(points(1, [79, 79, 77, 77]))).toEqual({
    span: { fromS: 100, toS: 103 },
    readings: 4,
    meanC: 78,
    medianC: 78,
    standardDeviationK: close(Math.sqrt(4 / 3)),
    standardUncertaintyOfMeanK: close(Math.sqrt(4 / 3 / 2.4)),
    lowestC: 77,
    highestC: 79,
    driftKPerH: { value: close(-2880), standardUncertainty: close(3600 * Math.sqrt(0.08 / 0.6)) },
  });
});

test('readings that are all the same have no scatter and no drift, instead of no number', () => {
  expect(plateauStatistics(points(60, [78, 78, 78]))).toMatchObject({
    meanC: 78,
    medianC: 78,
    standardDeviationK: 0,
    standardUncertaintyOfMeanK: 0,
    driftKPerH: { value: 0, standardUncertainty: 0 },
  });
});

/** The longest stretch found by trying every one; of equally long ones the first. */
function longestByTrying(of: readonly HeadPoint[], bandK: number) {
  let best: { fromS: number; toS: number } | null = null;
  for (let end = 1; end < of.length; end += 1)
    for (let start = 0; start < end; start += 1) {
      const stretch = of.slice(start, end + 1);
      const temperatures = stretch.map(({ temperatureC }) => temperatureC);
      if (Math.max(...temperatures) - Math.min(...temperatures) > bandK) continue;
      const [fromS, toS] = [stretch[0]?.timeS ?? 0, stretch.at(-1)?.timeS ?? 0];
      if (toS - fromS > (best === null ? 0 : best.toS - best.fromS)) best = { fromS, toS };
    }
  return best;
}

test('the longest plateau is the one that trying every stretch finds, whatever the readings', () => {
  const readings = fc.array(
    fc.record({
      stepS: fc.integer({ min: 0, max: 5 }),
      temperatureC: fc.integer({ min: 0, max: 8 }),
    }),
    { maxLength: 25 },
  );
  fc.assert(
    fc.property(readings, fc.integer({ min: 1, max: 4 }), (steps, bandK) => {
      let timeS = 0;
      const of = steps.map(({ stepS, temperatureC }) => {
        timeS += stepS;
        return { timeS, temperatureC };
      });
      expect(longestPlateau(of, bandK)).toEqual(longestByTrying(of, bandK));
    }),
    { numRuns: 400 },
  );
});

test.each([0, -1, Number.NaN, 1001])('a band of %d K is an error', (bandK) => {
  expect(() => longestPlateau([], bandK)).toThrow(OutOfRangeError);
});
