import { expect, test } from 'vitest';
import { createLowestLevel } from '../../../../shared-core/monitor/situation/lowest-level.ts';
import { headAt } from '../words/facts.ts';

const azeotropeC = 77.5;

/** A bulb read second by second, as fast as it moves. */
function seen(bulbC: (timeS: number) => number, untilS: number) {
  const level = createLowestLevel();
  for (let timeS = 0; timeS <= untilS; timeS += 1) {
    level.see(
      {
        ...headAt(bulbC(timeS)),
        bulbRateKPerS: bulbC(timeS) - bulbC(timeS - 1),
        vapourSdK: 0.05,
        rateSdKPerS: 0.001,
        wet: 0.9,
      },
      azeotropeC,
    );
  }
  return [level.lowestC(), level.lowestLaterC()];
}

test('is the mean of the lowest rest, and of the lowest after ten minutes', () => {
  expect(seen((timeS) => (timeS < 700 ? 78 : 78.6), 1400)).toEqual([
    expect.closeTo(78, 6),
    expect.closeTo(78, 1),
  ]);
  const [lowest, later] = seen((timeS) => (timeS < 300 ? 74 : 78.6), 1400);
  expect(lowest).toBeCloseTo(74, 6);
  expect(later).toBeCloseTo(78.6, 6);
});

test('is none for a bulb that cools, warms up, or is far from vapour', () => {
  expect(seen((timeS) => 90 - 0.01 * timeS, 1000)[0]).toBeNull();
  expect(seen((timeS) => 66 + 0.05 * timeS, 600)[0]).toBeNull();
  expect(seen(() => 60, 1000)[0]).toBeNull();
});

test('is held for 20 s by the first three, then for a minute: a short dip later on is no level', () => {
  // A dip is slow enough at both ends to be no cooling: steps of the head are not what is looked at here.
  const dipping = (dipsAtS: number) => {
    const level = createLowestLevel();
    for (let timeS = 0; timeS < 300; timeS += 1) {
      const isDip = timeS >= dipsAtS && timeS < dipsAtS + 20;
      const head = { ...headAt(isDip ? 77.8 : 78.5), bulbRateKPerS: 0 };
      level.see({ ...head, vapourSdK: 0.05, rateSdKPerS: 0.001, wet: 0.9 }, azeotropeC);
    }
    return level.lowestC();
  };
  expect(dipping(40)).toBeCloseTo(77.8, 6);
  expect(dipping(60)).toBeCloseTo(78.5, 6);
});
