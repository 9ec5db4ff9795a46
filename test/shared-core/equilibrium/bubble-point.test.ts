import { describe, expect, test } from 'vitest';
import { bubblePoint, OutOfRangeError } from '#shared-core';
import { boilingState } from '../../../shared-core/equilibrium/boiling-state.ts';
import { slopesOfState } from '../../../shared-core/equilibrium/bubble-curve-slopes.ts';
import {
  bubblePressure,
  bubblePressureKPa,
} from '../../../shared-core/equilibrium/bubble-pressure.ts';
import { celsiusOffsetK } from '../../../shared-core/equilibrium/saturation-pressure.ts';
import { saturationTemperatureC } from '../../../shared-core/equilibrium/saturation-temperature.ts';

const pressuresKPa = [2, 10, 32.86, 60, 101.325, 200];
const fractions = [0, 1e-300, 1e-12, 1e-6, 0.003, 0.05, 0.3, 0.7, 0.95, 1 - 1e-9, 1 - 1e-16, 1];
const mixtures = pressuresKPa.flatMap((pressureKPa) =>
  fractions.map((ethanolMoleFraction) => ({ ethanolMoleFraction, pressureKPa })),
);

describe('bubblePoint', () => {
  test('solves the total pressure for any composition and pressure, without NaN', () => {
    for (const mixture of mixtures) {
      const { temperatureC, vapourEthanolMoleFraction } = bubblePoint(mixture);
      const back = bubblePressure({
        ethanolMoleFraction: mixture.ethanolMoleFraction,
        temperatureC,
      });
      expect(Math.abs(back.pressureKPa / mixture.pressureKPa - 1)).toBeLessThan(1e-12);
      expect(back.vapourEthanolMoleFraction).toBeCloseTo(vapourEthanolMoleFraction, 12);
      expect(vapourEthanolMoleFraction).toBeGreaterThanOrEqual(0);
      expect(vapourEthanolMoleFraction).toBeLessThanOrEqual(1);
    }
  });

  test('ends in the boiling points of the pure components', () => {
    for (const pressureKPa of pressuresKPa) {
      expect(bubblePoint({ ethanolMoleFraction: 0, pressureKPa })).toEqual({
        temperatureC: expect.closeTo(saturationTemperatureC('water', pressureKPa), 8),
        vapourEthanolMoleFraction: 0,
      });
      expect(bubblePoint({ ethanolMoleFraction: 1, pressureKPa })).toEqual({
        temperatureC: expect.closeTo(saturationTemperatureC('ethanol', pressureKPa), 8),
        vapourEthanolMoleFraction: 1,
      });
    }
  });

  test('gives a vapour that grows with the liquid: the mixture never splits in two', () => {
    for (const pressureKPa of pressuresKPa) {
      let before = -1;
      for (let index = 0; index <= 400; index++) {
        const point = bubblePoint({ ethanolMoleFraction: index / 400, pressureKPa });
        expect(point.vapourEthanolMoleFraction).toBeGreaterThan(before);
        before = point.vapourEthanolMoleFraction;
      }
    }
  });

  test('refuses mixtures outside its range, NaN included', () => {
    const refused = [
      [Number.NaN, 100],
      [-1e-15, 100],
      [1.0000001, 100],
      [0.5, Number.NaN],
      [0.5, 1.99],
      [0.5, 200.1],
      [0.5, -100],
    ] as const;
    for (const [ethanolMoleFraction, pressureKPa] of refused) {
      expect(() => bubblePoint({ ethanolMoleFraction, pressureKPa })).toThrow(OutOfRangeError);
    }
    expect(() => bubblePressureKPa({ ethanolMoleFraction: 0.5, temperatureC: 131 })).toThrow(
      OutOfRangeError,
    );
  });
});

describe('slopes of the boiling curve', () => {
  test('agree with central differences at constant pressure', () => {
    const step = 1e-5;
    for (const pressureKPa of pressuresKPa) {
      for (const x of [2e-5, 0.003, 0.05, 0.3, 0.7, 0.95, 1 - 2e-5]) {
        const at = (shift: number) => bubblePoint({ ethanolMoleFraction: x + shift, pressureKPa });
        const slopes = slopesOfState(boilingState(x, at(0).temperatureC + celsiusOffsetK));
        const perX = (at(step).temperatureC - at(-step).temperatureC) / (2 * step);
        const vapour =
          (at(step).vapourEthanolMoleFraction - at(-step).vapourEthanolMoleFraction) / (2 * step);
        expect(Math.abs(slopes.temperaturePerX - perX)).toBeLessThan(
          1e-5 * Math.max(1, Math.abs(perX)),
        );
        expect(Math.abs(slopes.vapourPerX - vapour)).toBeLessThan(1e-5 * Math.max(1, vapour));
      }
    }
  });

  test('agree with central differences in temperature and composition', () => {
    for (const x of [0.001, 0.2, 0.6, 0.97]) {
      for (const temperatureC of [10, 60, 95, 120]) {
        const temperatureK = temperatureC + celsiusOffsetK;
        const state = boilingState(x, temperatureK);
        const warm = boilingState(x, temperatureK + 0.01);
        const cold = boilingState(x, temperatureK - 0.01);
        const rich = boilingState(x + 1e-5, temperatureK);
        const weak = boilingState(x - 1e-5, temperatureK);
        expect(state.logPressurePerK).toBeCloseTo((warm.logPressure - cold.logPressure) / 0.02, 7);
        expect(state.logPressurePerX).toBeCloseTo((rich.logPressure - weak.logPressure) / 2e-5, 4);
        expect(state.logVolatilityPerK).toBeCloseTo(
          (warm.logVolatility - cold.logVolatility) / 0.02,
          7,
        );
        expect(state.logVolatilityPerX).toBeCloseTo(
          (rich.logVolatility - weak.logVolatility) / 2e-5,
          4,
        );
      }
    }
  });
});
