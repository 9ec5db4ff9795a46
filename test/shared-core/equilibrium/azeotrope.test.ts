import { describe, expect, test } from 'vitest';
import { azeotrope, bubblePoint, OutOfRangeError } from '#shared-core';

describe('azeotrope', () => {
  test('is where vapour equals liquid and the boiling temperature is least', () => {
    for (const pressureKPa of [20, 32.86, 60, 85, 101.325, 110, 200]) {
      const { temperatureC, ethanolMoleFraction } = azeotrope(pressureKPa);
      const there = bubblePoint({ ethanolMoleFraction, pressureKPa });
      expect(there.vapourEthanolMoleFraction).toBeCloseTo(ethanolMoleFraction, 11);
      expect(there.temperatureC).toBeCloseTo(temperatureC, 10);
      for (const shift of [-0.02, 0.02]) {
        const beside = bubblePoint({
          ethanolMoleFraction: ethanolMoleFraction + shift,
          pressureKPa,
        });
        expect(beside.temperatureC).toBeGreaterThan(temperatureC);
      }
    }
  });

  test('grows richer as pressure falls and moves 0.25 K with each kPa near 1 atm', () => {
    expect(azeotrope(60).ethanolMoleFraction).toBeGreaterThan(
      azeotrope(101.325).ethanolMoleFraction,
    );
    const slope = azeotrope(101).temperatureC - azeotrope(100).temperatureC;
    expect(slope).toBeCloseTo(0.25, 1);
  });

  test('refuses pressures at which it is not known, NaN included', () => {
    for (const pressureKPa of [Number.NaN, 19.9, 200.1, 0, -5]) {
      expect(() => azeotrope(pressureKPa)).toThrow(OutOfRangeError);
    }
  });
});
