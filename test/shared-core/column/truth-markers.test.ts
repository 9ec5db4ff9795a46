import { describe, expect, test } from 'vitest';
import { pearFermentSetup, simulateBatch, teachingRigs } from '#shared-core';
import type { BatchSetup } from '../../../shared-core/column/batch-setup.ts';

const pear = pearFermentSetup();
const calm = simulateBatch(pear, { durationS: 4200 });

describe('truth markers', () => {
  test('come in the order of the run and agree with the samples around them', () => {
    const { truth, samples } = calm;
    const times = [
      truth.vapourArrivalS,
      truth.plateauStartS,
      truth.plateauLeftS,
      truth.limitReachedS,
    ].map((timeS) => timeS ?? Number.NaN);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    const limitS = truth.limitReachedS ?? Number.NaN;
    expect(samples[limitS - 1]?.headVapourStrengthAbv).toBeGreaterThanOrEqual(80);
    expect(samples[limitS]?.headVapourStrengthAbv).toBeLessThan(80);
    const main = samples[limitS];
    expect(Math.abs((main?.aboveLimitMl ?? 0) - truth.aboveLimitMl)).toBeLessThan(0.1);
  });

  test('heat taken away on the plateau is neither its end nor the limit', () => {
    const interrupted: BatchSetup = {
      ...pear,
      schedule: [
        ...(pear.schedule ?? []),
        { timeS: 1300, kind: 'heat-removed' },
        { timeS: 1390, kind: 'heat-returned' },
      ],
    };
    const { truth } = simulateBatch(interrupted, { durationS: 4200 });
    expect(truth.vapourArrivalS).toBe(calm.truth.vapourArrivalS);
    expect(truth.plateauLeftS).toBeGreaterThan(1700);
    expect(truth.limitReachedS).toBeGreaterThan(calm.truth.limitReachedS ?? Number.NaN);
  });

  test('a rig that never reaches the limit has neither plateau nor limit, only a strongest vapour', () => {
    const { truth } = simulateBatch({ ...pear, rig: teachingRigs.simpleHead });
    const { plateauStartS, plateauLeftS, limitReachedS, aboveLimitMl } = truth;
    expect({ plateauStartS, plateauLeftS, limitReachedS, aboveLimitMl }).toEqual({
      plateauStartS: null,
      plateauLeftS: null,
      limitReachedS: null,
      aboveLimitMl: 0,
    });
    expect(truth.strongestAbv).toBeGreaterThan(50);
    expect(truth.strongestAbv).toBeLessThan(80);
  });

  test('a run that ends on the plateau has not reached the limit', () => {
    const { truth } = simulateBatch(pear, { durationS: 1800 });
    expect(truth.limitReachedS).toBeNull();
    expect(truth.plateauStartS).toBe(calm.truth.plateauStartS);
  });
});
