import { describe, expect, test } from 'vitest';
import {
  createReadingSteps,
  withSteps,
} from '../../../../shared-core/monitor/sense/reading-steps.ts';
import { createRandom } from '../../../../shared-core/random/index.ts';

/** The step learned from a head that warms by so much a reading, with noise, as a probe shows it. */
function stepOf(show: (valueC: number) => number, perReadingK = 0.4, readings = 200): number {
  const random = createRandom('steps');
  const steps = createReadingSteps();
  for (let index = 0; index < readings; index += 1) {
    steps.see(show(20 + perReadingK * index + 0.05 * random.normal()));
  }
  return steps.stepK();
}

const inStepsOf =
  (stepK: number) =>
  (valueC: number): number =>
    stepK * Math.round(valueC / stepK);

describe('the steps a probe reads in', () => {
  test.each([1, 0.5, 0.25, 0.1, 0.0625])('are found: %s K', (stepK) => {
    expect(stepOf(inStepsOf(stepK))).toBeCloseTo(stepK, 6);
  });

  test('are found where the readings are seldom, corrected, or rounded on the way', () => {
    expect(stepOf(inStepsOf(1), 7.3)).toBeCloseTo(1, 6);
    expect(stepOf((valueC) => 0.4 + 1.01 * inStepsOf(0.5)(valueC))).toBeCloseTo(0.505, 6);
    expect(stepOf((valueC) => Number(inStepsOf(0.0625)(valueC).toFixed(3)))).toBeLessThan(0.07);
  });

  test('are none where a probe reads finely, and none while too little has changed to tell', () => {
    expect(stepOf((valueC) => valueC)).toBe(0);
    expect(stepOf((valueC) => valueC, 7.3, 9)).toBe(0);
    expect(stepOf(inStepsOf(1), 1, 8)).toBe(0);
    expect(stepOf(inStepsOf(1), 1, 9)).toBeCloseTo(1, 6);
    expect(stepOf(() => 78)).toBe(0);
  });

  test('a noise is not less than they leave open', () => {
    const noise = { whiteSdK: 0.02, slowSdK: 0.1 };
    expect(withSteps(noise, 1)).toEqual({ whiteSdK: 0.02, slowSdK: 1 / Math.sqrt(12) });
    expect(withSteps(noise, 0.1)).toBe(noise);
  });
});
