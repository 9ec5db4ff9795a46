import { describe, expect, test } from 'vitest';
import { azeotrope, OutOfRangeError } from '#shared-core';
import { limitTemperatureC } from '../../../shared-core/equilibrium/limit-temperature.ts';
import { saturationTemperatureC } from '../../../shared-core/equilibrium/saturation-temperature.ts';

describe('limitTemperatureC', () => {
  test('lies 1.0 … 1.1 K above the azeotrope for 90 % vol from 70 to 104 kPa', () => {
    for (let pressureKPa = 70; pressureKPa <= 104; pressureKPa += 2) {
      const above =
        limitTemperatureC({ leastStrengthAbv: 90, pressureKPa }) -
        azeotrope(pressureKPa).temperatureC;
      expect(above).toBeGreaterThan(1);
      expect(above).toBeLessThan(1.1);
    }
  });

  test('falls with strength from boiling water towards the azeotrope', () => {
    const pressureKPa = 98.6;
    const limits = [0, 20, 40, 60, 80, 90, 95, 96].map((leastStrengthAbv) =>
      limitTemperatureC({ leastStrengthAbv, pressureKPa }),
    );
    expect(limits).toEqual([...limits].sort((a, b) => b - a));
    expect(limits[0]).toBeCloseTo(saturationTemperatureC('water', pressureKPa), 8);
    expect(limits.at(-1)).toBeGreaterThan(azeotrope(pressureKPa).temperatureC);
  });

  test('refuses strengths and pressures outside its range, NaN included', () => {
    for (const [leastStrengthAbv, pressureKPa] of [
      [97, 101.325],
      [-1, 101.325],
      [Number.NaN, 101.325],
      [80, 19],
      [80, Number.NaN],
    ] as const) {
      expect(() => limitTemperatureC({ leastStrengthAbv, pressureKPa })).toThrow(OutOfRangeError);
    }
  });
});
