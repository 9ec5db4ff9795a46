import { describe, expect, test } from 'vitest';
import { dewPoint, OutOfRangeError } from '#shared-core';
import {
  moleFractionFromStrength,
  strengthFromMoleFraction,
} from '../../../shared-core/alcoholometry/strength-and-mole-fraction.ts';
import {
  type BatchToExpect,
  batchByVolume,
} from '../../../shared-core/by-volume/batch-by-volume.ts';
import { equilibriumCurve } from '../../../shared-core/column/steady/equilibrium-curve.ts';

const batch: BatchToExpect = {
  chargeMl: 100,
  chargeAbv: 20,
  pressureKPa: 101.325,
  upToMl: 24,
  column: null,
};

describe('the course expected of a batch', () => {
  test('begins with the vapour over the charge, and has a point at each hundred and twentieth of the volume', () => {
    const course = batchByVolume(batch);
    const y = equilibriumCurve(101.325)(moleFractionFromStrength(20));
    expect(course[0]).toEqual({
      volumeMl: 0,
      headC: expect.closeTo(
        dewPoint({ ethanolMoleFraction: y, pressureKPa: 101.325 }).temperatureC,
        9,
      ),
      strengthAbv: expect.closeTo(strengthFromMoleFraction(y), 9),
    });
    expect(course.map(({ volumeMl }) => volumeMl)).toEqual(
      Array.from({ length: 121 }, (_, step) => expect.closeTo(0.2 * step, 9)),
    );
  });

  test('ends where the pot holds no ethanol any more', () => {
    const weak = batchByVolume({ ...batch, chargeAbv: 0.1, upToMl: 90 });
    const lastMl = weak.at(-1)?.volumeMl ?? 0;
    expect(lastMl).toBeGreaterThan(10);
    expect(lastMl).toBeLessThan(80);
    expect(weak.at(-1)?.headC).toBeGreaterThan(99.9);
    expect(weak.at(-1)?.strengthAbv).toBeGreaterThan(0);
  });

  test.each([
    [{ chargeMl: 0 }, /charge/],
    [{ chargeAbv: 0.09 }, /strength of the charge/],
    [{ chargeAbv: 90.1 }, /strength of the charge/],
    [{ upToMl: 0 }, /distillate/],
    [{ upToMl: 100.1 }, /distillate/],
    [{ upToMl: Number.NaN }, /distillate/],
    [{ pressureKPa: 49.9 }, /pressure/],
    [{ pressureKPa: 110.1 }, /pressure/],
  ] as const)('throws for %j, and names what is out of range', (change, name) => {
    const call = () => batchByVolume({ ...batch, ...change });
    expect(call).toThrow(OutOfRangeError);
    expect(call).toThrow(name);
  });
});
