import { describe, expect, test } from 'vitest';
import {
  beginCourse,
  copyCourse,
  courseAt,
  distillateAt,
  emptyCourse,
  flowAt,
  runCourse,
  runTo,
} from '../../../shared-core/twin/batch-course.ts';
import { chargeAmounts } from '../../../shared-core/twin/charge-amounts.ts';
import { equilibriumTables, readTable } from '../../../shared-core/twin/equilibrium-tables.ts';
import type { StillGuess } from '../../../shared-core/twin/still-guess.ts';
import { plainCourse } from './support/plain-course.ts';

const guess: StillGuess = {
  plates: 4.8,
  refluxRatio: 3,
  lossShare: 0.6,
  vapourMolPerS: 0.0012,
  strengthAbv: 10.5,
  holdUpMol: 0.025,
  biasK: 0,
};
const bent = (courseS: number): number =>
  courseS <= 500 ? courseS / 10 : 50 + (courseS - 500) / 50;

describe('a course read at a time', () => {
  test('lies on the line between two entries, at the first before it began, and goes on with its last slope', () => {
    const course = plainCourse({ headHeightK: bent });
    const at = (boiledS: number) => courseAt(course, course.headHeightK, boiledS);
    expect([-50, 0, 250, 525, 1000, 1500].map(at)).toEqual([
      0,
      0,
      25,
      expect.closeTo(50.5, 9),
      60,
      expect.closeTo(70, 9),
    ]);
  });

  test('is its only entry where there is but one', () => {
    const course = plainCourse({ headHeightK: () => 3, distillateMl: () => 0 });
    course.count = 1;
    expect(courseAt(course, course.headHeightK, 700)).toBe(3);
    expect([distillateAt(course, 700), flowAt(course, 700)]).toEqual([0, 0]);
  });

  test('flows as the stretch it is in does, and at either end as the next to it', () => {
    const course = plainCourse({ distillateMl: bent });
    expect([-10, 0, 499, 500, 999, 5000].map((atS) => flowAt(course, atS))).toEqual(
      [0.1, 0.1, 0.1, 0.02, 0.02, 0.02].map((flow) => expect.closeTo(flow, 12)),
    );
  });

  test('goes over beyond its end from its own flow to that of water, two thirds of the way in half an hour', () => {
    const course = plainCourse({ distillateMl: (courseS) => courseS / 10 }, 0.04);
    expect(distillateAt(course, 950)).toBeCloseTo(95, 9);
    expect(distillateAt(course, 1000)).toBeCloseTo(100, 9);
    // 100 mL + 0.04 t + (0.1 − 0.04) τ (1 − e^(−t/τ)), τ = 1800 s.
    expect(distillateAt(course, 2800)).toBeCloseTo(100 + 72 + 108 * (1 - Math.exp(-1)), 9);
    const lateMlPerS = (distillateAt(course, 40_100) - distillateAt(course, 40_000)) / 100;
    expect(lateMlPerS).toBeCloseTo(0.04, 9);
    // A course that is slower than water already gets no slower.
    expect(distillateAt(plainCourse({ distillateMl: () => 7 }, 0.04), 2000)).toBeCloseTo(47, 9);
  });

  test('is the same in a copy, which goes its own way from there', () => {
    const [from, into] = [emptyCourse(), emptyCourse()];
    runCourse(guess, 330, 7, from);
    copyCourse(from, into);
    const { count } = from;
    expect([into.count, into.stepS, into.waterMlPerS]).toEqual([
      count,
      from.stepS,
      from.waterMlPerS,
    ]);
    for (const column of [
      'headHeightK',
      'potHeightK',
      'distillateMl',
      'headMoleFraction',
      'potMoleFraction',
      'potMl',
    ] as const) {
      expect(into[column].subarray(0, count)).toEqual(from[column].subarray(0, count));
    }
    from.headHeightK[0] = -1;
    expect(into.headHeightK[0]).not.toBe(-1);
  });
});

describe('a course as it is run', () => {
  const { ethanolMol } = chargeAmounts(guess.strengthAbv);

  test('begins with the distillate of its reflux ratio, and takes eighty steps for all the ethanol at the first flow', () => {
    const course = emptyCourse();
    runCourse(guess, 330, 7, course);
    const curve = equilibriumTables();
    expect(course.stepS).toBeCloseTo((330 * ethanolMol * 4) / (0.75 * 0.0012) / 80, 9);
    const firstMol = (guess.vapourMolPerS / 4) * course.stepS;
    expect(course.distillateMl[0]).toBe(0);
    expect(course.distillateMl[1]).toBeCloseTo(
      firstMol * readTable(curve, curve.molarVolumeMl, course.headMoleFraction[1] as number),
      9,
    );
  });

  test('stands at each entry where head and pot boil', () => {
    const course = emptyCourse();
    runCourse(guess, 330, 7, course);
    const curve = equilibriumTables();
    for (const at of [0, 5, course.count - 1]) {
      const [head, pot] = [
        course.headMoleFraction[at] as number,
        course.potMoleFraction[at] as number,
      ];
      expect(course.headHeightK[at]).toBe(readTable(curve, curve.dewHeightK, head));
      expect(course.potHeightK[at]).toBe(readTable(curve, curve.boilingHeightK, pot));
    }
    expect(course.potMl[0]).toBeGreaterThan(300);
    expect(course.potMl[0]).toBeLessThan(330);
  });

  test('ends at the first entry, after three, at which the head stands above the height asked for', () => {
    const course = emptyCourse();
    runCourse(guess, 330, 7, course);
    const heights = Array.from(course.headHeightK.subarray(0, course.count));
    expect(heights.at(-1)).toBeGreaterThan(7);
    expect(heights.slice(3, -1).filter((heightK) => heightK > 7)).toEqual([]);
    const weak = emptyCourse();
    runCourse({ ...guess, plates: 0.2, refluxRatio: 0.2 }, 330, 1, weak);
    expect(weak.count).toBe(3);
  });

  test('ends at the first entry with hardly any ethanol left in the pot, however high the head may rise', () => {
    const course = emptyCourse();
    runCourse({ ...guess, strengthAbv: 60, lossShare: 0.05, plates: 1 }, 330, 99, course);
    const left = Array.from(course.potMoleFraction.subarray(0, course.count));
    expect(left.at(-1)).toBeLessThan(2e-4);
    expect(left.slice(0, -1).filter((moleFraction) => moleFraction < 2e-4)).toEqual([]);
  });

  test('ends after 160 entries at the latest', () => {
    const course = emptyCourse();
    runCourse({ ...guess, lossShare: 0 }, 330, 99, course);
    expect(course.count).toBe(160);
  });

  test('gives water by the vapour left once the loss has grown with the heat of the column', () => {
    const flowOfWater = (lossShare: number): number => {
      const course = emptyCourse();
      runCourse({ ...guess, lossShare }, 330, 7, course);
      return course.waterMlPerS;
    };
    // All reflux led back, none lost: a quarter of the vapour, 18.1 mL/mol.
    expect(flowOfWater(0)).toBeCloseTo((0.0012 / 4) * 18.1, 12);
    // 0.45 of the vapour is lost at first, 56 K and the plates' few kelvins above the room; 78 K above it that is 0.45 · 78/56 at most.
    const least = (0.0012 / 4 / 0.55) * (1 - (0.45 * 78) / 56) * 18.1;
    const most = (0.0012 / 4 / 0.55) * (1 - (0.45 * 78) / 61) * 18.1;
    expect(flowOfWater(0.6)).toBeGreaterThan(least);
    expect(flowOfWater(0.6)).toBeLessThan(most);
    expect(flowOfWater(1)).toBeCloseTo(0.03 * 0.0012 * 18.1, 12);
  });

  test('is run only as far as it is read', () => {
    const course = emptyCourse();
    const run = beginCourse(guess, 330, 7, course);
    runTo(run, 2.5 * course.stepS);
    expect(course.count).toBe(6);
    runTo(run, course.stepS);
    expect(course.count).toBe(6);
  });
});
