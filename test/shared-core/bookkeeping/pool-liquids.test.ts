import { describe, expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import { bookLiquid } from '../../../shared-core/bookkeeping/book-liquid.ts';
import { poolLiquids } from '../../../shared-core/bookkeeping/pool-liquids.ts';
import type { StrengthMeasurement } from '../../../shared-core/bookkeeping/strength-measurement.ts';
import { sumOfLiquids } from '../../../shared-core/bookkeeping/sum-liquids.ts';

const about = (value: number, standardUncertainty: number) => ({ value, standardUncertainty });
const liquid = (volumeMl: number, volumeDoubtMl: number, strength: StrengthMeasurement) =>
  bookLiquid({
    name: 'Cut',
    amount: {
      by: 'volume',
      volumeMl: about(volumeMl, volumeDoubtMl),
      temperatureC: about(20, 0),
    },
    strength,
  });
const stated = (value: number, doubt: number): StrengthMeasurement => ({
  by: 'stated',
  strengthAbv: about(value, doubt),
});
const byHead = (value: number, low: number, high: number): StrengthMeasurement => ({
  by: 'head-temperature',
  strengthAbv: { value, low, high },
});

describe('the strength of liquids poured together', () => {
  test('is that of one alone, with its own uneven interval', () => {
    const { strengthAbv } = poolLiquids([liquid(30, 0.6, byHead(91, 87, 92.5))]);
    expect(strengthAbv).toEqual({
      value: expect.closeTo(91, 6),
      low: expect.closeTo(87, 6),
      high: expect.closeTo(92.5, 6),
    });
  });

  test('has the spread of a Monte Carlo draw, of readings that have nothing in common and of cuts by one head', () => {
    const random = createRandom('poured together');
    const amounts = [
      [20, 0.5, 90, 1.5],
      [12, 0.5, 55, 2.5],
    ] as const;
    const spread = (isCommon: boolean) => {
      const draws = Array.from({ length: 1500 }, () => {
        const common = random.normal();
        const parts = amounts.map(([ml, mlDoubt, abv, abvDoubt]) => {
          const off = isCommon ? common : random.normal();
          return liquid(ml + mlDoubt * random.normal(), 0, stated(abv + abvDoubt * off, 0));
        });
        return poolLiquids(parts).strengthAbv.value;
      });
      const mean = draws.reduce((sum, value) => sum + value, 0) / draws.length;
      return Math.sqrt(
        draws.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (draws.length - 1),
      );
    };
    const told = (strengthOf: (abv: number, doubt: number) => StrengthMeasurement) =>
      poolLiquids(
        amounts.map(([ml, mlDoubt, abv, abvDoubt]) =>
          liquid(ml, mlDoubt, strengthOf(abv, abvDoubt)),
        ),
      ).strengthUncertaintyAbv;
    const head = (abv: number, doubt: number) =>
      byHead(abv, abv - 1.959964 * doubt, abv + 1.959964 * doubt);
    expect(told(stated) / spread(false)).toBeCloseTo(1, 1);
    expect(told(head) / spread(true)).toBeCloseTo(1, 1);
    // What they share does not average out.
    expect(told(head)).toBeGreaterThan(1.25 * told(stated));
  });
});

test('ethanol of cuts by one head temperature is in doubt by the sum of their doubts, not by its root of squares', () => {
  const cuts = [liquid(20, 0, byHead(90, 88, 92)), liquid(20, 0, byHead(90, 88, 92))];
  const [one] = cuts;
  expect(sumOfLiquids(cuts, 'ethanolG').standardUncertainty).toBeCloseTo(
    2 * (one?.ethanolG.standardUncertainty ?? 0),
    2,
  );
});
