import { describe, expect, test } from 'vitest';
import { batchByVolume } from '../../../shared-core/by-volume/batch-by-volume.ts';
import { expectedAt } from '../../../shared-core/by-volume/expected-at.ts';

const course = [
  { volumeMl: 0, headC: 80, strengthAbv: 90 },
  { volumeMl: 10, headC: 84, strengthAbv: 80 },
  { volumeMl: 20, headC: 90, strengthAbv: 60 },
];

describe('what a course expects at a volume', () => {
  test('lies on a straight line between two points, and is a point where there is one', () => {
    expect(
      [0, 2.5, 10, 15, 20, 20 + 1e-12].map((volumeMl) => expectedAt(course, volumeMl)),
    ).toEqual(
      [
        [0, 80, 90],
        [2.5, 81, 87.5],
        [10, 84, 80],
        [15, 87, 70],
        [20, 90, 60],
        [20, 90, 60],
      ].map(([volumeMl, headC, strengthAbv]) => ({
        volumeMl: expect.closeTo(volumeMl!, 9),
        headC: expect.closeTo(headC!, 9),
        strengthAbv: expect.closeTo(strengthAbv!, 9),
      })),
    );
  });

  test('is nothing beyond its end or without a course', () => {
    expect([expectedAt(course, 20.1), expectedAt(null, 5), expectedAt([], 5)]).toEqual([
      null,
      null,
      null,
    ]);
  });

  test('is within 0.05 K and 0.1 % vol of a course worked out to that very volume', () => {
    const batch = { chargeMl: 100, chargeAbv: 20, pressureKPa: 101.325, column: null };
    const whole = batchByVolume({ ...batch, upToMl: 40 });
    for (const volumeMl of [0.5, 7.3, 19.9, 31.1, 39.5]) {
      const exact = batchByVolume({ ...batch, upToMl: volumeMl }).at(-1)!;
      const read = expectedAt(whole, volumeMl)!;
      expect(Math.abs(read.headC - exact.headC)).toBeLessThan(0.05);
      expect(Math.abs(read.strengthAbv - exact.strengthAbv)).toBeLessThan(0.1);
    }
  });
});
