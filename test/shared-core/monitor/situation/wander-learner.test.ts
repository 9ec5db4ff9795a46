import { expect, test } from 'vitest';
import { createWanderLearner } from '../../../../shared-core/monitor/situation/wander-learner.ts';
import { createRandom } from '../../../../shared-core/random/index.ts';

interface Head {
  readonly whiteSdK: number;
  readonly slowSdK: number;
  readonly wanderKPerRootMin: number;
}

/** What is learned of the wander in so many minutes [K by the root of a minute]. */
function learnedIn(minutes: number, head: Head, seed = 'wander'): number {
  const random = createRandom(seed);
  const learner = createWanderLearner();
  const noise = { ...head, slowCorrelationS: 15 };
  const kept = Math.exp(-2 / 15);
  let level = 78.4;
  let slow = random.normal();
  for (let timeS = 0; timeS < 60 * minutes; timeS += 2) {
    level += head.wanderKPerRootMin * Math.sqrt(2 / 60) * random.normal();
    slow = kept * slow + Math.sqrt(1 - kept * kept) * random.normal();
    // A block of two seconds: two readings.
    const white = (head.whiteSdK / Math.sqrt(2)) * random.normal();
    learner.see(timeS, level + head.slowSdK * slow + white, noise, false);
  }
  return Math.sqrt(60 * learner.wanderK2PerS());
}

test('a head that strays by a tenth of a kelvin in a minute is learned to', () => {
  const learned = learnedIn(90, { whiteSdK: 0.02, slowSdK: 0.02, wanderKPerRootMin: 0.1 });
  expect(learned).toBeGreaterThan(0.07);
  expect(learned).toBeLessThan(0.14);
});

test('a head that stands still is learned to, not below what any head does', () => {
  const learned = learnedIn(120, { whiteSdK: 0.01, slowSdK: 0.01, wanderKPerRootMin: 0 });
  expect(learned).toBeLessThan(0.01);
  expect(learned).toBeGreaterThanOrEqual(0.003 - 1e-9);
});

test('the noise of a bad probe is not taken for wander of the head: it tells next to nothing of that', () => {
  const means = ['a', 'b', 'c', 'd'].map((seed) =>
    learnedIn(60, { whiteSdK: 0.12, slowSdK: 0.16, wanderKPerRootMin: 0.01 }, seed),
  );
  for (const learned of means) {
    expect(learned).toBeGreaterThan(0.01);
    expect(learned).toBeLessThan(0.035);
  }
});

test('what comes while the head may be leaving waits, and what lies across an upset is not compared', () => {
  const noise = { whiteSdK: 0.01, slowSdK: 0.01, slowCorrelationS: 15 };
  const before = createWanderLearner();
  const usual = before.wanderK2PerS();
  for (let timeS = 0; timeS < 1800; timeS += 2) before.see(timeS, 78 + timeS / 300, noise, true);
  expect(before.wanderK2PerS()).toBe(usual);
  const upset = createWanderLearner();
  for (let timeS = 0; timeS < 1800; timeS += 2) {
    if (timeS % 100 === 0) upset.interrupt();
    upset.see(timeS, timeS % 200 < 100 ? 78 : 79, noise, false);
  }
  expect(upset.wanderK2PerS()).toBe(usual);
});

test('a minute is learned from once two more have passed, in which it could have been the first of a departure', () => {
  const noise = { whiteSdK: 0.01, slowSdK: 0.01, slowCorrelationS: 15 };
  const learner = createWanderLearner();
  const usual = learner.wanderK2PerS();
  const learnedS: number[] = [];
  let before = usual;
  for (let timeS = 0; timeS <= 300; timeS += 2) {
    learner.see(timeS, timeS <= 60 ? 78 : 78.05, noise, false);
    if (learner.wanderK2PerS() !== before) learnedS.push(timeS);
    before = learner.wanderK2PerS();
  }
  // The first minute ends at 60 s, the next a block and a minute later; it stands for the step between them.
  expect(learnedS[0]).toBe(122 + 120);
  expect(before).toBeGreaterThan(usual);
});

/** What is learned from a single step between two minutes [K²/s]. */
function learnedFrom(
  stepK: number,
  noise: Parameters<ReturnType<typeof createWanderLearner>['see']>[2],
) {
  const learner = createWanderLearner();
  for (let timeS = 0; timeS <= 242; timeS += 2) {
    learner.see(timeS, timeS <= 60 ? 78 : 78 + stepK, noise, false);
  }
  return learner.wanderK2PerS();
}
const usual = 0.02 ** 2 / 60;

test('a minute counts as one among twenty that were believed before, and an upset for no more than three standard deviations', () => {
  const noiseless = { whiteSdK: 0, slowSdK: 0, slowCorrelationS: 15 };
  // The means of two minutes differ with a variance of 2/3 · 60 s of the wander.
  expect(learnedFrom(0.03, noiseless)).toBeCloseTo((20 * usual + 0.03 ** 2 / 40) / 21, 12);
  expect(learnedFrom(5, noiseless)).toBeCloseTo(((20 + 9) * usual) / 21, 12);
  expect(learnedFrom(0, noiseless)).toBeCloseTo((20 * usual) / 21, 12);
});

test('noise takes its share of the difference, the slow one by what two means of a minute have in common', () => {
  const [whiteSdK, slowSdK, tauS] = [0.05, 0.04, 20];
  // Sums over a fine grid: of one mean with itself, and of a mean with the next.
  const cells = 600;
  const stepS = 60 / cells;
  let [own, shared] = [0, 0];
  for (let one = 0; one < cells; one += 1) {
    for (let other = 0; other < cells; other += 1) {
      own += Math.exp((-stepS * Math.abs(one - other)) / tauS);
      shared += Math.exp((-stepS * (cells + other - one)) / tauS);
    }
  }
  const explained = (2 * slowSdK ** 2 * (own - shared)) / cells ** 2 + (2 * whiteSdK ** 2) / 60;
  const told = (1 - explained / (explained + 40 * usual)) ** 2;
  const learned = learnedFrom(0.05, { whiteSdK, slowSdK, slowCorrelationS: tauS });
  const byHand = (20 * usual + (told * (0.05 ** 2 - explained)) / 40) / (20 + told);
  expect(learned / byHand).toBeCloseTo(1, 3);
});
