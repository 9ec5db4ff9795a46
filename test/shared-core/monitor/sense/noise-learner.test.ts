import { expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import { createNoiseLearner } from '../../../../shared-core/monitor/sense/noise-learner.ts';

test('a head that swings by kelvins is not taken for a noisy probe', () => {
  const learner = createNoiseLearner();
  for (let timeS = 0; timeS < 3600; timeS += 1) {
    learner.see(timeS, 78 + 20 * Math.sin(timeS / 20), 0);
  }
  const { whiteSdK, slowSdK } = learner.noise();
  expect(Math.max(whiteSdK, slowSdK)).toBeLessThanOrEqual(0.5);
});

/** What is learned from an hour of readings with these parts, on a head that drifts [K/s]. */
function learned(whiteSdK: number, slowSdK: number, driftKPerS: number, everyS = 1) {
  const random = createRandom('noise');
  const learner = createNoiseLearner();
  const share = Math.exp(-everyS / 15);
  let slowK = slowSdK * random.normal();
  for (let timeS = 0; timeS < 3600 * everyS; timeS += everyS) {
    slowK = share * slowK + Math.sqrt(1 - share ** 2) * slowSdK * random.normal();
    const noiseK = slowK + whiteSdK * random.normal();
    learner.see(timeS, 78 + driftKPerS * timeS + noiseK, driftKPerS);
  }
  return learner.noise();
}

test('before anything is seen half of it is white and half correlated over a quarter of a minute', () => {
  // The prior is 0.05 K of each: at lags of 1 s and 30 s, by e^(−h/15 s).
  const { whiteSdK, slowSdK } = createNoiseLearner().noise();
  const [short, long] = [1 - Math.exp(-1 / 15), 1 - Math.exp(-2)];
  const slow = (0.05 ** 2 * 0.5) / (long - short);
  expect([whiteSdK, slowSdK]).toEqual([
    expect.closeTo(Math.sqrt(1.5 * 0.05 ** 2 - slow * short), 9),
    expect.closeTo(Math.sqrt(slow), 9),
  ]);
});

test.each([
  [0.1, 0, 0],
  [0.1, 0, 0.004],
  [0.1, 0, 0.3],
  [0.05, 0.1, 0],
  [0.02, 0.15, -0.002],
])(
  'white noise of %d K and slow noise of %d K are told apart, on a head that drifts by %d K/s',
  (whiteSdK, slowSdK, driftKPerS) => {
    const found = learned(whiteSdK, slowSdK, driftKPerS);
    // Twenty minutes hold 40 correlation times twice over: a slow part is known to some 15 %.
    expect(Math.abs(found.whiteSdK - whiteSdK)).toBeLessThan(0.1 * Math.hypot(whiteSdK, slowSdK));
    expect(Math.abs(found.slowSdK - slowSdK)).toBeLessThan(0.3 * Math.hypot(whiteSdK, slowSdK));
  },
);

test('a logger that is slower than the short lag’s twelve seconds teaches nothing of it', () => {
  expect(learned(0.3, 0, 0, 13).whiteSdK).toBeLessThan(learned(0.3, 0, 0, 12).whiteSdK / 2);
});

test('one upset counts as four standard deviations, and nothing across an interruption counts', () => {
  const learnedAfter = (upsetK: number, isInterrupted: boolean) => {
    const learner = createNoiseLearner();
    for (let timeS = 0; timeS < 40; timeS += 1) learner.see(timeS, 78, 0);
    if (isInterrupted) learner.interrupt();
    for (let timeS = 40; timeS < 60; timeS += 1) learner.see(timeS, 78 + upsetK, 0);
    const { whiteSdK, slowSdK } = learner.noise();
    return Math.hypot(whiteSdK, slowSdK);
  };
  expect(learnedAfter(50, false)).toEqual(learnedAfter(5, false));
  expect(learnedAfter(5, true)).toEqual(learnedAfter(0, true));
  expect(learnedAfter(5, false)).toBeGreaterThan(learnedAfter(0, false));
});

test('an upset among quiet readings counts as sixteen times what was usual before it, by hand calculation', () => {
  const learner = createNoiseLearner();
  for (let timeS = 0; timeS < 10; timeS += 1) learner.see(timeS, 78, 0);
  learner.see(10, 83, 0);
  const { whiteSdK, slowSdK } = learner.noise();
  // Forty differences of the prior, nine of nothing, and one of four standard deviations; no long lag yet.
  const before = (0.05 ** 2 * 1.5 * 40) / 49;
  const short = (before * 49 + 16 * before) / 50;
  const long = 2 * 0.05 ** 2;
  const [atShort, atLong] = [1 - Math.exp(-1 / 15), 1 - Math.exp(-2)];
  const slow = (long - short) / (atLong - atShort);
  expect([whiteSdK, slowSdK]).toEqual([
    expect.closeTo(Math.sqrt(short - slow * atShort), 9),
    expect.closeTo(Math.sqrt(slow), 9),
  ]);
});

test('a probe that was noisy for hours and is quiet by now is a quiet one after an hour', () => {
  const random = createRandom('fades');
  const learner = createNoiseLearner();
  const see = (fromS: number, toS: number, sdK: number) => {
    for (let timeS = fromS; timeS < toS; timeS += 1) {
      learner.see(timeS, 78 + sdK * random.normal(), 0);
    }
  };
  see(0, 7200, 0.3);
  expect(learner.noise().whiteSdK).toBeCloseTo(0.3, 1);
  see(7200, 10_800, 0.03);
  // Of what is older than an hour e⁻³ is left: √(0.05 · 0.3² + 0.95 · 0.03²).
  expect(learner.noise().whiteSdK).toBeCloseTo(0.073, 2);
});
