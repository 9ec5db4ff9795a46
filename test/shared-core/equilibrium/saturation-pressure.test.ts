import { describe, expect, test } from 'vitest';
import { OutOfRangeError, saturationPressureKPa } from '#shared-core';
import {
  celsiusOffsetK,
  logSaturationPressure,
} from '../../../shared-core/equilibrium/saturation-pressure.ts';
import { saturationTemperatureC } from '../../../shared-core/equilibrium/saturation-temperature.ts';
import reference from '../../reference/pure_components.json' with { type: 'json' };

const components = ['ethanol', 'water'] as const;

describe('saturationPressureKPa', () => {
  test('agrees with IAPWS-IF97 region 4 for water to 1e-4', () => {
    // python3-iapws, IF97 equation 30; test/reference/pure_components.json.
    const published = Object.entries(reference.water.IF97_psat_kPa);
    for (const [temperatureC, pressureKPa] of published) {
      const computed = saturationPressureKPa('water', Number(temperatureC));
      expect(Math.abs(computed / pressureKPa - 1)).toBeLessThan(1e-4);
    }
    // IAPWS R7-97, table 35 [MPa].
    for (const [key, megapascal] of Object.entries(reference.water.IF97_region4_check_MPa)) {
      const temperatureC = Number.parseFloat(key) - celsiusOffsetK;
      const computed = saturationPressureKPa('water', temperatureC);
      expect(Math.abs(computed / (1000 * megapascal) - 1)).toBeLessThan(1e-3);
    }
    expect(published.length).toBeGreaterThan(8);
  });

  test('agrees with static measurements of ethanol within 0.15 %', () => {
    // Pemberton & Mash, J. Chem. Thermodynamics 10 (1978) 867, pure ethanol.
    expect(Math.abs(saturationPressureKPa('ethanol', 30) / 10.472 - 1)).toBeLessThan(0.0015);
    expect(Math.abs(saturationPressureKPa('ethanol', 90) / 157.892 - 1)).toBeLessThan(0.0015);
  });

  test('has an analytic slope that agrees with a central difference', () => {
    for (const component of components) {
      for (const temperatureK of [274, 303, 351, 373, 400, 480]) {
        const at = (shiftK: number) =>
          logSaturationPressure(component, temperatureK + shiftK).value;
        const numeric = (at(1e-3) - at(-1e-3)) / 2e-3;
        expect(logSaturationPressure(component, temperatureK).perK).toBeCloseTo(numeric, 8);
      }
    }
  });

  test('refuses temperatures outside its range, NaN included', () => {
    for (const component of components) {
      for (const temperatureC of [Number.NaN, -0.1, 374, Number.POSITIVE_INFINITY]) {
        expect(() => saturationPressureKPa(component, temperatureC)).toThrow(OutOfRangeError);
      }
    }
  });
});

describe('saturationTemperatureC', () => {
  test('inverts the saturation pressure to 1e-9 K over its whole range', () => {
    for (const component of components) {
      for (const pressureKPa of [2, 4.247, 20, 60, 101.325, 200]) {
        const temperatureC = saturationTemperatureC(component, pressureKPa);
        expect(saturationPressureKPa(component, temperatureC)).toBeCloseTo(pressureKPa, 8);
      }
    }
  });

  test('gives the IF97 boiling point of water at 0.1 MPa', () => {
    // IAPWS R7-97, table 36: 372.755 918 611 K.
    expect(saturationTemperatureC('water', 100)).toBeCloseTo(372.7559186 - celsiusOffsetK, 2);
  });

  test('refuses pressures outside 2 … 200 kPa, NaN included', () => {
    for (const pressureKPa of [Number.NaN, 1.9, 200.1, -1]) {
      expect(() => saturationTemperatureC('water', pressureKPa)).toThrow(OutOfRangeError);
    }
  });
});
