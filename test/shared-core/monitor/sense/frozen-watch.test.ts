import { expect, test } from 'vitest';
import { createFrozenWatch } from '../../../../shared-core/monitor/sense/frozen-watch.ts';

/** How many readings equal to the last of `before` it takes until a probe counts as frozen; null where a day's do not. */
function equalsUntilFrozen(before: readonly number[]): number | null {
  const watch = createFrozenWatch();
  for (const value of before) expect(watch.see(value)).toBe(false);
  const last = before.at(-1) ?? 0;
  for (let count = 1; count <= 100_000; count += 1) if (watch.see(last)) return count;
  return null;
}

/** A first step of one digit, then so many that turn back by three. */
const flickering = (count: number): number[] =>
  Array.from({ length: count }, (_, index) => (index === 0 ? 0 : index % 2 === 1 ? 0.1 : 0.4));

const rising = (count: number, fromC: number): number[] =>
  Array.from({ length: count }, (_, index) => fromC + 0.1 * index);

/**
 * Chance of n equal readings after so many turns and others: the mean of (1 − p/2)ⁿ over p ~ Beta(turns + ½, others + ½), by the midpoints
 * of u = √p.
 */
function chanceOf(n: number, turns: number, others: number): number {
  let [sum, all] = [0, 0];
  for (let step = 0; step < 20_000; step += 1) {
    const square = ((step + 0.5) / 20_000) ** 2;
    const density = Math.exp(turns * Math.log(square) + (others - 0.5) * Math.log1p(-square));
    all += density;
    sum += density * (1 - square / 2) ** n;
  }
  return sum / all;
}

/** The first n with a chance below one in a thousand million. */
function unbelievable(turns: number, others: number): number {
  let n = 1;
  while (chanceOf(n, turns, others) >= 1e-9) n += 1;
  return n;
}

test('a probe that used to flicker is frozen once so long a repetition is as unlikely as one in a thousand million', () => {
  // Of 100 readings all but the first three turn back.
  expect(unbelievable(97, 3)).toBe(32);
  expect(equalsUntilFrozen(flickering(100))).toBe(32);
});

test('one that flickers less often is given longer', () => {
  const seldom = flickering(60).flatMap((value) => [value, value, value, value]);
  // Every fourth reading is another one: 57 turns among what is seen up to the last step, 237 readings.
  expect(equalsUntilFrozen(seldom)).toBe(unbelievable(57, 180) - 3);
});

test('a steady rise and a coarse probe that toggles between two digits may stand still for ever', () => {
  const toggling = Array.from({ length: 200 }, (_, index) => 20 + 0.1 * (index % 2));
  expect([equalsUntilFrozen(rising(200, 20)), equalsUntilFrozen(toggling)]).toEqual([null, null]);
});

test('the fewer readings it has given, the longer it is believed; one that stops after ten is found in some minutes', () => {
  expect([39, 20, 10].map((count) => equalsUntilFrozen(flickering(count)))).toEqual([
    unbelievable(36, 3),
    unbelievable(17, 3),
    unbelievable(7, 3),
  ]);
  expect(unbelievable(7, 3)).toBeLessThan(240);
});

test('who plugged a probe in and held it for a moment may leave it lying for half an hour', () => {
  expect(equalsUntilFrozen(flickering(6))).toBeGreaterThan(1800);
  expect(equalsUntilFrozen(flickering(4))).toBeNull();
});

test('a flicker of long ago fades: it counts as of three hundred readings', () => {
  // 298 turns with that into the rise, among 301 readings; each of 599 more takes a three-hundred-first from them.
  const turns = 298 * (300 / 301) ** 599;
  expect(equalsUntilFrozen([...flickering(300), ...rising(600, 0.5)])).toBe(
    unbelievable(turns, 301 - turns),
  );
});

test('crumbs of floating point are no digit of the probe', () => {
  const crumbs = [
    20,
    20 + 1e-9,
    ...Array.from({ length: 200 }, (_, index) => 20 + 0.1 * (index % 2)),
  ];
  expect(equalsUntilFrozen(crumbs)).toBeNull();
});
