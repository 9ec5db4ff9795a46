import { beforeEach, describe, expect, test } from 'vitest';
import { noGasYet } from '../../../shared-core/ferment/gas-budget.ts';
import type { Evidence } from '../../../shared-core/ferment/gather-evidence.ts';
import {
  drawFerments,
  ferments,
  type PossibleFerments,
} from '../../../shared-core/ferment/possible-ferments.ts';
import { effectiveCount, weightsOf } from '../../../shared-core/ferment/renew-ferments.ts';
import { takeInEvidence } from '../../../shared-core/ferment/take-in-evidence.ts';
import { doubtOfGravity, logLikelihood } from '../../../shared-core/ferment/weigh-evidence.ts';
import { createRandom } from '../../../shared-core/random/create-random.ts';
import { evidenceAt } from './support/at-hour.ts';

const facts = { volumeMl: 1000, sugarG: null };
const surroundings = { facts, warmthK: 0, budget: noGasYet };
const piece = (read: Partial<Evidence>) => evidenceAt(48, read);
const gravity = (value: number, uncertainty: number) => ({ gravity: { value, uncertainty } });

/** All began at 1.060; what they have lost since nobody looked is spread evenly over 0.01 to 0.03. */
let cloud: PossibleFerments;
beforeEach(() => {
  cloud = drawFerments(createRandom('take in'), facts, { value: 1.06, uncertainty: 0.001 });
  cloud.original.fill(1.06);
  cloud.originalSpread.fill(0);
  cloud.end.fill(0.998);
  cloud.vigour.fill(0);
  cloud.logWeight.fill(0);
  for (let index = 0; index < ferments; index += 1) {
    cloud.lost[index] = 0.01 + (0.02 * index) / ferments;
    cloud.lostAtEvidence[index] = cloud.lost[index] ?? 0;
  }
});
const taken = (read: Partial<Evidence>) =>
  takeInEvidence(cloud, piece(read), surroundings, createRandom('taken'));

describe('a piece of evidence', () => {
  test('changes each weight by how likely it is there, where enough foresaw it', () => {
    const expected = cloud.logWeight.map((_, index) =>
      logLikelihood(cloud, index, piece(gravity(1.04, 0.004)), surroundings),
    );
    taken(gravity(1.04, 0.004));
    expect(cloud.logWeight).toEqual(expected);
  });

  test('says how likely its gravity was misread, before anything is learned of it; without one nothing', () => {
    const read = gravity(1.044, 0.004);
    const before = structuredClone(cloud);
    for (let index = 0; index < ferments; index += 1) {
      before.logWeight[index] = logLikelihood(before, index, piece(read), surroundings);
    }
    expect(taken(read)).toBeCloseTo(doubtOfGravity(before, read.gravity), 12);
    expect([taken({}), taken({ bubblesPerMin: 10 }), taken({ temperatureC: 20 })]).toEqual([
      null,
      null,
      null,
    ]);
  });

  test('that hardly any foresaw leaves an eighth that count, where its own weights would leave a handful', () => {
    const read = gravity(1.036, 0.0001);
    const alone = cloud.logWeight.map((_, index) =>
      logLikelihood(cloud, index, piece(read), surroundings),
    );
    expect(effectiveCount(cloud, alone)).toBeLessThan(ferments / 20);
    taken(read);
    expect(effectiveCount(cloud)).toBeGreaterThan(0.99 * (ferments / 8));
    const weights = weightsOf(cloud);
    const lost = weights.reduce((sum, weight, index) => sum + weight * (cloud.lost[index] ?? 0), 0);
    expect(Math.abs(lost - 0.024)).toBeLessThan(2e-4);
  });

  test('is taken in mass before bubbles before gravity, each finding what the one before has learned', () => {
    taken({ massG: { value: 1500, uncertainty: 0.5 }, bubblesPerMin: 20, ...gravity(1.04, 0.004) });
    // A first mass is known as surely as the balance shows, and by what gas has left.
    expect(Math.max(...cloud.massVariance)).toBeLessThan(10);
    expect(Math.min(...cloud.bubblesVariance)).toBeLessThan(1.44);
  });
});
