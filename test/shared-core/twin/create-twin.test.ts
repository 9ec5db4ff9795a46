import { describe, expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { courseAt, emptyCourse, runCourse } from '../../../shared-core/twin/batch-course.ts';
import { createTwin, type Twin } from '../../../shared-core/twin/create-twin.ts';
import type { Observation } from '../../../shared-core/twin/observations.ts';
import { type OffsetDoubt, potReading } from '../../../shared-core/twin/pot-reading.ts';
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

const atOnce = Number.POSITIVE_INFINITY;

const benchSettings = {
  ...defaultRunSettings,
  charge: { volumeMl: 350, strengthAbv: 9, standardUncertaintyAbv: 0.3 },
};

function newTwin(): Twin {
  return createTwin(benchSettings, { tookS: null, eased: null }, 0.25, limitHeightK);
}

function headAt(boiledS: number): Observation {
  const value = courseAt(course, course.headHeightK, boiledS) + truth.biasK;
  return { kind: 'head', boiledS, value, sd: 0.05 };
}

/** Updates by so many moves at a time; answers in how many goes. */
function updateBy(twin: Twin, moves: number): number {
  let goes = 1;
  while (!twin.update(moves)) goes += 1;
  return goes;
}

function twinAfter(untilS: number, volumes: boolean, moves = atOnce) {
  const twin = newTwin();
  for (let boiledS = 180; boiledS <= untilS; boiledS += 60) {
    twin.see(headAt(boiledS));
    if (volumes && boiledS % 300 === 0) {
      const ml = courseAt(course, course.distillateMl, boiledS);
      twin.see({ kind: 'volume', boiledS, value: ml, sd: 0.5 } satisfies Observation);
    }
    updateBy(twin, moves);
  }
  return twin.outlook(untilS, limitHeightK, null);
}

/** What is left of the run half-way by head and pot, on a bench whose true pressure puts both so much off the scale that was stated. */
function leftByPot(offK: number, doubt: OffsetDoubt): number {
  const halfS = 60 * Math.round(limitS / 120);
  const twin = createTwin(
    benchSettings,
    { tookS: null, eased: null },
    doubt.offsetSdK,
    limitHeightK,
  );
  for (let boiledS = 180; boiledS <= halfS; boiledS += 60) {
    const headK = courseAt(course, course.headHeightK, boiledS) + offK;
    twin.see({ kind: 'head', boiledS, value: headK, sd: 0.05 });
    twin.see(potReading(boiledS, courseAt(course, course.potHeightK, boiledS) + offK, doubt));
  }
  updateBy(twin, atOnce);
  return twin.outlook(halfS, limitHeightK, null).limitInS.value;
}

/** What is left of the run half-way, whose first receiver was taken away at 10 min, measured, unmeasured, or as if nothing had been in it. */
function leftAfterChange(first: 'measured' | 'unmeasured' | 'forgotten'): number {
  const halfS = 60 * Math.round(limitS / 120);
  const firstMl = courseAt(course, course.distillateMl, 600);
  const twin = newTwin();
  for (let boiledS = 180; boiledS <= halfS; boiledS += 60) {
    twin.see(headAt(boiledS));
    if (boiledS === 600 && first === 'unmeasured') {
      twin.see({ kind: 'taken-away', boiledS, bookedMl: 0 });
    }
    if (boiledS % 300 > 0 || boiledS < 900) continue;
    const sinceMl = courseAt(course, course.distillateMl, boiledS) - firstMl;
    const value = first === 'measured' ? firstMl + sinceMl : sinceMl;
    twin.see({ kind: 'booked', boiledS, value, sd: 0.6 });
  }
  updateBy(twin, atOnce);
  return twin.outlook(halfS, limitHeightK, null).limitInS.value;
}

describe('createTwin', () => {
  test('reckons with what was in a receiver that nobody measured, instead of taking the still for a slower one', () => {
    const measured = leftAfterChange('measured');
    const missed = (first: 'unmeasured' | 'forgotten') =>
      Math.abs(Math.log(leftAfterChange(first) / measured));
    expect(missed('unmeasured')).toBeLessThan(missed('forgotten') / 2);
    expect(missed('unmeasured')).toBeLessThan(0.15);
  });

  test('hears pot and head alike on a mountain whose pressure nobody entered, and takes a cool pot for no rich one', () => {
    const unknown = { offsetSdK: Math.hypot(3, 0.5), pressureSdK: 3 };
    const down = leftByPot(0, unknown);
    const up = leftByPot(-5, unknown);
    // Who takes the pot at its word believes in far more spirit.
    const trusting = leftByPot(-5, { ...unknown, pressureSdK: 0 });
    expect(Math.abs(Math.log(up / down))).toBeLessThan(Math.abs(Math.log(trusting / down)) / 2);
    expect(up / down).toBeGreaterThan(0.7);
    expect(up / down).toBeLessThan(1.4);
  });

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

  test('comes to the same bits however few moves it is let make at a time', () => {
    expect(twinAfter(900, true, 37)).toEqual(twinAfter(900, true));
  });

  test('spreads what it learns over as many updates as its moves ask for', () => {
    const twin = newTwin();
    twin.see(headAt(180));
    // Its 320 courses cost two moves each, and the first height of the head more than two rounds of all.
    expect(updateBy(twin, 240)).toBeGreaterThan(5);
    expect(updateBy(twin, 240)).toBe(1);
  });

  test('has no outlook in the middle of an update', () => {
    const twin = newTwin();
    twin.see(headAt(180));
    expect(twin.update(700)).toBe(false);
    expect(() => twin.outlook(180, limitHeightK, null)).toThrow('between its updates');
    updateBy(twin, atOnce);
    expect(twin.outlook(180, limitHeightK, null).limitInS.value).toBeGreaterThan(0);
  });

  test('lets what is seen in the middle of an update wait for the next', () => {
    const [interrupted, undisturbed] = [newTwin(), newTwin()];
    for (const twin of [interrupted, undisturbed]) twin.see(headAt(180));
    expect(interrupted.update(700)).toBe(false);
    interrupted.see(headAt(240));
    for (const twin of [interrupted, undisturbed]) updateBy(twin, atOnce);
    const outlook = interrupted.outlook(240, limitHeightK, null);
    expect(outlook).toEqual(undisturbed.outlook(240, limitHeightK, null));
    undisturbed.see(headAt(240));
    for (const twin of [interrupted, undisturbed]) updateBy(twin, atOnce);
    const next = interrupted.outlook(240, limitHeightK, null);
    expect(next).toEqual(undisturbed.outlook(240, limitHeightK, null));
    expect(next).not.toEqual(outlook);
  });

  test('easing the heat makes the main fraction last longer', () => {
    const { limitInS, limitInIfEasedS } = twinAfter(900, true);
    expect(limitInIfEasedS.value).toBeGreaterThan(limitInS.value);
  });

  test('knows where to stop for a mean strength: the weaker the mean may be, the weaker the last of it', () => {
    const { charge } = defaultRunSettings;
    const settings = {
      ...defaultRunSettings,
      charge: { ...charge, standardUncertaintyAbv: 0.3 },
      stop: { kind: 'purity-against-recovery', leastMeanStrengthAbv: 85 },
    } as const;
    const twin = createTwin(settings, { tookS: null, eased: null }, 0.25, limitHeightK);
    for (const boiledS of [180, 480, 780]) twin.see(headAt(boiledS));
    updateBy(twin, atOnce);
    const stopAt = (leastMean: number | null) =>
      twin.outlook(780, limitHeightK, leastMean).stopMoleFraction;
    const whole = emptyCourse();
    runCourse(truth, 350, 14, whole);
    // By hand on the true still: the first head vapour at which the mean of all so far has fallen below.
    const trulyAt = (leastMean: number): number => {
      let [volumeMl, sum, at] = [0, 0, 0];
      do {
        at += 1;
        const flowMl = whole.distillateMl[at]! - whole.distillateMl[at - 1]!;
        volumeMl += flowMl;
        sum += flowMl * whole.headMoleFraction[at]!;
      } while (at < whole.count - 1 && (at < 3 || sum >= leastMean * volumeMl));
      return whole.headMoleFraction[at]!;
    };
    expect(stopAt(null)).toBeNull();
    for (const leastMean of [0.72, 0.65]) {
      expect(Math.abs(stopAt(leastMean)! - trulyAt(leastMean))).toBeLessThan(0.08);
    }
    expect(stopAt(0.65)!).toBeLessThan(stopAt(0.72)! - 0.02);
  });
});
