import { describe, expect, test } from 'vitest';
import { judgeFerment } from '../../../shared-core/ferment/judge-ferment.ts';
import { createRandom } from '../../../shared-core/random/create-random.ts';
import { standardFromNinety } from '../../../shared-core/uncertainty/index.ts';
import { readingAt } from './support/at-hour.ts';

const litre = { volumeMl: 1000, sugarG: null };
/** A week that went at the usual speed, and one that was over in four days. */
const weeks = {
  steady: [
    [0, 1.06],
    [24, 1.048],
    [48, 1.03],
    [72, 1.016],
    [96, 1.006],
    [120, 1.0],
    [144, 0.997],
    [167, 0.996],
  ],
  quick: [
    [0, 1.06],
    [20, 1.05],
    [44, 1.02],
    [68, 1.002],
    [92, 0.997],
    [116, 0.996],
    [140, 0.996],
    [164, 0.996],
  ],
} as const;

/** A week in which one gravity is far off, as a slip of the pen. */
const slipped = [
  [0, 1.06],
  [20, 1.05],
  [44, 1.02],
  [68, 1.07],
  [92, 1.0],
  [116, 0.998],
] as const;

/** The same log, its entries up to a minute later, each by as much as chance says. */
function variantsOf(week: readonly (readonly [number, number])[], count: number) {
  return Array.from({ length: count }, (_, variant) => {
    const random = createRandom(`variant ${variant}`);
    return week.map(([timeH, gravity], entry) =>
      readingAt(entry === 0 ? timeH : timeH + random.uniform() / 60, { gravity }),
    );
  });
}
/** Twenty judgements of a week, on a machine that has other work to do. */
const aFewMinutes = { timeout: 300_000 };

describe('one log whose entries are told a minute earlier or later', () => {
  test.each(['steady', 'quick'] as const)(
    'of a %s week gives the same strength, uncertainty and ends',
    aFewMinutes,
    (week) => {
      const strengths = variantsOf(weeks[week], 20).map(
        (log) => judgeFerment(log, litre).strengthAbv!,
      );
      const uncertainties = strengths.map(standardFromNinety);
      expect(Math.max(...uncertainties) / Math.min(...uncertainties)).toBeLessThan(1.35);
      // [% vol]
      for (const end of ['low', 'value', 'high'] as const) {
        const values = strengths.map((strength) => strength[end]);
        const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
        expect(Math.max(...values.map((value) => Math.abs(value - mean)))).toBeLessThan(0.2);
      }
    },
  );

  test('doubts a gravity that was mistyped in each of them', aFewMinutes, () => {
    for (const log of variantsOf(slipped, 12)) {
      const { problems, strengthAbv } = judgeFerment(log, litre);
      expect(problems.join()).toContain('The gravity 1.070 after 68 h');
      expect(strengthAbv?.high).toBeLessThan(9.6);
    }
  });
});
