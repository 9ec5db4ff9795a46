import { describe, expect, test } from 'vitest';
import { bubblePoint, dewPoint, OutOfRangeError } from '#shared-core';
import { boilingState } from '../../../shared-core/equilibrium/boiling-state.ts';
import { dewPressurePerK } from '../../../shared-core/equilibrium/dew-pressure-slope.ts';
import { celsiusOffsetK } from '../../../shared-core/equilibrium/saturation-pressure.ts';

const pressuresKPa = [2, 32.86, 98.6, 200];

describe('dewPoint', () => {
  test('inverts the bubble point for any liquid, traces included', () => {
    for (const pressureKPa of pressuresKPa) {
      for (const x of [0, 1e-200, 1e-12, 1e-5, 0.02, 0.2, 0.5, 0.8, 0.9, 0.97, 0.99999, 1]) {
        const bubble = bubblePoint({ ethanolMoleFraction: x, pressureKPa });
        const dew = dewPoint({
          ethanolMoleFraction: bubble.vapourEthanolMoleFraction,
          pressureKPa,
        });
        expect(Math.abs(dew.temperatureC - bubble.temperatureC)).toBeLessThan(1e-8);
        expect(Math.abs(dew.liquidEthanolMoleFraction - x)).toBeLessThan(1e-9);
        expect(dew.liquidEthanolMoleFraction).toBeLessThan(2 * x + 1e-300);
      }
    }
  });

  test('answers for any vapour without NaN', () => {
    for (const pressureKPa of pressuresKPa) {
      for (const y of [0, 5e-324, 1e-12, 0.1, 0.5, 0.895, 0.9, 0.95, 1 - 1e-12, 1 - 1e-16, 1]) {
        const { temperatureC, liquidEthanolMoleFraction } = dewPoint({
          ethanolMoleFraction: y,
          pressureKPa,
        });
        expect(Number.isFinite(temperatureC + liquidEthanolMoleFraction)).toBe(true);
      }
    }
  });

  test('refuses mixtures outside its range, NaN included', () => {
    for (const [ethanolMoleFraction, pressureKPa] of [
      [Number.NaN, 100],
      [1.1, 100],
      [0.5, Number.NaN],
      [0.5, 0],
    ] as const) {
      expect(() => dewPoint({ ethanolMoleFraction, pressureKPa })).toThrow(OutOfRangeError);
    }
  });
});

test('the slope of the dew pressure at constant vapour agrees with a central difference', () => {
  for (const pressureKPa of [60, 101.325]) {
    for (const y of [0.05, 0.3, 0.6, 0.88]) {
      const { temperatureC, liquidEthanolMoleFraction } = dewPoint({
        ethanolMoleFraction: y,
        pressureKPa,
      });
      const state = boilingState(liquidEthanolMoleFraction, temperatureC + celsiusOffsetK);
      const at = (kPa: number) =>
        dewPoint({ ethanolMoleFraction: y, pressureKPa: kPa }).temperatureC;
      const numericK = (at(pressureKPa + 0.01) - at(pressureKPa - 0.01)) / 0.02;
      expect(1 / dewPressurePerK(state, pressureKPa)).toBeCloseTo(numericK, 5);
    }
  }
});
