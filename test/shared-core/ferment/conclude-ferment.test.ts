import { describe, expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import { concludeFerment } from '../../../shared-core/ferment/conclude-ferment.ts';
import type { FermentFacts } from '../../../shared-core/ferment/ferment-log.ts';
import {
  drawFerments,
  ferments,
  type PossibleFerments,
} from '../../../shared-core/ferment/possible-ferments.ts';
import { abvPerGravity, endGravity } from '../../../shared-core/ferment/practical-end.ts';

const unsaid: FermentFacts = { volumeMl: 1000, sugarG: null };
const original = 1.06;
/** Where such a must usually ends. */
const usualEnd = endGravity(original, 2, 100);

interface Given {
  readonly lost: number;
  readonly lostTwoDaysAgo: number;
  readonly end: number;
  readonly dryEnd: number;
  readonly hours: number;
  readonly lagH: number;
  readonly fading: number;
  readonly gasYield: number;
  readonly gasYieldVariance: number;
  readonly doneH: number;
}

/** Possible ferments that all agree, but for a share of others; they go by `dg/dt = −g_left/hours`. */
function cloudOf(given: Partial<Given>, others: Partial<Given> = {}, share = 0): PossibleFerments {
  const cloud = drawFerments(createRandom('cloud'), unsaid, null);
  cloud.logWeight.fill(0);
  cloud.vigour.fill(0);
  cloud.power.fill(1);
  cloud.original.fill(original);
  for (let index = 0; index < ferments; index += 1) {
    const one = index < share * ferments ? { ...given, ...others } : given;
    const lost = one.lost ?? 0.03;
    const end = one.end ?? usualEnd;
    cloud.lost[index] = lost;
    cloud.lostBefore[3]![index] = one.lostTwoDaysAgo ?? lost;
    cloud.end[index] = end;
    cloud.dryEnd[index] = one.dryEnd ?? end;
    cloud.logHours[index] = Math.log(one.hours ?? 50);
    cloud.lagH[index] = one.lagH ?? 5;
    cloud.fading[index] = one.fading ?? 0;
    cloud.gasYield[index] = one.gasYield ?? 1.015;
    cloud.gasYieldVariance[index] = one.gasYieldVariance ?? 0;
    cloud.doneH[index] = one.doneH ?? Number.NaN;
  }
  return cloud;
}

function conclude(
  cloud: PossibleFerments,
  told: { timeH?: number; read?: 'gravity' | 'mass'; facts?: FermentFacts } = {},
) {
  const { timeH = 200, read = 'gravity', facts = unsaid } = told;
  const measured = { value: 1.06, uncertainty: 0.001 };
  const evidence = [
    {
      timeH: 0,
      gravity: read === 'gravity' ? measured : null,
      massG: read === 'mass' ? measured : null,
      bubblesPerMin: null,
      temperatureC: null,
      isDegassed: false,
    },
  ];
  return concludeFerment(
    { cloud, timeH, warmthK: 0, temperatureC: null, evidence, gravityDoubts: [] },
    facts,
  );
}
const all = (value: number, digits = 9) => ({
  low: expect.closeTo(value, digits),
  value: expect.closeTo(value, digits),
  high: expect.closeTo(value, digits),
});

describe('the numbers of a verdict', () => {
  test('are those of the possible ferments, where all agree', () => {
    const found = conclude(cloudOf({ lost: 0.03, lostTwoDaysAgo: 0.012 }));
    const range = original - usualEnd;
    expect(found).toMatchObject({
      originalGravity: all(original),
      gravity: all(1.03),
      endGravity: all(usualEnd),
      aboveUsualEnd: expect.closeTo(1.03 - usualEnd, 9),
      donePercent: all((100 * 0.03) / range),
      inTwoDays: all(0.018),
      perDay: all((24 * (range - 0.03)) / 50),
      tellsEnd: true,
      isStill: false,
    });
  });

  test('leave one in twenty out at either end', () => {
    const { gravity } = conclude(cloudOf({ lost: 0.03 }, { lost: 0.04 }, 0.06));
    expect([gravity.low, gravity.value, gravity.high]).toEqual([
      expect.closeTo(1.02, 9),
      expect.closeTo(1.03, 9),
      expect.closeTo(1.03, 9),
    ]);
    expect(conclude(cloudOf({ lost: 0.03 }, { lost: 0.04 }, 0.04)).gravity).toEqual(all(1.03));
  });

  test('give a strength by the usual yield, half moved to what the gas taught, and as uncertain', () => {
    const perYield = abvPerGravity(original) * 0.03;
    const untaught = conclude(cloudOf({})).strengthAbv;
    // Half of the yield's spread of 2.6 % is the gas's too.
    const spread = Math.sqrt(0.5) * 0.026;
    expect(untaught.value / perYield).toBeCloseTo(1.015, 2);
    expect((untaught.high - untaught.low) / perYield / 2).toBeCloseTo(1.645 * spread, 2);
    const taught = conclude(cloudOf({ gasYield: 1.095, gasYieldVariance: 0.0016 })).strengthAbv;
    expect(taught.value / perYield).toBeCloseTo(1.055, 2);
    expect((taught.high - taught.low) / perYield / 2).toBeCloseTo(
      1.645 * Math.hypot(spread, 0.5 * 0.04),
      2,
    );
  });
});

describe('the state of a ferment that stands', () => {
  /** Ended as far above its usual end, in what its yeast can use. */
  const stands = (aboveUsual: number, more: Partial<Given> = {}) => {
    const end = usualEnd + aboveUsual;
    return cloudOf({ end, lost: original - end, hours: 1000, ...more });
  };

  test('has not begun before 0.0025 of gravity is lost', () => {
    expect(conclude(cloudOf({ lost: 0.0024 }))).toMatchObject({
      state: 'not-started',
      doneH: null,
    });
    expect(conclude(cloudOf({ lost: 0.0026 })).state).not.toBe('not-started');
    expect(conclude(cloudOf({ lost: 0.0024 }, { lost: 0.01 }, 0.51)).state).not.toBe('not-started');
  });

  test('is finished at its usual end, in fruit a little above, and stuck where it stands higher', () => {
    const stateAt = (aboveUsual: number, isFromFruit = false) =>
      conclude(stands(aboveUsual), { facts: { ...unsaid, isFromFruit } }).state;
    expect([-0.0001, 0.0001, 0.0059, 0.0061].map((above) => stateAt(above))).toEqual([
      'finished',
      'slow',
      'slow',
      'stuck',
    ]);
    expect([0.0039, 0.0041, 0.0061].map((above) => stateAt(above, true))).toEqual([
      'finished',
      'slow',
      'stuck',
    ]);
  });

  test('is known to stand after two days in which less than 0.002 went, and no sooner', () => {
    const lost = original - usualEnd + 0.001;
    const still = (timeH: number, inTwoDays: number, share = 0) =>
      conclude(
        cloudOf(
          { end: original - lost, lost, lostTwoDaysAgo: lost - inTwoDays },
          { lostTwoDaysAgo: lost - 0.01 },
          share,
        ),
        { timeH },
      );
    expect(still(48, 0.0019)).toMatchObject({ isStill: true, state: 'finished' });
    expect(still(47.9, 0.0019)).toMatchObject({ isStill: false, state: 'working' });
    expect(still(48, 0.0021)).toMatchObject({ isStill: false, state: 'working' });
    // More than nine in ten must say so.
    expect([0.09, 0.11].map((share) => still(48, 0.001, share).isStill)).toEqual([true, false]);
  });

  test('is finished only where nineteen in twenty have 0.004 or less to go, and a dead yeast’s end is none', () => {
    const near = (share: number) =>
      conclude(
        cloudOf(
          { end: usualEnd - 0.001, lost: original - usualEnd + 0.001 },
          { dryEnd: usualEnd - 0.0051, end: usualEnd - 0.04 },
          share,
        ),
      ).state;
    expect([near(0.04), near(0.06)]).toEqual(['finished', 'slow']);
    const dead = stands(-0.001, { dryEnd: usualEnd - 0.0051 });
    expect(conclude(dead)).toMatchObject({
      state: 'stuck',
      nearProbability: 0,
      stuckProbability: expect.closeTo(1, 9),
      doneH: null,
    });
    expect(conclude(stands(-0.001, { dryEnd: usualEnd - 0.0049 })).state).toBe('finished');
  });

  test('is stuck where most stand above their end, at less than 0.0018 a day', () => {
    const left = 0.02;
    const slow = (perDay: number, share: number) =>
      conclude(
        cloudOf(
          { lost: original - usualEnd - left, lostTwoDaysAgo: 0, hours: (24 * left) / 0.004 },
          { hours: (24 * left) / perDay },
          share,
        ),
      ).state;
    expect([slow(0.0017, 0.51), slow(0.0017, 0.49), slow(0.0019, 0.51)]).toEqual([
      'stuck',
      'slow',
      'slow',
    ]);
  });
});

describe('the state of a ferment on a balance', () => {
  // 170 g in a litre: 48.4 g of ethanol from 100 g of hexose, 1.0526 as much from table sugar, 7.892 g for each % vol.
  const hexoseAbv = (170 * 0.484) / 7.8924;
  const potentialAbv = (hexoseAbv * (1 + 180.156 / 171.148)) / 2;
  const facts: FermentFacts = { volumeMl: 1000, sugarG: 170 };
  const gasOf = (share: number, more: Partial<Given> = {}) => {
    const gasYield = more.gasYield ?? 1.015;
    const lost = (share * potentialAbv) / (abvPerGravity(original) * gasYield);
    const lostTwoDaysAgo = lost - 0.0005;
    return cloudOf({ lost, lostTwoDaysAgo, end: original - lost, ...more });
  };
  const state = (cloud: PossibleFerments, read: 'gravity' | 'mass' = 'mass', told = facts) =>
    conclude(cloud, { read, facts: told }).state;

  test('is finished once its sugar’s gas is made but for 8 %, and stuck where far less was', () => {
    expect([0.95, 0.925, 0.915, 0.8].map((share) => state(gasOf(share)))).toEqual([
      'finished',
      'finished',
      'slow',
      'stuck',
    ]);
    // Table sugar weighs less: 92 % of what as much hexose gives may be all, at the interval's end.
    const endOfInterval = 1 + (1.645 * Math.sqrt(0.5) * 0.026) / 1.015;
    const least = (0.92 * hexoseAbv) / potentialAbv / endOfInterval;
    expect([least + 0.005, least - 0.005].map((share) => state(gasOf(share)))).toEqual([
      'slow',
      'stuck',
    ]);
  });

  test('rests on the gas alone, or on the strength where a gravity was read', () => {
    // The gas is 8 % above the usual, the ethanol by half of that: 0.94 of gas are 0.906 of strength.
    const gassy = gasOf(0.94, { gasYield: 1.095 });
    expect([state(gassy, 'mass'), state(gassy, 'gravity')]).toEqual(['finished', 'slow']);
  });

  test('asks for less than 0.001 lost in two days, half of what a float is asked for', () => {
    const lost = (inTwoDays: number) => {
      const cloud = gasOf(0.95);
      cloud.lostBefore[3]!.set(cloud.lost.map((now) => now - inTwoDays));
      return cloud;
    };
    expect([state(lost(0.0009)), state(lost(0.0011)), state(lost(0.0011), 'gravity')]).toEqual([
      'finished',
      'slow',
      'finished',
    ]);
  });

  test('asks that seven in ten are near their end', () => {
    const near = (share: number) => {
      const cloud = gasOf(0.95);
      for (let index = Math.round(share * ferments); index < ferments; index += 1)
        cloud.dryEnd[index] = 0.95;
      return state(cloud);
    };
    expect([near(0.71), near(0.69)]).toEqual(['finished', 'slow']);
  });

  test('is never finished where neither sugar nor gravity says how far it had to go', () => {
    expect(conclude(gasOf(0.95), { read: 'mass' })).toMatchObject({
      state: 'stuck',
      tellsEnd: false,
    });
  });
});

describe('the state of a ferment that goes on', () => {
  const goes = (gravity: number, perDay: number, more: Partial<Given> = {}, timeH = 200) => {
    const left = gravity - usualEnd;
    const hours = (24 * left) / perDay;
    const cloud = cloudOf({ lost: original - gravity, lostTwoDaysAgo: 0, hours, ...more });
    return conclude(cloud, { timeH }).state;
  };

  test('is slow below 0.005 a day, near its end below 0.002', () => {
    expect([goes(1.03, 0.0049), goes(1.03, 0.0051)]).toEqual(['slow', 'working']);
    expect([goes(1.0051, 0.0049), goes(1.0049, 0.0049)]).toEqual(['slow', 'working']);
    expect([goes(1.0049, 0.0019), goes(1.0049, 0.0021)]).toEqual(['slow', 'working']);
  });

  test('is working while it may still be rising, or has next to nothing to go', () => {
    const rising = (timeH: number) => goes(1.03, 0.003, { lagH: 40 }, timeH);
    expect([rising(59), rising(61)]).toEqual(['working', 'slow']);
    expect([goes(usualEnd + 0.0041, 0.0019), goes(usualEnd + 0.0039, 0.0019)]).toEqual([
      'slow',
      'working',
    ]);
  });
});

describe('when it is done', () => {
  test('is when it was, where it is', () => {
    const lost = original - usualEnd + 0.001;
    const done = cloudOf({ lost, end: original - lost, doneH: 123 });
    expect(conclude(done).doneH).toEqual({ low: 123, value: 123, high: 123 });
  });

  test('is by those that have not faded, or were done before; null where none is left', () => {
    const faded = { fading: -1.6, lostTwoDaysAgo: 0, hours: 10 };
    expect(conclude(cloudOf(faded)).doneH).toBeNull();
    const half = conclude(cloudOf(faded, { doneH: 123 }, 0.5)).doneH;
    expect(half).toEqual({ low: 123, value: 123, high: 123 });
  });

  test('is when an exponential comes within 0.002 of its end, later for what has begun to fade', () => {
    const left = original - usualEnd - 0.03;
    const restH = (fading: number) => {
      const { doneH } = conclude(cloudOf({ lostTwoDaysAgo: 0, hours: 20, fading }));
      return (doneH?.value ?? Number.NaN) - 200;
    };
    // hours · ln(left/0.002), within what a wandering vigour makes of it.
    const byHandH = 20 * Math.log(left / 0.002);
    expect(restH(0) / byHandH).toBeGreaterThan(0.85);
    expect(restH(0) / byHandH).toBeLessThan(1.2);
    expect(restH(-1) / restH(0)).toBeGreaterThan(2.2);
    expect(restH(-1) / restH(0)).toBeLessThan(3.2);
  });

  test('is sixty days from now at the latest, and finding out changes nothing of what is believed', () => {
    const cloud = cloudOf({ lostTwoDaysAgo: 0, hours: 1e5 }, { hours: 20 }, 0.6);
    const before = structuredClone(cloud);
    expect(conclude(cloud).doneH?.high).toBe(200 + 60 * 24);
    expect(cloud).toEqual(before);
  });
});
