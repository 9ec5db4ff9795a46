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

/** The first n with (1 − p/2)ⁿ below one in a thousand million. */
const unbelievable = (p: number): number => Math.ceil(Math.log(1e-9) / Math.log(1 - p / 2));

test('a probe that used to flicker is frozen once so long a repetition is as unlikely as one in a thousand million', () => {
  // Of 100 readings all but the first three turn back.
  expect(unbelievable(0.97)).toBe(32);
  expect(equalsUntilFrozen(flickering(100))).toBe(32);
});

test('one that flickers less often is given longer', () => {
  const seldom = flickering(60).flatMap((value) => [value, value, value, value]);
  // Every fourth reading is another one: 57 turns among what is seen up to the last step, 237 readings.
  expect(equalsUntilFrozen(seldom)).toBe(unbelievable(57 / 237) - 3);
});

test('a steady rise and a coarse probe that toggles between two digits may stand still for ever', () => {
  const toggling = Array.from({ length: 200 }, (_, index) => 20 + 0.1 * (index % 2));
  expect([equalsUntilFrozen(rising(200, 20)), equalsUntilFrozen(toggling)]).toEqual([null, null]);
});

test('before forty readings nobody knows how a probe flickers', () => {
  expect([equalsUntilFrozen(flickering(39)), equalsUntilFrozen(flickering(40))]).toEqual([
    null,
    unbelievable(37 / 40),
  ]);
});

test('a flicker of long ago fades: it counts as of three hundred readings', () => {
  // 298 turns with that into the rise, among 301 readings; each of 599 more takes a three-hundred-first from them.
  const turns = 298 * (300 / 301) ** 599;
  expect(equalsUntilFrozen([...flickering(300), ...rising(600, 0.5)])).toBe(
    unbelievable(turns / 301),
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
