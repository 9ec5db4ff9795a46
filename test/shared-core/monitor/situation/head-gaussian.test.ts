import { describe, expect, test } from 'vitest';
import {
  begin,
  correctBy,
  innovationOf,
  innovationVariance,
  loosen,
  newGaussian,
  passSecond,
  place,
  sdAt,
  size,
  transitionOf,
  varianceAt,
} from '../../../../shared-core/monitor/situation/head-gaussian.ts';
import {
  logDryPossible,
  logWetPossible,
} from '../../../../shared-core/monitor/situation/one-sided-bulb.ts';
import {
  leaves,
  type Model,
  models,
} from '../../../../shared-core/monitor/situation/vapour-models.ts';

const noise = { whiteSdK: 0.03, slowSdK: 0.04 };
const [keepsCourse] = models;

function begun(valueC = 20, guessC = 82) {
  const belief = newGaussian();
  begin(belief, valueC, { valueC: guessC, sdK: 6 }, noise);
  return belief;
}

function passed(seconds: number, model: Model, belief = begun(), lagS = 6.5) {
  const transition = transitionOf(model, 1 - Math.exp(-1 / lagS));
  for (let second = 0; second < seconds; second += 1) passSecond(belief, model, transition, noise);
  return belief;
}

describe('what one model believes of the head', () => {
  test('begins at the reading, with the vapour guessed', () => {
    const belief = begun();
    expect([...belief.mean]).toEqual([82, 0, 20, 0, 0]);
    expect([0, 1, 2, 3, 4].map((at) => varianceAt(belief, at))).toEqual([
      36,
      1e-4,
      expect.closeTo(0.1 + 0.04 ** 2, 12),
      expect.closeTo(0.04 ** 2, 12),
      expect.closeTo(0.05 ** 2, 12),
    ]);
    expect(sdAt(belief, place.vapour)).toBe(6);
  });

  test('has a bulb in vapour follow it by its lag, and a level that moves on with its rate', () => {
    const { mean } = passed(13, keepsCourse);
    // From 62 K below, after two time constants.
    expect(mean[place.bulb]).toBeCloseTo(82 - 62 * Math.exp(-2), 6);
    const moving = begun(82);
    moving.mean[place.rate] = 0.01;
    expect(passed(1, keepsCourse, moving).mean[place.vapour]).toBeCloseTo(82.01, 12);
    expect(moving.mean[place.rate]).toBeCloseTo(0.01 * Math.exp(-1 / 900), 12);
  });

  test('has a bulb without vapour cool towards the room, wherever the vapour is', () => {
    // 33 s · v′ = −v − (T − 20 °C)/600 s from rest: two exponentials, with the roots of 33 λ² + λ + 1/600.
    const root = Math.sqrt(1 - (4 * 33) / 600);
    const [slow, fast] = [(root - 1) / 66, (-root - 1) / 66];
    const left = (fast * Math.exp(slow * 1200) - slow * Math.exp(fast * 1200)) / (fast - slow);
    const belief = begun(78);
    passed(1200, leaves, belief);
    expect(belief.mean[place.vapour]).toBe(82);
    expect(belief.mean[place.bulb]).toBeCloseTo(20 + 58 * left, 1);
    expect(passed(20_000, leaves, belief).mean[place.bulb]).toBeCloseTo(20, 3);
  });

  test('has vapour of which no bulb tells stay as it was, and forgets its rate within minutes', () => {
    const belief = begun(78);
    belief.mean[place.rate] = 0.01;
    passed(60, leaves, belief);
    expect([belief.mean[place.vapour], belief.mean[place.rate]]).toEqual([
      82,
      expect.closeTo(0.01 / Math.E, 9),
    ]);
  });

  test('gains in doubt each second what its model says, and no slow noise', () => {
    const belief = passed(1, keepsCourse);
    expect(varianceAt(belief, place.vapour)).toBeCloseTo(36 + 1e-4 + 2e-5, 9);
    expect(varianceAt(belief, place.slow)).toBeCloseTo(0.04 ** 2, 12);
    const follow = 1 - Math.exp(-1 / 6.5);
    expect(varianceAt(belief, place.bulb)).toBeCloseTo(
      follow ** 2 * 36 + (1 - follow) ** 2 * (0.1 + 0.04 ** 2) + 1e-5,
      9,
    );
  });

  test('is corrected by a reading as one normal distribution by another, and says how likely that was', () => {
    const belief = begun(78, 78);
    const bulb = 0.1 + 0.04 ** 2;
    const variance = bulb + 0.04 ** 2 + 0.03 ** 2;
    expect([innovationOf(belief, 78.5), innovationVariance(belief, noise)]).toEqual([
      0.5,
      expect.closeTo(variance, 12),
    ]);
    expect(correctBy(belief, 78.5, noise)).toBeCloseTo(
      -0.5 * (0.5 ** 2 / variance + Math.log(variance)),
      12,
    );
    expect([...belief.mean]).toEqual([
      78,
      0,
      expect.closeTo(78 + (bulb / variance) * 0.5, 12),
      expect.closeTo((0.04 ** 2 / variance) * 0.5, 12),
      0,
    ]);
    expect(varianceAt(belief, place.bulb)).toBeCloseTo(bulb - bulb ** 2 / variance, 12);
    expect(belief.covariance[place.bulb * size + place.slow]).toBeCloseTo(
      (-bulb * 0.04 ** 2) / variance,
      12,
    );
  });

  test('is loosened by the square of a confirmed jump, its rate as if it had taken half a minute', () => {
    const belief = begun();
    loosen(belief, -3);
    expect([0, 1, 2, 3, 4].map((at) => varianceAt(belief, at))).toEqual([
      45,
      expect.closeTo(1e-4 + 9 / 900, 12),
      expect.closeTo(9.1 + 0.04 ** 2, 12),
      expect.closeTo(0.04 ** 2, 12),
      expect.closeTo(0.05 ** 2, 12),
    ]);
  });

  test('knows nothing more surely than rounding allows', () => {
    const belief = begun();
    belief.covariance.fill(-1);
    expect(sdAt(belief, place.bulb)).toBe(1e-5);
    expect(innovationVariance(belief, noise)).toBeCloseTo(0.03 ** 2, 12);
  });
});

describe('how likely a belief is at all', () => {
  const believing = (values: Partial<Record<keyof typeof place, number>>) => {
    const belief = newGaussian();
    for (const [name, value] of Object.entries(values))
      belief.mean[place[name as keyof typeof place]] = value;
    for (const [name, sd] of [
      ['vapour', 0.2],
      ['rate', 0.01],
      ['drift', 0.02],
    ] as const)
      belief.covariance[place[name] * (size + 1)] = sd ** 2;
    return belief;
  };

  // Φ(0) = 1/2, Φ(1) = 0.8413, Φ(−1) = 0.1587.
  test('with vapour is that it gets no stronger than by 0.02 K/s', () => {
    expect(
      [-0.02, -0.01, -0.03].map((rate) => Math.exp(logWetPossible(believing({ rate })))),
    ).toEqual([expect.closeTo(0.5, 4), expect.closeTo(0.8413, 4), expect.closeTo(0.1587, 4)]);
  });

  test('without is that the bulb is no hotter than the vapour was, and warms by no more than 0.05 K/s', () => {
    const sd = Math.hypot(0.2, 0.1);
    const likely = (bulb: number, drift: number) =>
      Math.exp(logDryPossible(believing({ vapour: 80, bulb, drift })));
    expect([likely(80.1, -1), likely(80.1 - sd, -1), likely(80.1, 0.05), likely(70, 0.07)]).toEqual(
      [
        expect.closeTo(0.5, 4),
        expect.closeTo(0.8413, 4),
        expect.closeTo(0.25, 4),
        expect.closeTo(0.1587, 4),
      ],
    );
  });
});
