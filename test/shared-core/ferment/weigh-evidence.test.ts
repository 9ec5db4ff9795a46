import { describe, expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import { gravityPerH } from '../../../shared-core/ferment/advance-ferments.ts';
import { noGasYet, spendGas, usualGasG } from '../../../shared-core/ferment/gas-budget.ts';
import type { Evidence } from '../../../shared-core/ferment/gather-evidence.ts';
import { carbonDioxidePerAbvGPerL } from '../../../shared-core/ferment/mass-loss.ts';
import {
  drawFerments,
  ferments,
  type PossibleFerments,
} from '../../../shared-core/ferment/possible-ferments.ts';
import { abvPerGravity } from '../../../shared-core/ferment/practical-end.ts';
import {
  doubtOfGravity,
  learnFromEvidence,
  logLikelihood,
} from '../../../shared-core/ferment/weigh-evidence.ts';
import { evidenceAt } from './support/at-hour.ts';

const facts = { volumeMl: 1000, sugarG: null };
const surroundings = { facts, warmthK: 0, budget: noGasYet };
const nothing = evidenceAt(48);

/** All alike: began at 1.060, have lost 0.02, nothing of it since the last evidence. */
function cloudOf(): PossibleFerments {
  const cloud = drawFerments(createRandom('weigh'), facts, { value: 1.06, uncertainty: 0.001 });
  cloud.original.fill(1.06);
  cloud.originalSpread.fill(0);
  cloud.end.fill(0.998);
  cloud.lost.fill(0.02);
  cloud.lostAtEvidence.fill(0.02);
  cloud.logWeight.fill(0);
  cloud.lagH.fill(1);
  cloud.power.fill(1);
  cloud.vigour.fill(0);
  cloud.fading.fill(0);
  cloud.logHours.fill(Math.log(50));
  return cloud;
}
/** A normal density but for the factor that all share. */
const density = (off: number, sd: number) => Math.exp(-0.5 * (off / sd) ** 2) / sd;
/** A misread gravity: nine in ten near what it is, one in ten anywhere on a scale of 0.16. */
const misread = (off: number) =>
  0.02 * (0.9 * density(off, Math.hypot(0.001, 0.012)) + (0.1 * Math.sqrt(2 * Math.PI)) / 0.16);
const likelihood = (cloud: PossibleFerments, evidence: Partial<Evidence>) =>
  Math.exp(logLikelihood(cloud, 0, { ...nothing, ...evidence }, surroundings));
const gravity = (value: number) => ({ gravity: { value, uncertainty: 0.001 } });

describe('how likely a ferment makes what was read', () => {
  test('nothing is certain', () => {
    expect(likelihood(cloudOf(), {})).toBe(1);
  });

  test('a gravity by its uncertainty, and two in a hundred are misread, by some 0.012 or by anything', () => {
    for (const [value, off] of [
      [1.04, 0],
      [1.041, 0.001],
      [1.05, 0.01],
    ] as const) {
      expect(likelihood(cloudOf(), gravity(value))).toBeCloseTo(
        0.98 * density(off, 0.001) + misread(off),
        6,
      );
    }
  });

  test('a gravity by a tenth of what went since the last evidence besides', () => {
    const cloud = cloudOf();
    cloud.lostAtEvidence.fill(0);
    expect(likelihood(cloud, gravity(1.042))).toBeCloseTo(
      0.98 * density(0.002, Math.hypot(0.001, 0.1 * 0.02)) + misread(0.002),
      6,
    );
  });

  test('a gravity by the original that it asks for, where that is open', () => {
    const cloud = cloudOf();
    cloud.originalSpread.fill(0.016);
    cloud.originalCentre.fill(1.066);
    // 1.050 and 0.02 lost ask for 1.070.
    expect(likelihood(cloud, gravity(1.05))).toBeCloseTo(
      0.98 * density(0.004, Math.hypot(0.016, 0.001)) + misread(0.01),
      6,
    );
  });

  test('bubbles by the gas that it makes an hour, one count in five telling nothing', () => {
    const cloud = cloudOf();
    cloud.bubbles.fill(Math.log(40));
    cloud.bubblesVariance.fill(0.09);
    const gasGPerH = abvPerGravity(1.06) * gravityPerH(cloud, 0, 48, 0) * carbonDioxidePerAbvGPerL;
    const off = Math.log(30) - Math.log(40 * gasGPerH);
    expect(likelihood(cloud, { bubblesPerMin: 30 })).toBeCloseTo(
      (0.8 * density(off, Math.hypot(0.3, 0.4))) / Math.sqrt(2 * Math.PI) + 0.2 / 9,
      5,
    );
    const silent = 1 / (1 + Math.exp((1.7 * (Math.log(40 * gasGPerH) - Math.log(0.4))) / 0.5));
    expect(likelihood(cloud, { bubblesPerMin: 0 })).toBeCloseTo(0.8 * silent + 0.2, 5);
  });

  test('a first mass tells nothing; a later one by what is known of vessel and gas', () => {
    const cloud = cloudOf();
    const mass = { value: 1480, uncertainty: 0.5 };
    expect(likelihood(cloud, { massG: mass })).toBe(1);
    cloud.mass.fill(1500);
    cloud.massVariance.fill(0.25);
    cloud.massGasCovariance.fill(0);
    cloud.gasYield.fill(1);
    cloud.gasYieldVariance.fill(0.0009);
    // All gas has left, without vapours: the budget holds nothing.
    const gasG = usualGasG(cloud, 0, 1000);
    const off = 1480 - 1500 + gasG;
    const sd = Math.sqrt(0.25 + gasG ** 2 * 0.0009 + 0.25);
    expect(likelihood(cloud, { massG: mass })).toBeCloseTo(
      0.995 * density(off, sd) + 0.005 * density(off, Math.hypot(sd, 60)),
      9,
    );
  });

  test('a mass counts the gas that the liquid still holds, and the vapours that left', () => {
    const cloud = cloudOf();
    cloud.mass.fill(1500);
    cloud.massVariance.fill(0.25);
    cloud.gasYield.fill(1);
    cloud.gasYieldVariance.fill(1e-9);
    const gasG = usualGasG(cloud, 0, 1000);
    const budget = spendGas(noGasYet, gasG, 20, 1000);
    const perGas = 1 + budget.takenAlongG / budget.leftG;
    const expectedG = 1500 - (gasG - budget.heldG) * perGas;
    const at = (value: number) =>
      logLikelihood(
        cloud,
        0,
        { ...nothing, massG: { value, uncertainty: 0.5 } },
        { ...surroundings, budget },
      );
    expect(at(expectedG)).toBeGreaterThan(at(expectedG + 0.3));
    expect(at(expectedG)).toBeGreaterThan(at(expectedG - 0.3));
    expect(at(expectedG + 0.5)).toBeCloseTo(at(expectedG - 0.5), 6);
  });
});

describe('how likely a gravity was misread', () => {
  test('is the share of that in what makes it likely, over all ferments', () => {
    const { gravity: read } = gravity(1.055);
    const [right, wrong] = [0.98 * density(0.015, 0.001), misread(0.015)];
    expect(doubtOfGravity(cloudOf(), read)).toBeCloseTo(wrong / (right + wrong), 9);
    expect(doubtOfGravity(cloudOf(), gravity(1.04).gravity)).toBeLessThan(0.01);
  });
});

describe('what a ferment learns', () => {
  const moments = (values: Float64Array) => {
    const mean = values.reduce((sum, value) => sum + value, 0) / ferments;
    const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / ferments;
    return { mean, sd: Math.sqrt(variance) };
  };

  test('of a first mass: that it was so much, as surely as a balance shows', () => {
    const cloud = cloudOf();
    cloud.lost.fill(0);
    cloud.lostAtEvidence.fill(0);
    const massG = { value: 1500, uncertainty: 0.5 };
    learnFromEvidence(cloud, { ...nothing, massG }, surroundings, createRandom('learn'));
    expect(cloud.mass[0]).toBeCloseTo(1500, 3);
    expect(cloud.massVariance[0]).toBeCloseTo(0.25, 6);
  });

  test('of a second: its gas, by a Kalman filter', () => {
    const cloud = cloudOf();
    cloud.mass.fill(1500);
    cloud.massVariance.fill(0.25);
    cloud.massGasCovariance.fill(0);
    cloud.gasYield.fill(1);
    cloud.gasYieldVariance.fill(0.0009);
    const gasG = usualGasG(cloud, 0, 1000);
    const massG = { value: 1500 - 1.02 * gasG, uncertainty: 0.5 };
    learnFromEvidence(cloud, { ...nothing, massG }, surroundings, createRandom('learn'));
    const variance = 0.25 + gasG ** 2 * 0.0009 + 0.25;
    // No step was made since the last evidence, so nothing else could have done it; some count anew.
    const learned = Array.from(cloud.gasYield).filter((gas) => gas > 1.0001);
    expect(learned.length).toBeGreaterThan(0.98 * ferments);
    expect(learned[0]).toBeCloseTo(1 + (gasG * 0.0009 * 0.02 * gasG) / variance, 9);
    const at = cloud.gasYield.indexOf(learned[0]!);
    expect(cloud.gasYieldVariance[at]).toBeCloseTo(0.0009 - (gasG * 0.0009) ** 2 / variance, 9);
    expect(cloud.massGasCovariance[at]).toBeCloseTo((0.25 * gasG * 0.0009) / variance, 9);
  });

  test('of a gravity: its original where that was open, as two measurements of it say', () => {
    const cloud = cloudOf();
    cloud.originalSpread.fill(0.01);
    cloud.originalCentre.fill(1.066);
    const read = { value: 1.05, uncertainty: 0.004 };
    learnFromEvidence(cloud, { ...nothing, gravity: read }, surroundings, createRandom('learn'));
    const told = cloud.original.filter((_, index) => cloud.originalSpread[index] === 0);
    expect(told.length).toBeGreaterThan(0.9 * ferments);
    const gain = 0.01 ** 2 / (0.01 ** 2 + 0.004 ** 2);
    const mean = told.reduce((sum, value) => sum + value, 0) / told.length;
    expect(Math.abs(mean - (1.066 + gain * 0.004))).toBeLessThan(3e-4);
    const sd = Math.sqrt(told.reduce((sum, value) => sum + (value - mean) ** 2, 0) / told.length);
    expect(Math.abs(sd / (0.004 * Math.sqrt(gain)) - 1)).toBeLessThan(0.06);
  });

  test('of a gravity: how fast the last step went, where the original is known', () => {
    const cloud = cloudOf();
    cloud.lostAtEvidence.fill(0);
    const read = { value: 1.039, uncertainty: 0.001 };
    learnFromEvidence(cloud, { ...nothing, gravity: read }, surroundings, createRandom('learn'));
    // 0.001 more was lost than foreseen; a tenth of 0.02 is as likely as four fifths of that.
    const total = 0.001 ** 2 + 0.002 ** 2;
    const { mean, sd } = moments(cloud.lost);
    expect(Math.abs(mean - (0.02 + (0.001 * 0.002 ** 2) / total))).toBeLessThan(1e-4);
    expect(Math.abs(sd / (0.002 * Math.sqrt(0.001 ** 2 / total)) - 1)).toBeLessThan(0.06);
  });

  test('of bubbles: how many its lock makes of a gram of gas, but for a lock that shows none', () => {
    const cloud = cloudOf();
    cloud.bubbles.fill(Math.log(40));
    cloud.bubblesVariance.fill(0.16);
    const gasGPerH = abvPerGravity(1.06) * gravityPerH(cloud, 0, 48, 0) * carbonDioxidePerAbvGPerL;
    const count = 60 * gasGPerH;
    learnFromEvidence(
      cloud,
      { ...nothing, bubblesPerMin: count },
      surroundings,
      createRandom('learn'),
    );
    // As sure as a count is: half of the way, and half of the variance and a little.
    expect(cloud.bubbles[0]).toBeCloseTo(Math.log(40) + 0.5 * Math.log(1.5), 4);
    expect(cloud.bubblesVariance[0]).toBeCloseTo(0.09, 9);
    const before = cloud.bubbles[0];
    learnFromEvidence(cloud, { ...nothing, bubblesPerMin: 0.39 }, surroundings, createRandom('a'));
    expect(cloud.bubbles[0]).toBe(before);
  });
});
