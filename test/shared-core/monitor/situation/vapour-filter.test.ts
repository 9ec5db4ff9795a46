import { expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import { createVapourFilter } from '../../../../shared-core/monitor/situation/vapour-filter.ts';
import { changes } from '../../../../shared-core/monitor/situation/vapour-models.ts';

const noise = { whiteSdK: 0.03, slowSdK: 0.02 };

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

/** A filter that has followed a plateau of 78.4 °C for eight minutes. */
function held(lagTimeConstantS = 6.5) {
  const filter = createVapourFilter(lagTimeConstantS, noise);
  filter.restart(20, 82, 6);
  for (let timeS = 1; timeS <= 600; timeS += 1) {
    filter.predict();
    filter.correct(timeS < 100 ? 20 : 78.4 - 58.4 * Math.exp(-(timeS - 100) / 6.5));
  }
  return filter;
}

test('in silence only what time allows is known: vapour comes and goes by the chances of a second, its level stays', () => {
  const filter = held();
  const before = filter.state();
  // The first second after a reading mixes states as well; from then on only probabilities flow.
  filter.predict();
  const course = [filter.state().wet];
  for (let second = 0; second < 200; second += 1) filter.predict();
  const { wet, vapourC } = filter.state();
  expect(course[0]).toBeLessThan(before.wet);
  // The stationary share of the chain: what flows into the dry model flows out of it.
  let shares = [1, 0, 0];
  for (let second = 0; second < 2000; second += 1) {
    shares = [0, 1, 2].map((to) =>
      shares.reduce((sum, share, from) => sum + share * (changes[from]?.[to] ?? 0), 0),
    );
  }
  expect(Math.abs(wet - (1 - (shares[2] ?? 0)))).toBeLessThan(0.01);
  expect(Math.abs(vapourC - before.vapourC)).toBeLessThan(0.3);
});

test('a confirmed jump leaves bulb and vapour doubted by its size', () => {
  const filter = held();
  const before = filter.state();
  filter.loosen(5);
  const after = filter.state();
  expect(after.vapourSdK).toBeCloseTo(Math.hypot(before.vapourSdK, 5), 6);
  // As if the rate had changed within half a minute.
  expect(after.rateSdKPerS).toBeCloseTo(Math.hypot(before.rateSdKPerS, 5 / 30), 6);
  expect([after.vapourC, after.wet]).toEqual([before.vapourC, before.wet]);
});

test('a reading surprises by its distance from what was expected, in standard deviations, with its sign', () => {
  const filter = createVapourFilter(6.5, noise);
  filter.restart(20, 82, 6);
  // A bulb known to √0.1 K and twice the slow noise, read with the white noise.
  const sdK = Math.sqrt(0.1 + 2 * 0.02 ** 2 + 0.03 ** 2);
  expect(filter.surprise(21)).toBeCloseTo(1 / sdK, 9);
  expect(filter.surprise(19)).toBeCloseTo(-1 / sdK, 9);
});

test('a bulb without a lag is at once where the vapour is', () => {
  const wetAfter = (lagS: number) => {
    const filter = held(lagS);
    filter.predict();
    filter.predict();
    return filter.state();
  };
  expect(wetAfter(0.1).bulbC).toBeCloseTo(wetAfter(0.15).bulbC, 12);
  expect(Math.abs(wetAfter(0.1).bulbC - 78.4)).toBeLessThan(0.2);
});

test('a noisier probe is told of it: the same reading surprises less', () => {
  const filter = held();
  const before = filter.surprise(79);
  filter.setNoise({ ...noise, whiteSdK: 0.5 });
  expect(filter.surprise(79)).toBeLessThan(before / 3);
});

test('vapour that is hardly possible leaves its probability to the dry bulb, and never nothing', () => {
  const filter = held();
  filter.bound(() => 0);
  expect(filter.state().wet).toBeCloseTo(2e-5, 9);
  filter.predict();
  filter.correct(78.4);
  expect(filter.state().wet).toBeGreaterThan(0);
});
