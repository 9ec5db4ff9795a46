import { describe, expect, test } from 'vitest';
import { createRandom, defaultRunSettings } from '#shared-core';
import {
  createHeadTracker,
  type HeadSurroundings,
} from '../../../../shared-core/monitor/sense/head-tracker.ts';

const around: HeadSurroundings = {
  plateauC: null,
  waterC: 99.3,
  potC: null,
  holding: false,
  vapourGuessC: 78,
  vapourGuessSdK: 1,
  possible: () => 1,
};

/** A tracker that takes a reading a second, and nothing in seconds that are null. */
function tracked(surroundings: Partial<HeadSurroundings> = {}) {
  const tracker = createHeadTracker(defaultRunSettings);
  let timeS = 0;
  const second = (valueC: number | null) => {
    timeS += 1;
    const binned = valueC === null ? null : { timeS, value: valueC, count: 1, spread: 0 };
    return tracker.second(timeS, binned, { ...around, ...surroundings });
  };
  const rest = (seconds: number, valueC: (second: number) => number | null = () => 78) => {
    for (let count = 0; count < seconds; count += 1) second(valueC(count));
  };
  return { second, rest, noise: tracker.noise };
}

const observed = (
  { second }: ReturnType<typeof tracked>,
  ...valuesC: readonly (number | null)[]
): readonly (number | null)[] => valuesC.map((valueC) => second(valueC).observedC);

describe('the head, second by second', () => {
  test('is none before its first reading, and begins where that is', () => {
    const tracker = tracked();
    expect(tracker.second(null)).toEqual({ observedC: null, head: null, fault: null });
    const first = tracker.second(21.3);
    expect([first.observedC, first.head?.bulbC]).toEqual([21.3, expect.closeTo(21.3, 9)]);
  });

  test('goes on without a reading by what was known, and nearer to each that comes', () => {
    const tracker = tracked();
    tracker.rest(60);
    const without = tracker.second(null);
    expect([without.observedC, without.head?.bulbC]).toEqual([null, expect.closeTo(78, 1)]);
    const higher = tracker.second(78.1).head?.bulbC ?? 0;
    expect(higher).toBeGreaterThan(without.head?.bulbC ?? 0);
    expect(higher).toBeLessThan(78.1);
  });

  test('sets a reading aside that it did not expect, until the third of its kind; then it is there', () => {
    const tracker = tracked();
    tracker.rest(60);
    expect(observed(tracker, 79.2, 78, 79.2, 79.2, 79.2)).toEqual([null, 78, null, null, 79.2]);
    expect(tracker.second(79.2).head?.bulbC).toBeCloseTo(79.2, 0);
  });

  test.each([0, 3, 5])(
    'believes a noisy probe as little, on whatever second (%s) of ten its readings come',
    (phaseS) => {
      const tracker = createHeadTracker(defaultRunSettings);
      const random = createRandom('a noisy probe');
      const holding = { ...around, holding: true };
      const readAt = (timeS: number, value: number) =>
        tracker.second(timeS, { timeS, value, count: 1, spread: 0 }, holding).head?.bulbC ?? 0;
      let bulbC = 78;
      for (let timeS = phaseS; timeS < phaseS + 3000; timeS += 1) {
        if (timeS % 10 === phaseS) bulbC = readAt(timeS, 78 + 0.3 * random.normal());
        else tracker.second(timeS, null, holding);
      }
      expect(tracker.noise().whiteSdK).toBeGreaterThan(0.2);
      // Of half a kelvin a probe that is right to some hundredths would have moved the bulb by most of it.
      expect(readAt(phaseS + 3000, bulbC + 0.5) - bulbC).toBeLessThan(0.3);
    },
  );

  test('takes no reading that jumps to and fro for a new state', () => {
    const tracker = tracked();
    tracker.rest(60);
    expect(observed(tracker, 79.2, 76.8, 79.2, 76.8)).toEqual(Array(4).fill(null));
  });

  test('takes a jump off a plateau for the probe’s own step, and the step off all that follows', () => {
    const tracker = tracked({ plateauC: 78 });
    tracker.rest(60);
    expect(observed(tracker, 84, 84)).toEqual([null, null]);
    const slipped = tracker.second(84);
    expect([slipped.observedC, slipped.fault]).toEqual([expect.closeTo(78, 1), 'step']);
    expect(tracker.second(84.05).observedC).toBeCloseTo(78.05, 1);
  });

  test('forgets where the bulb was after half a minute without a reading: what comes then is no jump', () => {
    const resumedAfter = (seconds: number) => {
      const tracker = tracked({ plateauC: 78 });
      tracker.rest(60);
      tracker.rest(seconds, () => null);
      // Steps, and then the filter, need three readings each before they take up what they did not expect.
      return observed(tracker, 98, 98, 98);
    };
    expect([resumedAfter(27).at(-1), resumedAfter(30).at(-1)]).toEqual([expect.closeTo(78, 0), 98]);
  });
});

describe('the noise of the probe', () => {
  const noisy = (holding: boolean) => {
    const random = createRandom('tracker');
    const tracker = tracked({ holding });
    tracker.rest(900, () => 78 + 0.2 * random.normal());
    return tracker.noise().whiteSdK;
  };

  test('is learned while the head holds, and not from a head on its way', () => {
    expect(noisy(true)).toBeCloseTo(0.2, 1);
    expect(noisy(false)).toBe(tracked().noise().whiteSdK);
  });

  test('is not learned from what lies before and after a while in which the head did not hold', () => {
    const surroundings = { holding: true };
    const tracker = tracked(surroundings);
    tracker.rest(100);
    const before = tracker.noise();
    surroundings.holding = false;
    // Half a minute, in which the head rises by 0.3 K: so far apart holding readings are compared.
    tracker.rest(31, (second) => 78 + 0.01 * second);
    surroundings.holding = true;
    expect(tracker.second(78.3).observedC).toBe(78.3);
    expect(tracker.noise()).toEqual(before);
    tracker.second(78.3);
    expect(tracker.noise()).not.toEqual(before);
  });
});
