import { describe, expect, test } from 'vitest';
import { createDepartureDetector } from '../../../../shared-core/monitor/situation/departure-detector.ts';
import { createRandom } from '../../../../shared-core/random/index.ts';

const noise = { whiteSdK: 0.05, slowSdK: 0.08, wanderK2PerS: 0.02 ** 2 / 60 };
const driftSdKPerS = 0.01 / 60;
/** So wide that it counts for nothing: the level is known by the blocks alone. */
const anyLevelK2 = 1e4;

/** Solves a symmetric, positive system by Cholesky's factors. */
function solve(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const size = right.length;
  const lower = matrix.map(() => new Array<number>(size).fill(0));
  const at = (row: number, column: number) => lower[row]?.[column] ?? 0;
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let sum = matrix[row]?.[column] ?? 0;
      for (let k = 0; k < column; k += 1) sum -= at(row, k) * at(column, k);
      (lower[row] as number[])[column] = row === column ? Math.sqrt(sum) : sum / at(column, column);
    }
  }
  const forward: number[] = [];
  for (let row = 0; row < size; row += 1) {
    let sum = right[row] ?? 0;
    for (let k = 0; k < row; k += 1) sum -= at(row, k) * (forward[k] ?? 0);
    forward[row] = sum / at(row, row);
  }
  const solution = new Array<number>(size).fill(0);
  for (let row = size - 1; row >= 0; row -= 1) {
    let sum = forward[row] ?? 0;
    for (let k = row + 1; k < size; k += 1) sum -= at(k, row) * (solution[k] ?? 0);
    solution[row] = sum / at(row, row);
  }
  return solution;
}

/** The same ratio all at once: `max over onsets (g·y)²/(2 g·r)` with `g = C⁻¹ r` and C the covariance of all blocks. */
function ratioByCovariance(values: readonly number[]): number {
  const times = values.map((_, index) => 2 * index);
  const covariance = times.map((a) =>
    times.map(
      (b) =>
        anyLevelK2 +
        driftSdKPerS ** 2 * a * b +
        noise.wanderK2PerS * Math.min(a, b) +
        noise.slowSdK ** 2 * Math.exp(-Math.abs(a - b) / 15) +
        (a === b ? noise.whiteSdK ** 2 : 0),
    ),
  );
  let most = 0;
  const last = times.at(-1) ?? 0;
  for (let beganS = 0; beganS <= last - 4; beganS += 6) {
    const ramp = times.map((timeS) => Math.max(0, timeS - beganS));
    const weighed = solve(covariance, ramp);
    const dot = (column: readonly number[]) =>
      weighed.reduce((sum, weight, index) => sum + weight * (column[index] ?? 0), 0);
    const shown = dot(values);
    if (shown > 0) most = Math.max(most, shown ** 2 / (2 * dot(ramp)));
  }
  return most;
}

function noisy(seed: string, blocks: number, courseC: (timeS: number) => number): number[] {
  const random = createRandom(seed);
  let slow = random.normal();
  const kept = Math.exp(-2 / 15);
  return Array.from({ length: blocks }, (_, index) => {
    slow = kept * slow + Math.sqrt(1 - kept * kept) * random.normal();
    return courseC(2 * index) + noise.slowSdK * slow + noise.whiteSdK * random.normal();
  });
}

const seen = (values: readonly number[]) => {
  const detector = createDepartureDetector();
  for (const [index, meanC] of values.entries()) detector.see(2 * index, meanC, noise);
  return detector.evidence();
};

describe('the evidence that a head leaves its level', () => {
  test.each(['one', 'two', 'three'])('is that of all blocks weighed at once, noise %s', (seed) => {
    for (const slope of [0, 0.004, 0.01]) {
      const values = noisy(seed, 60, (timeS) => 78.4 + slope * Math.max(0, timeS - 70));
      expect(seen(values).logLikelihoodRatio).toBeCloseTo(ratioByCovariance(values), 2);
    }
  });

  test('is the same at any level: nobody tells it one', () => {
    const values = noisy('level', 80, (timeS) => 0.006 * Math.max(0, timeS - 100));
    const raised = values.map((value) => value + 83.7);
    expect(seen(raised).logLikelihoodRatio).toBeCloseTo(seen(values).logLikelihoodRatio, 6);
  });

  test('tells how steep the ramp is, and of a plateau that it has none', () => {
    for (const slope of [0.005, 0.01, 0.02]) {
      const bend = Array.from(
        { length: 200 },
        (_, index) => 78.4 + slope * Math.max(0, 2 * index - 252),
      );
      expect(Math.abs(seen(bend).slopeKPerS / slope - 1)).toBeLessThan(0.02);
    }
    expect(seen(Array.from({ length: 90 }, () => 78.4)).slopeKPerS).toBe(0);
  });

  test('tells from where the ramp began', () => {
    const bend = noisy('bend', 200, (timeS) => 78.4 + 0.01 * Math.max(0, timeS - 250));
    const { logLikelihoodRatio, levelC } = seen(bend);
    expect(logLikelihoodRatio).toBeGreaterThan(30);
    expect(levelC).toBeGreaterThan(78.2);
    expect(levelC).toBeLessThan(78.6);
  });

  test('does not grow with a head that sinks', () => {
    const sinking = noisy('sinks', 150, (timeS) => 78.4 - 0.01 * Math.max(0, timeS - 100));
    expect(seen(sinking).logLikelihoodRatio).toBeLessThan(5);
  });

  test('is forgotten by a restart', () => {
    const detector = createDepartureDetector();
    for (let timeS = 0; timeS < 400; timeS += 2) {
      detector.see(timeS, 78.4 + 0.01 * Math.max(0, timeS - 200), noise);
    }
    detector.restart();
    detector.see(400, 80.4, noise);
    detector.see(402, 80.4, noise);
    expect(detector.evidence().logLikelihoodRatio).toBeLessThan(1);
  });

  test('is none by one block after the first, however far it jumps, and some by the next', () => {
    const detector = createDepartureDetector();
    const ratios = [78.4, 80, 81.6].map((meanC, index) => {
      detector.see(2 * index, meanC, noise);
      return detector.evidence().logLikelihoodRatio;
    });
    expect(ratios).toEqual([0, 0, expect.any(Number)]);
    expect(ratios[2]).toBeGreaterThan(1);
  });

  test('names the level as it is believed where nothing speaks for a ramp', () => {
    const { logLikelihoodRatio, levelC } = seen(Array.from({ length: 90 }, () => 78.4));
    expect([logLikelihoodRatio, levelC]).toEqual([0, expect.closeTo(78.4, 9)]);
  });

  test('is gone at once with a restart, and begins with no ramp of before', () => {
    const detector = createDepartureDetector();
    const ramp = noisy('restart', 120, (timeS) => 78.4 + 0.01 * Math.max(0, timeS - 100));
    for (const [index, meanC] of ramp.entries()) detector.see(2 * index, meanC, noise);
    expect(detector.evidence().logLikelihoodRatio).toBeGreaterThan(14);
    detector.restart();
    expect(detector.evidence()).toMatchObject({ logLikelihoodRatio: 0, slopeKPerS: 0 });
    const after = noisy('after', 40, (timeS) => 79 + 0.01 * Math.max(0, timeS - 40));
    for (const [index, meanC] of after.entries()) detector.see(240 + 2 * index, meanC, noise);
    expect(detector.evidence().logLikelihoodRatio).toBeCloseTo(ratioByCovariance(after), 2);
  });

  test('still tells of a ramp that goes on for longer than onsets are kept', () => {
    const long = noisy('long', 450, (timeS) => 78.4 + 0.004 * Math.max(0, timeS - 300));
    const { logLikelihoodRatio, levelC } = seen(long);
    expect(logLikelihoodRatio).toBeGreaterThan(14);
    // Six minutes before its end, at 900 s, the ramp had come to 79.4 °C; an older level is kept no more.
    expect(levelC).toBeGreaterThan(78.6);
  });
});
