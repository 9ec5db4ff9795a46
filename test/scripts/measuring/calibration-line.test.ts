import { describe, expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import {
  calibrationLine,
  calibrationVerdict,
} from '../../../scripts/measuring/calibration-line.ts';
import { placeInInterval } from '../../../scripts/measuring/place-in-interval.ts';
import { placeOfTimeLeft } from '../../../scripts/measuring/place-of-time-left.ts';
import { coverageFactor90 } from '../../../shared-core/uncertainty/coverage-factor.ts';

/** Places of truths drawn about their value with a spread, in intervals told of a spread of 1. */
function drawnPlaces({ spread = 1, offset = 0, runs = 200, sharedShare = 0 } = {}): number[][] {
  const random = createRandom('calibration');
  return Array.from({ length: runs }, () => {
    const shared = random.normal();
    return Array.from({ length: 10 }, () => {
      const own = random.normal();
      const deviate = Math.sqrt(sharedShare) * shared + Math.sqrt(1 - sharedShare) * own;
      const told = { low: 5 - coverageFactor90, value: 5, high: 5 + coverageFactor90 };
      return placeInInterval(5 + offset + spread * deviate, told, coverageFactor90);
    });
  });
}

describe('where truths fall in what was told', () => {
  test('the ends of a 90 % range lie at a twentieth from either side, however skewed it is', () => {
    const told = { low: 10, value: 12, high: 30 };
    const placed = [10, 12, 30].map((truth) => placeInInterval(truth, told, coverageFactor90));
    expect(placed.map((place) => Number(place.toFixed(3)))).toEqual([0.05, 0.5, 0.95]);
  });

  test('a truth beyond an interval without width lies at its outer end', () => {
    const told = { low: 7, value: 7, high: 7 };
    expect([6, 7, 8].map((truth) => placeInInterval(truth, told, coverageFactor90))).toEqual([
      0, 0.5, 1,
    ]);
  });

  test('an end that comes in half or twice the time told falls as far out on either side', () => {
    const told = { value: 600, low: 300, high: 1200 };
    const [half, twice] = [300, 1200].map((leftS) => placeOfTimeLeft(leftS, told));
    expect(half).toBeCloseTo(0.05, 3);
    expect(twice).toBeCloseTo(0.95, 3);
  });

  test('intervals that are right, too wide, too narrow and off are called what they are', () => {
    expect({
      right: calibrationVerdict(drawnPlaces()),
      wide: calibrationVerdict(drawnPlaces({ spread: 0.6 })),
      narrow: calibrationVerdict(drawnPlaces({ spread: 1.6 })),
      off: calibrationVerdict(drawnPlaces({ offset: -0.5 })),
    }).toEqual({
      right: 'as told',
      wide: 'too wide',
      narrow: 'too narrow',
      off: 'biased, truth below',
    });
  });

  test('a few runs whose errors hang together prove nothing, many do', () => {
    const drawn = (runs: number) =>
      calibrationVerdict(drawnPlaces({ runs, offset: 0.4, sharedShare: 1 }));
    expect([drawn(5), drawn(12), drawn(300)]).toEqual([
      'too few runs to tell',
      'as told',
      'biased, truth above',
    ]);
  });

  test('the line draws ten bins and counts truths and runs', () => {
    const places = [[0.05, 0.15], [], [0.15, 0.95]];
    expect(calibrationLine('the end', places)).toBe(
      'the end: ██▁▁▁▁▁▁▁█  25 50 0 0 0 0 0 0 0 25 %  n 4 of 2 runs: too few runs to tell',
    );
    expect(calibrationLine('nobody', [[]])).toBe('nobody: nothing told');
  });
});
