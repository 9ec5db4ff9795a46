import { describe, expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import {
  advanceFerments,
  doneWithin,
  forecastDoneH,
  gravityPerH,
  speedPerH,
} from '../../../shared-core/ferment/advance-ferments.ts';
import {
  drawFerments,
  ferments,
  followTraits,
  type PossibleFerments,
  possibleOriginal,
} from '../../../shared-core/ferment/possible-ferments.ts';
import { pureSugarPotentialAbv } from '../../../shared-core/ferment/potential-strength.ts';
import { abvPerGravity, endGravity } from '../../../shared-core/ferment/practical-end.ts';
import {
  drawAgain,
  effectiveCount,
  moveLastStep,
  renewFerments,
  shiftLastStep,
  weightsOf,
} from '../../../shared-core/ferment/renew-ferments.ts';

const litre = { volumeMl: 1000, sugarG: null };

/** A cloud of which the first ferment goes by hand: 0.06 of gravity to lose, at full speed in 50 h, going since long. */
function cloudOf(changed: Partial<Record<'power' | 'logHours' | 'vigour' | 'lagH', number>> = {}) {
  const cloud = drawFerments(createRandom('cloud'), litre, { value: 1.06, uncertainty: 0.001 });
  cloud.original[0] = 1.06;
  cloud.end[0] = 1;
  cloud.power[0] = changed.power ?? 1;
  cloud.logHours[0] = changed.logHours ?? Math.log(50);
  cloud.vigour[0] = changed.vigour ?? 0;
  cloud.lagH[0] = changed.lagH ?? 0.1;
  cloud.fading[0] = 0;
  cloud.lost[0] = 0;
  return cloud;
}
const mean = (values: ArrayLike<number>) =>
  Array.from(values).reduce((sum, value) => sum + value, 0) / values.length;
const spread = (values: ArrayLike<number>) => {
  const middle = mean(values);
  return Math.sqrt(mean(Array.from(values, (value) => (value - middle) ** 2)));
};

describe('the speed of a ferment', () => {
  test('is one over its hours, by its power of what is left, its vigour and the warmth', () => {
    expect(speedPerH(cloudOf(), 0, 100, 0)).toBeCloseTo(1 / 50, 12);
    expect(speedPerH(cloudOf({ vigour: Math.log(2) }), 0, 100, 0)).toBeCloseTo(2 / 50, 12);
    // It doubles in some ten kelvins.
    expect(speedPerH(cloudOf(), 0, 100, 10)).toBeCloseTo(Math.exp(0.7) / 50, 12);
    const half = cloudOf({ power: 1.5 });
    half.lost[0] = 0.03;
    expect(speedPerH(half, 0, 100, 0)).toBeCloseTo(Math.sqrt(0.5) / 50, 12);
    expect(gravityPerH(half, 0, 100, 0)).toBeCloseTo((0.03 * Math.sqrt(0.5)) / 50, 12);
    half.lost[0] = 0.07;
    expect(gravityPerH(half, 0, 100, 0)).toBe(0);
    const faded = cloudOf();
    faded.fading[0] = -1;
    expect(speedPerH(faded, 0, 100, 0)).toBeCloseTo(Math.exp(-1) / 50, 12);
  });

  test('is half of that when it gets going, and next to nothing before', () => {
    const slow = cloudOf({ lagH: 20 });
    expect(speedPerH(slow, 0, 20, 0)).toBeCloseTo(0.5 / 50, 12);
    expect(speedPerH(slow, 0, 0, 0)).toBeLessThan(0.02 / 50);
    expect(speedPerH(slow, 0, 40, 0)).toBeGreaterThan(0.98 / 50);
  });
});

describe('ferments that go on', () => {
  test('lose what an exponential says, and are done when it comes within 0.002 of their end', () => {
    // Many ferments of the same kind: their vigour wanders about one, so their middle is that of one that does not.
    const cloud = cloudOf();
    for (let index = 0; index < ferments; index += 1) {
      cloud.original[index] = 1.06;
      cloud.end[index] = 1;
      cloud.power[index] = 1;
      cloud.logHours[index] = Math.log(50);
      cloud.vigour[index] = 0;
      cloud.lagH[index] = 0.1;
    }
    advanceFerments(cloud, 10, 34, 0, createRandom('on'));
    const middle = cloud.lost.toSorted()[ferments / 2]!;
    expect(Math.abs(middle - 0.06 * (1 - Math.exp(-24 / 50)))).toBeLessThan(0.0015);
    const doneAtH = Array.from({ length: 400 }, (_, index) =>
      forecastDoneH(cloud, index, 34, 2000, 0, createRandom(`on ${index}`)),
    ).toSorted((a, b) => a - b)[200]!;
    // 50 h · ln(0.06/0.002), within what a wandering vigour and fading make of it.
    expect(Math.abs(doneAtH - (10 + 50 * Math.log(30)))).toBeLessThan(20);
  });

  test('keep what was lost at each of the last four half days', () => {
    const cloud = cloudOf();
    const random = createRandom('half days');
    const lostAt: number[] = [];
    for (let toH = 12; toH <= 60; toH += 12) {
      advanceFerments(cloud, toH - 12, toH - 5, 0, random);
      advanceFerments(cloud, toH - 5, toH, 0, random);
      lostAt.push(cloud.lost[0]!);
    }
    advanceFerments(cloud, 60, 65, 0, random);
    expect(cloud.lostBefore.map((lost) => lost[0])).toEqual(lostAt.slice(1).toReversed());
    const before = cloud.lost.slice();
    advanceFerments(cloud, 65, 65, 0, random);
    expect(cloud.lost).toEqual(before);
  });

  test('begin to fade, one in some eight hundred an hour, and then go slower and slower', () => {
    const cloud = cloudOf();
    advanceFerments(cloud, 0, 48, 0, createRandom('fading'));
    const faded = Array.from(cloud.fading).filter((fading) => fading < 0);
    // 1 − e^(−0.0012 · 48).
    expect(Math.abs(faded.length / ferments - 0.056)).toBeLessThan(0.015);
    expect(Math.min(...faded)).toBeLessThan(-1);
    expect(Math.min(...cloud.fading)).toBeGreaterThanOrEqual(-7);
  });

  test('are done at the moment within a step when they come within 0.002 of their end', () => {
    const cloud = cloudOf({ logHours: Math.log(2) });
    cloud.lost[0] = 0.0579;
    // Of 0.0021 left, 0.0013 go in these two hours: the first 0.0001 in 0.15 h, as fast or slow as a wandering vigour makes it.
    const doneH = forecastDoneH(cloud, 0, 100, 200, 0, createRandom('moment'));
    expect(doneH).toBeGreaterThan(100.08);
    expect(doneH).toBeLessThan(100.3);
  });

  test('are forecast no later than is asked for', () => {
    const slow = cloudOf({ logHours: Math.log(1e6) });
    expect(forecastDoneH(slow, 0, 34, 200, 0, createRandom('slow'))).toBe(200);
    const done = cloudOf();
    done.doneH[0] = 30;
    expect(forecastDoneH(done, 0, 34, 200, 0, createRandom('done'))).toBe(30);
  });
});

describe('ferments that are drawn', () => {
  test('believe the first gravity, six in ten, and are spread by its doubt; the others lie a little higher and anywhere', () => {
    const cloud = drawFerments(createRandom('drawn'), litre, { value: 1.06, uncertainty: 0.001 });
    const told = Array.from(cloud.original).filter((_, index) => cloud.originalSpread[index] === 0);
    const open = Array.from(cloud.original).filter((_, index) => cloud.originalSpread[index] !== 0);
    expect(Math.abs(told.length / ferments - 0.6)).toBeLessThan(0.03);
    expect(Math.abs(mean(told) - 1.06)).toBeLessThan(2e-4);
    expect(Math.abs(spread(told) / 0.001 - 1)).toBeLessThan(0.1);
    expect(Math.abs(mean(open) - 1.066)).toBeLessThan(2e-3);
    expect(Math.abs(spread(open) - 0.016)).toBeLessThan(2e-3);
    // By weight, 82 in a hundred believe it.
    const weights = weightsOf(cloud);
    const believed = Array.from(weights).reduce(
      (sum, weight, index) => sum + (cloud.originalSpread[index] === 0 ? weight : 0),
      0,
    );
    expect(Math.abs(believed - 0.82)).toBeLessThan(0.03);
  });

  test('have any beginning where none was read, or what was read is none', () => {
    const none = drawFerments(createRandom('none'), litre, null);
    expect(Math.abs(mean(none.original) - 1.075)).toBeLessThan(2e-3);
    expect(new Set(none.logWeight)).toEqual(new Set([0]));
    const late = drawFerments(createRandom('late'), litre, { value: 1.002, uncertainty: 0.001 });
    expect(mean(late.original)).toBeGreaterThan(1.02);
    expect([possibleOriginal(0.99), possibleOriginal(1.05), possibleOriginal(1.3)]).toEqual([
      1.01, 1.05, 1.16,
    ]);
  });

  test('of a known sugar weigh by how well it agrees with their range', () => {
    // 157 g in a litre give some 9.3 % vol: a gravity of 1.06 or so.
    const facts = { volumeMl: 1000, sugarG: 157 };
    const cloud = drawFerments(createRandom('sugar'), facts, null);
    const weights = weightsOf(cloud);
    const original = Array.from(weights).reduce(
      (sum, weight, index) => sum + weight * cloud.original[index]!,
      0,
    );
    expect(Math.abs(original - 1.066)).toBeLessThan(0.006);
    // Beside the few whose sugar was told wrongly, their strength is that of the sugar, to 4 %.
    let [near, sum] = [0, 0];
    for (const [index, weight] of weights.entries()) {
      const [from, to] = [cloud.original[index]!, cloud.end[index]!];
      const share = (abvPerGravity(from) * (from - to) * 1.015) / pureSugarPotentialAbv(157, 1000);
      if (Math.abs(share - 1) > 0.1) continue;
      near += weight;
      sum += weight * share;
    }
    expect(Math.abs(sum / near - 1)).toBeLessThan(0.012);
    expect(effectiveCount(cloud)).toBeLessThan(0.6 * ferments);
    expect(new Set(cloud.originalSpread)).toEqual(new Set([0]));
  });

  test('are what their traits say', () => {
    const cloud = cloudOf();
    const traits = (value: number) => {
      for (const trait of Object.values(cloud.traits)) trait[0] = value;
      followTraits(cloud, 0);
    };
    traits(0);
    expect([
      cloud.end[0],
      cloud.dryEnd[0],
      cloud.power[0],
      cloud.lagH[0],
      cloud.fadeHours[0],
    ]).toEqual([
      expect.closeTo(endGravity(1.06, 2, 15.5), 12),
      expect.closeTo(endGravity(1.06, 2, 100), 12),
      expect.closeTo(0.15 + 0.65, 12),
      13,
      11,
    ]);
    traits(1);
    expect([cloud.end[0], cloud.power[0], cloud.lagH[0], cloud.fadeHours[0]]).toEqual([
      expect.closeTo(endGravity(1.06, 2.95, 17.3), 12),
      expect.closeTo(0.15 + 1.3 / (1 + Math.exp(-1.3)), 12),
      expect.closeTo(13 * Math.exp(0.9), 9),
      expect.closeTo(11 * Math.exp(0.7), 9),
    ]);
    traits(5);
    expect([cloud.lagH[0], cloud.fadeHours[0]]).toEqual([150, 60]);
    traits(-5);
    expect(cloud.dryEnd[0]).toBeCloseTo(endGravity(1.06, 0.3, 100), 12);
  });
});

describe('ferments drawn again', () => {
  test('are as many as their weights say, to within one, with all that belongs to each', () => {
    const cloud = cloudOf();
    cloud.logWeight.fill(Number.NEGATIVE_INFINITY);
    cloud.logWeight[3] = Math.log(3);
    cloud.logWeight[7] = Math.log(1);
    expect(effectiveCount(cloud)).toBeCloseTo(1 / (0.75 ** 2 + 0.25 ** 2), 9);
    const [third, seventh] = [cloud.original[3]!, cloud.original[7]!];
    const [lagThird, toleranceThird] = [cloud.lagH[3]!, cloud.traits.tolerance[3]!];
    drawAgain(cloud, createRandom('again'));
    const ofThird = Array.from(cloud.original).filter((value) => value === third).length;
    expect(Math.abs(ofThird - 0.75 * ferments)).toBeLessThanOrEqual(1);
    expect(cloud.original.filter((value) => value === seventh).length).toBe(ferments - ofThird);
    expect([cloud.lagH[0], cloud.traits.tolerance[0]]).toEqual([lagThird, toleranceThird]);
    expect(new Set(cloud.logWeight).size).toBe(1);
  });

  test('of two kinds keep the weight of each without chance, and the rarer is drawn more often than it weighs', () => {
    const cloud = drawFerments(createRandom('kinds'), litre, { value: 1.06, uncertainty: 0.001 });
    const ofOthers = (values: ArrayLike<number>) =>
      Array.from(values).reduce(
        (sum, value, index) => sum + (cloud.believesFirst[index] === 0 ? value : 0),
        0,
      );
    const random = createRandom('weights of kinds');
    cloud.logWeight.forEach((_, index) => {
      cloud.logWeight[index] = random.normal() - (cloud.believesFirst[index] === 0 ? 3 : 0);
    });
    const before = ofOthers(weightsOf(cloud));
    expect(before).toBeLessThan(0.05);
    drawAgain(cloud, random);
    expect(ofOthers(weightsOf(cloud))).toBeCloseTo(before, 12);
    // As the roots of their weights.
    const share = Math.sqrt(before) / (Math.sqrt(before) + Math.sqrt(1 - before));
    expect(Math.abs(ofOthers(new Float64Array(ferments).fill(1)) - share * ferments)).toBeLessThan(
      2,
    );
  });

  test('that believe what was read stay as near to it, whatever the others are', () => {
    const cloud = drawFerments(createRandom('near'), litre, { value: 1.06, uncertainty: 0.001 });
    const ofBelievers = () =>
      spread(cloud.original.filter((_, index) => cloud.believesFirst[index] === 1));
    const before = ofBelievers();
    for (let renewal = 0; renewal < 8; renewal += 1) {
      cloud.logWeight.forEach((_, index) => {
        cloud.logWeight[index] = index % 4 === 0 ? 0 : -50;
      });
      renewFerments(cloud, createRandom(`renewed ${renewal}`), true);
    }
    expect(Math.abs(ofBelievers() / before - 1)).toBeLessThan(0.15);
  });

  test('are left as they are while more than half of them count', () => {
    const cloud = cloudOf();
    cloud.logWeight.fill(0);
    const before = cloud.original.slice();
    renewFerments(cloud, createRandom('renewed'), true);
    expect(cloud.original).toEqual(before);
  });

  test('keep their spread and their present speed when they are nudged, and differ', () => {
    const cloud = drawFerments(createRandom('nudged'), litre, null);
    advanceFerments(cloud, 0, 60, 0, createRandom('nudged on'));
    for (let index = 0; index < ferments; index += 1)
      cloud.logWeight[index] = index % 4 === 0 ? 0 : -50;
    const chosen = Array.from({ length: ferments / 4 }, (_, index) => 4 * index);
    const before = spread(chosen.map((index) => cloud.original[index]!));
    const speeds = (cloudNow: PossibleFerments, of: readonly number[]) =>
      of.map((index) => gravityPerH(cloudNow, index, 200, 0)).toSorted((a, b) => a - b);
    const middleBefore = speeds(cloud, chosen)[ferments / 8]!;
    renewFerments(cloud, createRandom('renewed'), true);
    const all = Array.from({ length: ferments }, (_, index) => index);
    expect(Math.abs(spread(cloud.original) / before - 1)).toBeLessThan(0.05);
    expect(new Set(cloud.original).size).toBeGreaterThan(0.9 * ferments);
    expect(Math.abs(speeds(cloud, all)[ferments / 2]! / middleBefore - 1)).toBeLessThan(0.15);
    expect(
      all.every((index) => cloud.lost[index]! < cloud.original[index]! - cloud.end[index]!),
    ).toBe(true);
  });

  test('find other ranges while nothing tells how far they go', () => {
    const ranges = (isEndTold: boolean) => {
      const cloud = drawFerments(createRandom('wide'), litre, { value: 1.06, uncertainty: 1e-4 });
      for (let index = 0; index < ferments; index += 1) {
        cloud.original[index] = 1.06;
        cloud.lost[index] = 0.01;
        cloud.logWeight[index] = index % 4 === 0 ? 0 : -50;
      }
      renewFerments(cloud, createRandom('renewed'), isEndTold);
      return Array.from(cloud.original).filter((original) => Math.abs(original - 1.06) > 1e-3);
    };
    expect(ranges(true)).toEqual([]);
    const others = ranges(false);
    expect(Math.abs(others.length / ferments - 0.06)).toBeLessThan(0.02);
    expect(others.every((original) => original >= 1.012 && original <= 1.072)).toBe(true);
  });

  test('are nudged each in its traits, but for those that could not have lost so much', () => {
    const traitsKept = (lost: number) => {
      const cloud = drawFerments(createRandom('traits'), litre, { value: 1.06, uncertainty: 1e-4 });
      cloud.original.fill(1.06);
      for (let index = 0; index < ferments; index += 1) {
        followTraits(cloud, index);
        cloud.lost[index] = Math.min(lost, 1.06 - cloud.end[index]! - 1e-6);
        cloud.logWeight[index] = index % 4 === 0 ? 0 : -50;
      }
      const drawn = new Set(cloud.traits.extractLeft);
      renewFerments(cloud, createRandom('renewed'), true);
      return cloud.traits.extractLeft.filter((trait) => drawn.has(trait)).length / ferments;
    };
    expect(traitsKept(0.01)).toBe(0);
    // At its very end half of the nudges would leave less than was lost.
    expect(Math.abs(traitsKept(1) - 0.5)).toBeLessThan(0.1);
  });

  test('are no longer done where they begin anew with a range that leaves something to do', () => {
    const cloud = drawFerments(createRandom('done'), litre, { value: 1.06, uncertainty: 1e-4 });
    cloud.original.fill(1.06);
    for (let index = 0; index < ferments; index += 1) {
      followTraits(cloud, index);
      cloud.lost[index] = 1.06 - cloud.end[index]! - 0.001;
      cloud.doneH[index] = 50;
      cloud.logWeight[index] = index % 4 === 0 ? 0 : -50;
    }
    renewFerments(cloud, createRandom('renewed'), false);
    const all = Array.from({ length: ferments }, (_, index) => index);
    const left = (index: number) => cloud.original[index]! - cloud.end[index]! - cloud.lost[index]!;
    const anew = all.filter((index) => cloud.original[index]! > 1.07);
    expect(anew.length).toBeGreaterThan(100);
    expect(
      anew.filter((index) => left(index) > 0.004 && !Number.isNaN(cloud.doneH[index]!)),
    ).toEqual([]);
    const others = all.filter((index) => Math.abs(cloud.original[index]! - 1.06) < 1e-4);
    expect(others.every((index) => cloud.doneH[index] === 50)).toBe(true);
  });
});

describe('the last step of a ferment', () => {
  test('may have gone faster or slower, and its vigour with it', () => {
    const cloud = cloudOf();
    cloud.lostAtEvidence[0] = 0.01;
    cloud.lost[0] = 0.03;
    moveLastStep(cloud, 0, 48, 1.5);
    expect([cloud.lost[0], cloud.vigour[0], cloud.doneH[0]]).toEqual([
      expect.closeTo(0.04, 12),
      expect.closeTo(Math.log(1.5), 12),
      Number.NaN,
    ]);
    moveLastStep(cloud, 0, 48, -3);
    expect([cloud.lost[0], cloud.vigour[0]]).toEqual([
      expect.closeTo(0.01 + 0.03 * 0.05, 12),
      expect.closeTo(Math.log(1.5) + Math.log(0.05), 12),
    ]);
  });

  test('never goes beyond the end; who comes within 0.002 of it is done then, and who goes back is not', () => {
    const cloud = cloudOf();
    cloud.lost[0] = 0.03;
    moveLastStep(cloud, 0, 48, 4);
    expect([cloud.lost[0], cloud.doneH[0]]).toEqual([expect.closeTo(0.06 - 1e-6, 12), 48]);
    moveLastStep(cloud, 0, 60, 1);
    expect(cloud.doneH[0]).toBe(48);
    moveLastStep(cloud, 0, 60, 0.5);
    expect(cloud.doneH[0]).toBeNaN();
    cloud.lostAtEvidence[0] = 0;
    cloud.lost[0] = 0.06 - doneWithin + 1e-9;
    moveLastStep(cloud, 0, 72, 1);
    expect(cloud.doneH[0]).toBe(72);
  });

  test('is shifted by some 15 % in all of them', () => {
    const cloud = cloudOf();
    cloud.vigour.fill(0);
    cloud.lost.fill(0.01);
    shiftLastStep(cloud, 48, createRandom('shift'));
    expect(Math.abs(mean(cloud.vigour))).toBeLessThan(0.01);
    expect(Math.abs(spread(cloud.vigour) - 0.15)).toBeLessThan(0.01);
  });
});
