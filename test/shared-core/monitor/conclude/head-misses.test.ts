import { expect, test } from 'vitest';
import { createHeadMisses } from '../../../../shared-core/monitor/conclude/head-misses.ts';

/** With the model's own 0.1 K, a spread of 0.5 K is expected where the twin is this sure and the reading this good. */
const sure = { mean: 1, sd: 0.3 };
const readingSdK = Math.sqrt(0.5 ** 2 - 0.3 ** 2 - 0.1 ** 2);

const lookAt = (timeS: number, heightK: number) => ({
  timeS,
  boiledS: timeS - 900,
  heightK,
  heightSdK: readingSdK,
});

test('nothing has been missed before something was expected', () => {
  const misses = createHeadMisses();
  expect([misses.count(), misses.squares(), misses.usualK()]).toEqual([0, 0, 0]);
  misses.see(lookAt(60, 9), sure);
  expect([misses.count(), misses.squares(), misses.usualK()]).toEqual([0, 0, 0]);
});

test('a head is missed by what it differs from what was expected a minute before, in kelvins and in standard deviations', () => {
  const misses = createHeadMisses();
  misses.see(lookAt(60, 1), sure);
  misses.see(lookAt(120, 2), sure);
  misses.see(lookAt(180, 0.5), sure);
  expect(misses.count()).toBe(2);
  expect(misses.squares()).toBeCloseTo(2 ** 2 + 1 ** 2, 9);
  expect(misses.usualK()).toBeCloseTo(Math.sqrt((1 + 0.25) / 2), 9);
});

test('after a while without a look nothing was expected of the next one', () => {
  const misses = createHeadMisses();
  misses.see(lookAt(60, 1), sure);
  misses.see(lookAt(180, 9), sure);
  expect(misses.count()).toBe(0);
  misses.see(lookAt(240, 1), sure);
  expect(misses.count()).toBe(1);
});

test('one look that is wildly off is no more than one look, and the last twenty count', () => {
  const misses = createHeadMisses();
  misses.see(lookAt(0, 1), sure);
  misses.see(lookAt(60, 401), sure);
  expect(misses.squares()).toBe(8 ** 2);
  for (let minute = 2; minute <= 21; minute += 1) misses.see(lookAt(60 * minute, 1), sure);
  expect([misses.count(), misses.squares()]).toEqual([20, 0]);
});

test('what was expected because of a mark that has been withdrawn counts no more, what was before it does', () => {
  const misses = createHeadMisses();
  misses.see(lookAt(960, 1), sure);
  misses.see(lookAt(1020, 1.5), sure);
  misses.see(lookAt(1080, 9), sure);
  misses.forgetFrom(120);
  expect([misses.count(), misses.squares()]).toEqual([1, expect.closeTo(1, 9)]);
  // The last look was one of those.
  misses.see(lookAt(1140, 9), sure);
  expect(misses.count()).toBe(1);
});
