import { describe, expect, test } from 'vitest';
import {
  alcoholByVolume,
  densityKgPerM3,
  massFractionFromAlcoholByVolume,
  moleFractionFromStrength,
  OutOfRangeError,
  strengthFromMoleFraction,
} from '#shared-core';
import {
  massFractionFromMoleFraction,
  moleFractionFromMassFraction,
} from '../../../shared-core/alcoholometry/amount-fractions.ts';
import { findRoot } from '../../../shared-core/alcoholometry/find-root.ts';
import {
  densityFromHydrometer,
  strengthFromAlcoholometer,
} from '../../../shared-core/alcoholometry/hydrometer.ts';
import { massFractionFromDensity } from '../../../shared-core/alcoholometry/mass-fraction-from-density.ts';
import { densityFromPycnometer } from '../../../shared-core/alcoholometry/pycnometer.ts';
import { strengthFromDensity } from '../../../shared-core/alcoholometry/strength-from-density.ts';
import { expectRange } from '../../support/expect-range.ts';

const floated = {
  indicatedAbv: 40,
  temperatureC: 20,
  readingUncertaintyAbv: 0.5,
  temperatureUncertaintyK: 0.5,
};
const measured = {
  densityKgPerM3: 950,
  temperatureC: 20,
  densityUncertaintyKgPerM3: 0.5,
  temperatureUncertaintyK: 0.5,
};
const weighed = {
  emptyG: 30,
  withWaterG: 80,
  withSampleG: 75,
  waterTemperatureC: 20,
  sampleTemperatureC: 20,
  weighingUncertaintyG: 0.01,
};
// OIML R 22: pure ethanol and pure water at 20 °C.
const [lightest, heaviest] = [789.239, 998.201];

describe('each function answers up to the ends of its range, and names what it refuses beyond', () => {
  test.each([
    ['ethanol mass fraction', 'kg/kg', 0, 1, moleFractionFromMassFraction],
    ['ethanol mole fraction', 'mol/mol', 0, 1, massFractionFromMoleFraction],
    ['ethanol mole fraction', 'mol/mol', 0, 1, strengthFromMoleFraction],
    [
      'ethanol mass fraction',
      'kg/kg',
      0,
      1,
      (ethanolMassFraction: number) => alcoholByVolume({ ethanolMassFraction }),
    ],
    [
      'strength',
      '% vol',
      0,
      100,
      (abv: number) => massFractionFromAlcoholByVolume({ alcoholByVolume: abv }),
    ],
    [
      'ethanol mass fraction',
      'kg/kg',
      0,
      1,
      (ethanolMassFraction: number) => densityKgPerM3({ ethanolMassFraction, temperatureC: 20 }),
    ],
    [
      'temperature',
      '°C',
      -20,
      40,
      (temperatureC: number) => densityKgPerM3({ ethanolMassFraction: 0.4, temperatureC }),
    ],
    [
      'temperature',
      '°C',
      0,
      40,
      (temperatureC: number) => massFractionFromDensity({ densityKgPerM3: 950, temperatureC }),
    ],
    [
      'hydrometer reading',
      'kg/m³',
      700,
      1200,
      (density: number) =>
        densityFromHydrometer({ indicatedDensityKgPerM3: density, temperatureC: 20 }),
    ],
    [
      'temperature',
      '°C',
      0,
      40,
      (temperatureC: number) =>
        densityFromHydrometer({ indicatedDensityKgPerM3: 950, temperatureC }),
    ],
    [
      'alcoholometer reading',
      '% vol',
      0,
      100,
      (indicatedAbv: number) => strengthFromAlcoholometer({ ...floated, indicatedAbv }),
    ],
    [
      'temperature',
      '°C',
      0,
      40,
      (temperatureC: number) => strengthFromAlcoholometer({ ...floated, temperatureC }),
    ],
    [
      'reading uncertainty',
      '% vol',
      0,
      10,
      (readingUncertaintyAbv: number) =>
        strengthFromAlcoholometer({ ...floated, readingUncertaintyAbv }),
    ],
    [
      'temperature uncertainty',
      'K',
      0,
      10,
      (temperatureUncertaintyK: number) =>
        strengthFromAlcoholometer({ ...floated, temperatureUncertaintyK }),
    ],
    [
      'temperature',
      '°C',
      0,
      40,
      (temperatureC: number) => strengthFromDensity({ ...measured, temperatureC }),
    ],
    [
      'density uncertainty',
      'kg/m³',
      0,
      50,
      (densityUncertaintyKgPerM3: number) =>
        strengthFromDensity({ ...measured, densityUncertaintyKgPerM3 }),
    ],
    [
      'temperature uncertainty',
      'K',
      0,
      10,
      (temperatureUncertaintyK: number) =>
        strengthFromDensity({ ...measured, temperatureUncertaintyK }),
    ],
    [
      'mass of the empty pycnometer',
      'g',
      Number.MIN_VALUE,
      10_000,
      (emptyG: number) =>
        densityFromPycnometer({
          ...weighed,
          emptyG,
          withWaterG: emptyG + 50,
          withSampleG: emptyG + 45,
        }),
    ],
    [
      'temperature of the water',
      '°C',
      0,
      40,
      (waterTemperatureC: number) => densityFromPycnometer({ ...weighed, waterTemperatureC }),
    ],
    [
      'temperature of the sample',
      '°C',
      0,
      40,
      (sampleTemperatureC: number) => densityFromPycnometer({ ...weighed, sampleTemperatureC }),
    ],
    [
      'weighing uncertainty',
      'g',
      0,
      10,
      (weighingUncertaintyG: number) => densityFromPycnometer({ ...weighed, weighingUncertaintyG }),
    ],
  ] as const)('%s [%s] from %d to %d (%o)', (quantity, unit, low, high, act) => {
    expectRange(act, { quantity, low, high, unit });
  });

  // Their own limits come out of a difference, or out of the table: only what is said of them is exact.
  test.each([
    ['mass of the water', 'g', 0.1, 10_000, { ...weighed, withWaterG: 30.05 }],
    ['mass of the water', 'g', 0.1, 10_000, { ...weighed, withWaterG: 10_031 }],
    ['mass of the sample', 'g', 0.1, 10_000, { ...weighed, withSampleG: 30.05 }],
    ['mass of the sample', 'g', 0.1, 10_000, { ...weighed, withSampleG: 10_031 }],
  ])('%s [%s] from %d to %d', (quantity, unit, low, high, weighings) => {
    expect(() => densityFromPycnometer(weighings)).toThrow(OutOfRangeError);
    expect(() => densityFromPycnometer(weighings)).toThrow(
      expect.objectContaining({ detail: expect.objectContaining({ quantity, unit, low, high }) }),
    );
  });

  test('a density lighter than ethanol or heavier than water has no mass fraction', () => {
    for (const [density, beyond] of [
      [lightest + 0.001, lightest - 0.001],
      [heaviest - 0.001, heaviest + 0.001],
    ] as const) {
      const found = (densityKgPerM3: number) =>
        massFractionFromDensity({ densityKgPerM3, temperatureC: 20 });
      expect(() => found(density)).not.toThrow();
      expect(() => found(beyond)).toThrow(
        expect.objectContaining({
          detail: {
            quantity: 'density',
            value: beyond,
            low: expect.closeTo(lightest, 3),
            high: expect.closeTo(heaviest, 3),
            unit: 'kg/m³',
          },
        }),
      );
    }
  });

  test('a density beyond ethanol or water is believed as far as its doubt reaches, and no farther', () => {
    // 1.96 × √(0.5² + (0.5 × slope)²) kg/m³; the slope at 20 °C is −0.850 for ethanol and −0.206 for water (OIML R 22).
    const reach = (slope: number) => 1.96 * Math.hypot(0.5, 0.5 * slope);
    const found = (densityKgPerM3: number) => strengthFromDensity({ ...measured, densityKgPerM3 });
    for (const [limit, slope, sign, massFraction] of [
      [lightest, 0.85, -1, 1],
      [heaviest, 0.206, 1, 0],
    ] as const) {
      const end = limit + sign * reach(slope);
      expect(found(end - sign * 0.01).ethanolMassFraction.value).toBe(massFraction);
      expect(() => found(end + sign * 0.01)).toThrow(
        expect.objectContaining({
          detail: expect.objectContaining({ quantity: 'density', unit: 'kg/m³' }),
        }),
      );
    }
  });
});

describe('the search for a root', () => {
  test('finds it to 1e-13 wherever it lies, right beside either end too, in at most forty questions', () => {
    let [worst, most] = [0, 0];
    for (let index = 0; index <= 300; index += 1) {
      for (const root of [index / 300, 10 ** -index, 1 - 10 ** (-index / 20)]) {
        for (const bend of [1, 20, -3]) {
          let asked = 0;
          const found = findRoot(
            (at) => {
              asked += 1;
              return Math.expm1(bend * (at - root));
            },
            0,
            1,
          );
          worst = Math.max(worst, Math.abs(found - root));
          most = Math.max(most, asked);
        }
      }
    }
    expect(worst).toBeLessThan(1e-13);
    expect(most).toBeLessThanOrEqual(40);
  });

  test('is exact at the ends, and asks a smooth function no more than a dozen times', () => {
    let asked = 0;
    const find = (root: number) =>
      findRoot(
        (at) => {
          asked += 1;
          return Math.exp(at) - Math.exp(root);
        },
        0,
        1,
      );
    expect([find(0), find(1), asked]).toEqual([0, 1, 4]);
    for (const root of [1e-12, 0.1, 0.4, 0.9, 1 - 1e-12]) {
      asked = 0;
      find(root);
      expect(asked).toBeLessThanOrEqual(12);
    }
  });
});

test('a trace of ethanol is a trace, however little it is', () => {
  for (const trace of [1e-12, 1e-15, 1e-17, 1e-300]) {
    expect(massFractionFromAlcoholByVolume({ alcoholByVolume: 100 * trace })).toBeLessThan(1e-11);
    expect(moleFractionFromStrength(strengthFromMoleFraction(trace))).toBeLessThan(1e-11);
  }
});
