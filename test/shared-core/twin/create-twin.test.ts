import { describe, expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { courseAt, emptyCourse, runCourse } from '../../../shared-core/twin/batch-course.ts';
import { createTwin } from '../../../shared-core/twin/create-twin.ts';
import type { Observation } from '../../../shared-core/twin/observations.ts';
import type { StillGuess } from '../../../shared-core/twin/still-guess.ts';

const truth: StillGuess = {
  plates: 5.5,
  refluxRatio: 3,
  lossShare: 0.7,
  vapourMolPerS: 0.0013,
  strengthAbv: 9,
  holdUpMol: 0.02,
  biasK: 0.2,
};
const limitHeightK = 5.3;
const course = emptyCourse();
runCourse(truth, 350, 12, course);
const limitS = course.stepS * course.headHeightK.findIndex((height) => height > limitHeightK);

function twinAfter(untilS: number, volumes: boolean) {
  const settings = {
    ...defaultRunSettings,
    charge: { volumeMl: 350, strengthAbv: 9, standardUncertaintyAbv: 0.3 },
  };
  const twin = createTwin(settings, { tookS: null, eased: null }, 0.25, limitHeightK);
  for (let boiledS = 180; boiledS <= untilS; boiledS += 60) {
    const value = courseAt(course, course.headHeightK, boiledS) + truth.biasK;
    twin.see({ kind: 'head', boiledS, value, sd: 0.05 });
    if (volumes && boiledS % 300 === 0) {
      const ml = courseAt(course, course.distillateMl, boiledS);
      twin.see({ kind: 'volume', boiledS, value: ml, sd: 0.5 } satisfies Observation);
    }
    twin.update();
  }
  return twin.outlook(untilS, limitHeightK, null);
}

describe('createTwin', () => {
  test('finds the end of a run of its own kind within its interval', () => {
    const halfS = 60 * Math.round(limitS / 120);
    const { limitInS } = twinAfter(halfS, true);
    expect(limitInS.low).toBeLessThan(limitS - halfS);
    expect(limitInS.high).toBeGreaterThan(limitS - halfS);
    expect(Math.abs(limitInS.value / (limitS - halfS) - 1)).toBeLessThan(0.25);
  });

  test('volume readings narrow the range, and it says so before they are made', () => {
    const halfS = 60 * Math.round(limitS / 120);
    const without = twinAfter(halfS, false);
    const withThem = twinAfter(halfS, true);
    const width = (item: typeof without): number => item.limitInS.high - item.limitInS.low;
    expect(width(withThem)).toBeLessThan(0.7 * width(without));
    expect(without.volumeWouldNarrow).toBeGreaterThan(withThem.volumeWouldNarrow);
  });

  test('gives the same numbers every time', () => {
    expect(twinAfter(600, true)).toEqual(twinAfter(600, true));
  });

  test('easing the heat makes the main fraction last longer', () => {
    const { limitInS, limitInIfEasedS } = twinAfter(900, true);
    expect(limitInIfEasedS.value).toBeGreaterThan(limitInS.value);
  });
});
