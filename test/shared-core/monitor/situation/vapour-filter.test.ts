import { expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import { createVapourFilter } from '../../../../shared-core/monitor/situation/vapour-filter.ts';

const noise = { whiteSdK: 0.03, slowSdK: 0.02, slowCorrelationS: 15 };

/** A filter with a lag of 6.5 s that has followed a head: room, vapour from 100 s on, and what comes after 600 s. */
function followed(after: (sinceS: number) => number, forS: number) {
  const random = createRandom('vapour filter');
  const filter = createVapourFilter(6.5, noise);
  filter.restart(20, 82, 6);
  for (let timeS = 1; timeS <= 600 + forS; timeS += 1) {
    const beforeC = timeS < 100 ? 20 : 78.4 - 58.4 * Math.exp(-(timeS - 100) / 6.5);
    filter.predict();
    filter.correct((timeS <= 600 ? beforeC : after(timeS - 600)) + 0.03 * random.normal());
  }
  return filter.state();
}

const coolingC = (sinceS: number): number => 20 + 58.4 * Math.exp(-sinceS / 300);

test('a dip of the bulb does not move what is known of the vapour', () => {
  const { vapourC, wet, bulbC } = followed(coolingC, 60);
  expect(wet).toBeLessThan(0.05);
  expect(bulbC).toBeLessThan(70);
  expect(Math.abs(vapourC - 78.4)).toBeLessThan(0.5);
});

test('a head that begins is as its first reading; of the vapour the guess is known, as well as it was said', () => {
  const filter = createVapourFilter(6.5, noise);
  filter.restart(20, 82, 6);
  const { vapourC, vapourSdK, bulbC, wet, rateKPerS, rateSdKPerS } = filter.state();
  expect([vapourC, vapourSdK, bulbC, rateKPerS]).toEqual([
    expect.closeTo(82, 9),
    expect.closeTo(6, 9),
    expect.closeTo(20, 9),
    0,
  ]);
  expect(wet).toBeCloseTo(0.02, 9);
  expect(rateSdKPerS).toBeGreaterThan(0);
});

test('the belief of the vapour is surer on a plateau than after it, and its range holds the truth', () => {
  const held = followed((sinceS) => 78.4 + 0 * sinceS, 120);
  expect(held.vapourSdK).toBeGreaterThan(0.003);
  expect(held.vapourSdK).toBeLessThan(0.1);
  expect(Math.abs(held.vapourC - 78.4)).toBeLessThan(4 * held.vapourSdK);
  expect(followed(coolingC, 300).vapourSdK).toBeGreaterThan(2 * held.vapourSdK);
});

test('a bulb that rises towards the vapour is known to be wet again within ten seconds', () => {
  const lowestC = coolingC(60);
  const { wet } = followed(
    (sinceS) =>
      sinceS < 60 ? coolingC(sinceS) : 78.4 - (78.4 - lowestC) * Math.exp(-(sinceS - 60) / 6.5),
    70,
  );
  expect(wet).toBeGreaterThan(0.9);
});

test('a pot that weakens is followed without taking the vapour for gone', () => {
  const { wet, vapourC } = followed((sinceS) => 78.4 + sinceS / 60, 240);
  expect(wet).toBeGreaterThan(0.9);
  expect(Math.abs(vapourC - 82.4)).toBeLessThan(0.3);
});

test.each([0, 1, 2, 3, 4])(
  'nothing it is shown makes it lose its numbers, as course %i',
  (course) => {
    const random = createRandom(`vapour filter, anything ${course}`);
    const filter = createVapourFilter(6.5, noise);
    filter.restart(20, 82, 6);
    for (let timeS = 1; timeS <= 20_000; timeS += 1) {
      filter.predict();
      if (timeS % 3 > 0)
        filter.correct(60 + 60 * Math.sin(timeS / (1 + ((timeS + course) % 7))) + random.normal());
    }
    expect(Object.values(filter.state()).every(Number.isFinite)).toBe(true);
  },
);

test('vapour that is hardly possible is believed no more than that, however well it was foretold; what is possible stays', () => {
  const filter = createVapourFilter(6.5, noise);
  filter.restart(20, 82, 6);
  for (let timeS = 1; timeS <= 300; timeS += 1) {
    filter.predict();
    filter.correct(timeS < 100 ? 20 : 78.4 - 58.4 * Math.exp(-(timeS - 100) / 6.5));
  }
  const before = filter.state();
  expect(before.wet).toBeGreaterThan(0.9);
  const asked: number[] = [];
  filter.bound((vapourC) => {
    asked.push(vapourC);
    return 1;
  });
  expect(filter.state()).toEqual(before);
  expect(asked).toEqual([expect.closeTo(78.4, 1)]);
  filter.bound(() => 0.1);
  expect(filter.state().wet).toBeCloseTo(0.1, 9);
});
