import { describe, expect, test } from 'vitest';
import { createRandom, defaultRunSettings } from '#shared-core';
import type { CloudEvidence } from '../../../shared-core/twin/particle.ts';
import {
  createCloud,
  effectiveSize,
  particleCount,
  runCourses,
} from '../../../shared-core/twin/particle-cloud.ts';
import { drawAnew, isMoved, moveOn } from '../../../shared-core/twin/resample-move.ts';
import { guessPrior } from '../../../shared-core/twin/still-guess.ts';

const evidenceOf = (): CloudEvidence => ({
  prior: guessPrior(defaultRunSettings, { tookS: null, eased: null }, 0.3),
  chargeMl: 350,
  untilHeadHeightK: 7,
  observations: [],
});

describe('a cloud of guesses', () => {
  test('begins with all weights alike and no course run', () => {
    const cloud = createCloud(evidenceOf().prior, createRandom('cloud'));
    expect(cloud.length).toBe(particleCount);
    expect(effectiveSize(cloud)).toBeCloseTo(particleCount, 6);
    expect(cloud.every(({ course }) => course.count === 0)).toBe(true);
    expect(new Set(cloud.map(({ guess }) => guess.vapourMolPerS)).size).toBe(particleCount);
  });

  test('is worth one guess where one has all the weight, and two where two share it', () => {
    const cloud = createCloud(evidenceOf().prior, createRandom('cloud')).slice(0, 4);
    const worth = (...weights: readonly number[]) =>
      effectiveSize(cloud.map((particle, index) => ({ ...particle, weight: weights[index] ?? 0 })));
    expect([worth(1), worth(0.5, 0.5), worth(0.25, 0.25, 0.25, 0.25)]).toEqual([1, 2, 4]);
  });

  test('runs each course once, at the price of two moves', () => {
    const evidence = evidenceOf();
    const cloud = createCloud(evidence.prior, createRandom('cloud')).slice(0, 10);
    const run = () => cloud.filter(({ course }) => course.count > 0).length;
    expect([runCourses(cloud, evidence, 5), run()]).toEqual([0, 3]);
    expect([runCourses(cloud, evidence, 100), run()]).toEqual([86, 10]);
    expect(runCourses(cloud, evidence, 100)).toBe(100);
  });
});

describe('a cloud drawn anew', () => {
  test('has every guess as often as its weight says, to within one, and all weights alike', () => {
    const cloud = createCloud(evidenceOf().prior, createRandom('cloud')).slice(0, 8);
    const names = new Map(cloud.map(({ walk }, index) => [walk, index]));
    [0.4, 0.3, 0.2, 0.1, 0, 0, 0, 0].forEach((weight, index) => {
      cloud[index]!.weight = weight;
      cloud[index]!.oldLogLikelihood = index;
      cloud[index]!.course.count = index;
    });
    const { moved, power, walks } = drawAnew(cloud, 0.5, createRandom('draw'));
    expect([moved, power, walks.length]).toEqual([0, 0.5, 8]);
    const counts = [0, 1, 2, 3, 4].map(
      (name) => cloud.filter(({ walk }) => names.get(walk) === name).length,
    );
    expect(counts[0]).toBeGreaterThanOrEqual(3);
    expect(counts[0]).toBeLessThanOrEqual(4);
    expect(counts[1]).toBeGreaterThanOrEqual(2);
    expect(counts[1]).toBeLessThanOrEqual(3);
    expect(counts[4]).toBe(0);
    for (const { walk, weight, oldLogLikelihood, course } of cloud) {
      expect([weight, oldLogLikelihood, course.count]).toEqual([
        1 / 8,
        names.get(walk),
        names.get(walk),
      ]);
    }
  });

  test('makes three moves for each guess, so many at a time as it may, and walks without evidence as the prior does', () => {
    const evidence = evidenceOf();
    const random = createRandom('walk');
    const cloud = createCloud(evidence.prior, random).slice(0, 60);
    runCourses(cloud, evidence, Number.POSITIVE_INFINITY);
    const before = cloud.map(({ walk }) => walk);
    const under = drawAnew(cloud, 1, random);
    const observed = { from: 0, to: 0 };
    expect(moveOn(cloud, evidence, observed, under, 100, random)).toBe(100);
    expect(isMoved(cloud, under)).toBe(false);
    expect(moveOn(cloud, evidence, observed, under, 100, random)).toBe(80);
    expect(isMoved(cloud, under)).toBe(true);
    const changed = cloud.filter(({ walk }) => !before.includes(walk)).length;
    expect(changed).toBeGreaterThan(20);
    const { mean, sd } = evidence.prior;
    const far = cloud.filter(({ walk }) => Math.abs((walk[4]! - mean[4]!) / sd[4]!) > 4);
    expect(far).toEqual([]);
  });
});
