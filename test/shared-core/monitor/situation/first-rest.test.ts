import { expect, test } from 'vitest';
import { createFirstRest } from '../../../../shared-core/monitor/situation/first-rest.ts';

type Second = readonly [rateKPerS: number, wet: number, wetS?: number];

/** What is said at the last of such seconds. */
function restAfter(...seconds: readonly Second[]) {
  const rest = createFirstRest();
  return seconds.map(([rateKPerS, wet, wetS = 0]) => rest.see(rateKPerS, wet, wetS)).at(-1);
}
const times = (count: number, ...second: Second) => Array<Second>(count).fill(second);

test('a head in vapour has come to rest once it has changed by less than 0.012 K/s for 20 s', () => {
  expect([
    restAfter(...times(19, 0.0119, 0.51)),
    restAfter(...times(20, 0.0119, 0.51)),
    restAfter(...times(25, -0.0119, 0.51)),
    restAfter(...times(25, 0.012, 0.51)),
    restAfter(...times(25, -0.013, 0.51)),
    restAfter(...times(25, 0, 0.5)),
  ]).toEqual([null, 20, 25, null, null, null]);
});

test('a head that moved, or lost its vapour, rests anew from then on', () => {
  const rested = times(19, 0, 0.9);
  expect([
    restAfter(...rested, [0.02, 0.9], ...rested),
    restAfter(...rested, [0.02, 0.9], ...times(20, 0, 0.9)),
    restAfter(...rested, [0, 0.5], ...rested),
  ]).toEqual([null, 20, null]);
});

test('a head that was in vapour for two and a half minutes counts as held, with as much rest as it had', () => {
  expect([
    restAfter([0.05, 0.9, 149]),
    restAfter([0.05, 0.9, 150]),
    restAfter(...times(5, 0, 0.9), [0, 0.9, 150]),
  ]).toEqual([null, 0, 6]);
});
