import { describe, expect, test } from 'vitest';
import { azeotrope, azeotropeSlopeKPerKPa, OutOfRangeError } from '#shared-core';
import { equilibriumModelUncertaintyK } from '../../../shared-core/equilibrium/model-uncertainty.ts';

describe('the doubt of the equilibrium model', () => {
  const at = (temperatureAboveAzeotropeK: number, pressureKPa = 101.325) =>
    equilibriumModelUncertaintyK({ temperatureAboveAzeotropeK, pressureKPa });

  test('is least at the azeotrope, grows alike on both sides of it, and is held at what the measurements allow', () => {
    expect([0, 2, -2, 5, 5.7, 20].map((aboveK) => at(aboveK))).toEqual([
      0.04,
      // √(0.04² + (0.02 × 2)²) K.
      expect.closeTo(0.04 * Math.SQRT2, 12),
      expect.closeTo(0.04 * Math.SQRT2, 12),
      expect.closeTo(Math.hypot(0.04, 0.1), 12),
      0.12,
      0.12,
    ]);
  });

  test('grows below 60 kPa as the pressure falls, and not above', () => {
    expect([200, 60, 30, 20].map((pressureKPa) => at(0, pressureKPa))).toEqual([
      0.04,
      0.04,
      0.08,
      expect.closeTo(0.12, 12),
    ]);
  });

  test.each([
    [201, 100],
    [-201, 100],
    [0, 19.9],
    [0, 200.1],
    [Number.NaN, 100],
  ])('is not told %d K above the azeotrope at %d kPa', (aboveK, pressureKPa) => {
    expect(() => at(aboveK, pressureKPa)).toThrow(OutOfRangeError);
  });
});

test('the azeotrope rises with pressure as its own temperatures do, and the slope is refused where it is not known', () => {
  for (const pressureKPa of [21, 98.6, 199]) {
    const rise =
      azeotrope(pressureKPa + 0.25).temperatureC - azeotrope(pressureKPa - 0.25).temperatureC;
    expect(azeotropeSlopeKPerKPa(pressureKPa) / (2 * rise)).toBeCloseTo(1, 3);
  }
  for (const pressureKPa of [20.9, 199.1, Number.NaN])
    expect(() => azeotropeSlopeKPerKPa(pressureKPa)).toThrow(OutOfRangeError);
});
