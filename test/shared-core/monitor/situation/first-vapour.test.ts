import { describe, expect, test } from 'vitest';
import { createFirstRest } from '../../../../shared-core/monitor/situation/first-rest.ts';
import { createVapourArrival } from '../../../../shared-core/monitor/situation/vapour-arrival.ts';
import type { HeadState } from '../../../../shared-core/monitor/situation/vapour-filter.ts';

const azeotropeC = 78;

function bulb(bulbC: number): HeadState {
  return {
    bulbC,
    bulbRateKPerS: 0,
    vapourC: 78,
    vapourSdK: 0.2,
    rateKPerS: 0,
    rateSdKPerS: 0.01,
    wet: 1,
  };
}

describe('the first vapour', () => {
  test('arrives 15 K below the azeotrope and bathes the bulb 5 K below it', () => {
    const arrival = createVapourArrival();
    [50, 63, 63.1, 70, 72.9, 73, 78].forEach((bulbC, index) => {
      arrival.see(10 * index, bulb(bulbC), 0.9, azeotropeC);
    });
    expect([arrival.arrivedS(), arrival.bathedS()]).toEqual([20, 50]);
    // 2.2 times the 30 s from arriving to bathed, a minute at most.
    expect(arrival.wetBeforeS()).toBe(60);
  });

  test('of a quick front was there for 2.2 times as long as the last third of the way took', () => {
    const arrival = createVapourArrival();
    arrival.see(20, bulb(64), 0.9, azeotropeC);
    arrival.see(30, bulb(74), 0.9, azeotropeC);
    expect(arrival.wetBeforeS()).toBe(22);
  });

  test('is none while the filter does not believe in it, however warm the bulb', () => {
    const arrival = createVapourArrival();
    arrival.see(20, bulb(78), 0.5, azeotropeC);
    expect([arrival.arrivedS(), arrival.bathedS(), arrival.wetBeforeS()]).toEqual([null, null, 0]);
  });
});

describe('the first rest', () => {
  const rests = (rateKPerS: number, wet: number, seconds: number, wetFromS = 0) => {
    const rest = createFirstRest();
    return Array.from({ length: seconds }, (_, index) =>
      rest.see(rateKPerS, wet, wetFromS + index),
    );
  };

  test('is 20 s of a head that hardly changes, in vapour', () => {
    expect(rests(0.011, 0.9, 20)).toEqual([...Array(19).fill(null), 20]);
    expect(rests(0.012, 0.9, 20)).toEqual(Array(20).fill(null));
    expect(rests(0, 0.5, 20)).toEqual(Array(20).fill(null));
  });

  test('is taken as given after two and a half minutes with vapour', () => {
    expect(rests(0.05, 0.9, 3, 148)).toEqual([null, null, 0]);
  });
});
