import { expect, test } from 'vitest';
import { createVapourArrival } from '../../../../shared-core/monitor/situation/vapour-arrival.ts';
import { factsOf } from '../words/facts.ts';

const azeotropeC = 78;

/** Seconds of a bulb so far below the azeotrope [K], as surely in vapour. */
function arrival(...seconds: readonly (readonly [number, number])[]) {
  const watch = createVapourArrival();
  const { head } = factsOf();
  if (head === null) throw new Error('There is a head.');
  for (const [timeS, [belowK, wet]] of seconds.entries())
    watch.see(timeS, { ...head, bulbC: azeotropeC - belowK }, wet, azeotropeC);
  return [watch.arrivedS(), watch.bathedS(), watch.wetBeforeS()];
}

test('vapour has arrived at a bulb within 15 K of the azeotrope, and bathes it within 5 K, where it is believed to be there', () => {
  expect([
    arrival([15, 0.9], [14, 0.9], [6, 0.9], [5, 0.9]),
    arrival([10, 0.5], [3, 0.5]),
    arrival([10, 0.51], [3, 0.5], [3, 0.51]),
    arrival([20, 0.9]),
  ]).toEqual([
    // The last third of the way took 2 s: 2.2 times as long for all of it.
    [1, 3, 4],
    [null, null, 0],
    [0, 2, 4],
    [null, null, 0],
  ]);
});

test('a bulb that took more than a minute was not in vapour all the while, and nothing later moves what was found', () => {
  const slow = Array.from({ length: 40 }, () => [10, 0.9] as const);
  expect(arrival(...slow, [4, 0.9])).toEqual([0, 40, 60]);
  expect(arrival([10, 0.9], [4, 0.9], [80, 0.9], [10, 0.9], [4, 0.9])).toEqual([0, 1, 2]);
});
