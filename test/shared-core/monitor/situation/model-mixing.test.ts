import { expect, test } from 'vitest';
import {
  newGaussian,
  place,
  size,
} from '../../../../shared-core/monitor/situation/head-gaussian.ts';
import { createModelMixing } from '../../../../shared-core/monitor/situation/model-mixing.ts';
import { changes, models } from '../../../../shared-core/monitor/situation/vapour-models.ts';

const before = [0.6, 0.3, 0.1];
const chance = (from: number, to: number) => changes[from]?.[to] ?? 0;
const flowInto = (to: number) =>
  before.reduce((sum, share, from) => sum + share * chance(from, to), 0);

/** Beliefs of the three models at these vapour temperatures, bulbs at 70 °C. */
function believed(...vapourC: readonly number[]) {
  return models.map((_, index) => {
    const belief = newGaussian();
    belief.mean[place.vapour] = vapourC[index] ?? 0;
    belief.mean[place.bulb] = 70;
    belief.mean[place.rate] = 0.1;
    belief.covariance[0] = 0.04;
    return belief;
  });
}

test('each change of model in a second is as likely as all that leave it together with what stays', () => {
  for (const row of changes) expect(row.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
});

test('probabilities flow from model to model, with or without a reading', () => {
  const expected = [0, 1, 2].map((to) => expect.closeTo(flowInto(to), 12));
  const waited = Float64Array.from(before);
  createModelMixing().wait(waited);
  const mixed = Float64Array.from(before);
  createModelMixing().mix(believed(78, 80, 82), mixed);
  expect([[...waited], [...mixed]]).toEqual([expected, expected]);
});

test('each model goes on from the mixture of all, as doubted as they lie apart', () => {
  const beliefs = believed(78, 80, 82);
  createModelMixing().mix(beliefs, Float64Array.from(before));
  // Vapour that keeps its course: shares by where the probability comes from.
  const shares = before.map((share, from) => (share * chance(from, 0)) / flowInto(0));
  const mean = shares.reduce((sum, share, from) => sum + share * [78, 80, 82][from]!, 0);
  const spread = shares.reduce(
    (sum, share, from) => sum + share * ([78, 80, 82][from]! - mean) ** 2,
    0,
  );
  expect([beliefs[0]?.mean[place.vapour], beliefs[0]?.covariance[0]]).toEqual([
    expect.closeTo(mean, 9),
    expect.closeTo(0.04 + spread, 9),
  ]);
});

test('vapour that finds another level after it was away is told by the bulb, to 1.5 K, and at rest', () => {
  const beliefs = believed(78, 78, 82);
  // It was surely away: whatever changes its course has just come back.
  createModelMixing().mix(beliefs, Float64Array.of(0, 0, 1));
  const [keeps, finds, stays] = beliefs;
  expect([finds?.mean[place.vapour], finds?.mean[place.rate], finds?.covariance[0]]).toEqual([
    70,
    0,
    expect.closeTo(1.5 ** 2, 12),
  ]);
  expect([...(finds?.covariance.slice(1, size) ?? [])]).toEqual([0, 0, 0, 0]);
  expect([keeps?.mean[place.vapour], stays?.mean[place.vapour]]).toEqual([82, 82]);
});

test('a level that is new goes together with nothing that was known of the old', () => {
  const beliefs = believed(78, 78, 82);
  const { covariance } = beliefs[2]!;
  for (let at = 1; at < size; at += 1) {
    covariance[at] = 0.01;
    covariance[at * size] = 0.01;
  }
  covariance[place.bulb * (size + 1)] = 0.09;
  createModelMixing().mix(beliefs, Float64Array.of(0, 0, 1));
  const finds = beliefs[1]!.covariance;
  const others = Array.from({ length: size - 1 }, (_, index) => index + 1);
  expect(others.flatMap((at) => [finds[at], finds[at * size]])).toEqual(
    others.flatMap(() => [0, 0]),
  );
  expect(finds[place.bulb * (size + 1)]).toBe(0.09);
  // Vapour that only went away keeps it all.
  expect(beliefs[2]!.covariance[1]).toBeCloseTo(0.01, 12);
});
