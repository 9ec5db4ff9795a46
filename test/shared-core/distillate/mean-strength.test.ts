import { describe, expect, test } from 'vitest';
import { distillateCourse } from '../../../shared-core/distillate/distillate-course.ts';
import { meanStrength } from '../../../shared-core/distillate/mean-strength.ts';

const point = (volumeMl: number, value: number, stretch: number | null = null) => ({
  volumeMl,
  abv: { value, low: value - 2, high: value + 1 },
  stretch,
});

describe('the mean strength between two volumes', () => {
  const course = [point(2, 90), point(6, 80), point(10, 50)];

  test('is the area under the course, as strong before and after it as at its ends', () => {
    // 2 mL of 90, 4 mL from 90 to 80, 4 mL from 80 to 50, 2 mL of 50 % vol.
    const mean = (180 + 340 + 260 + 100) / 12;
    expect(meanStrength(course, 0, 12)).toEqual({
      value: expect.closeTo(mean, 9),
      low: expect.closeTo(mean - 2, 9),
      high: expect.closeTo(mean + 1, 9),
    });
    expect(meanStrength(course, 4, 8).value).toBeCloseTo((2 * 82.5 + 2 * 72.5) / 4, 9);
    expect(meanStrength(course, 5, 5).value).toBeCloseTo(82.5, 9);
  });

  test('of two parts is that of the whole, weighed by their volumes', () => {
    const [first, second] = [meanStrength(course, 0, 5), meanStrength(course, 5, 12)];
    expect((5 * first.value + 7 * second.value) / 12).toBeCloseTo(
      meanStrength(course, 0, 12).value,
      9,
    );
  });

  test('is less sure where the volume between was not read, by as much as a leaning flow would move it', () => {
    // Straight from 90 to 60 % vol in one stretch: ∫ (2τ − 1) q dV/V = (60 − 90)/6 = −5 % vol; 0.3 of it, times 1.96.
    const one = meanStrength([point(0, 90, 0), point(10, 60, 0)], 0, 10);
    expect(one.value).toBeCloseTo(75, 9);
    expect(one.low).toBeCloseTo(75 - Math.hypot(2, 1.96 * 1.5), 2);
    expect(one.high).toBeCloseTo(75 + Math.hypot(1, 1.96 * 1.5), 2);
    // Read half-way: two stretches of (half the volume) × (half the fall)/6 each, independent.
    const two = meanStrength([point(0, 90, 0), point(5, 75, 0), point(10, 60, 1)], 0, 10);
    expect(two.low).toBeCloseTo(75 - Math.hypot(2, 1.96 * 0.3 * 1.25 * Math.SQRT2), 2);
    // Points within a stretch change nothing where they lie on the same line.
    expect(
      meanStrength([point(0, 90, 0), point(4, 78, 0), point(10, 60, 0)], 0, 10).low,
    ).toBeCloseTo(one.low, 9);
  });

  test('between two volumes within a stretch, or beyond the last, is as unsure as what was not read of it makes it', () => {
    const straight = [point(0, 90, 0), point(10, 60, 0)];
    // The later half, from 75 to 60 % vol: (60 − 75)/6 = −2.5 % vol.
    expect(meanStrength(straight, 5, 10).low).toBeCloseTo(67.5 - Math.hypot(2, 1.96 * 0.75), 2);
    // 2 mL more of 60 % vol: ∫ (v/6 − 1) q dv = −166.67 + 100 over 12 mL.
    expect(meanStrength(straight, 0, 12).low).toBeCloseTo(
      72.5 - Math.hypot(2, (1.96 * 0.3 * 66.667) / 12),
      2,
    );
    // The end of what is asked lies in the first stretch: what comes after it says nothing of it.
    const alone = [point(0, 90, 0), point(2, 84, 0), point(5, 75, 0)];
    expect(meanStrength([...alone, point(10, 60, 1)], 0, 3)).toEqual(meanStrength(alone, 0, 3));
  });

  test('never leaves the scale', () => {
    const { low, high } = meanStrength([point(0, 99.8, 0), point(1, 0.5, 0)], 0, 0.001);
    expect([low >= 0, high]).toEqual([true, 100]);
  });
});

test('volumes read move the mean to where most came over, whatever the clock says', () => {
  const strengths = Array.from({ length: 11 }, (_, minute) => {
    const value = 90 - 3 * minute;
    return { timeS: 300 + 60 * minute, abv: { value, low: value - 2, high: value + 1 } };
  });
  const read = (timeS: number, volumeMl: number) =>
    ({ kind: 'mark', timeS, markId: timeS, mark: { type: 'volume-read', volumeMl } }) as const;
  const course = (inputs: readonly ReturnType<typeof read>[]) =>
    distillateCourse({
      inputs,
      arrivedS: 300,
      untilS: 900,
      receivers: [
        {
          toS: 900,
          amount: { by: 'volume', volumeMl: { value: inputs.at(-1)?.mark.volumeMl ?? 20 } },
        },
      ],
      dripRateMlPerMin: null,
      strengths,
      gone: [],
    })!;
  const mean = (inputs: readonly ReturnType<typeof read>[]) =>
    meanStrength(course(inputs).points, 0, 20).value;
  // 18 of 20 mL while it fell from 90 to 75 % vol, 2 mL from 75 to 60 % vol; within each a little more of what is strong.
  const early = (18 * 82.5 + 2 * 67.5) / 20;
  const late = (2 * 82.5 + 18 * 67.5) / 20;
  const found = [mean([read(600, 18), read(900, 20)]), mean([read(600, 2), read(900, 20)])];
  expect(found[0]! - early).toBeGreaterThan(0);
  expect(found[0]! - early).toBeLessThan(0.7);
  expect(found[1]! - late).toBeGreaterThan(0);
  expect(found[1]! - late).toBeLessThan(0.7);
});
