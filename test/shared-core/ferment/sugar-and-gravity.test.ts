import { describe, expect, test } from 'vitest';
import { OutOfRangeError } from '#shared-core';
import {
  originalExtractPlato,
  realExtractPlato,
  strengthFromGravities,
} from '../../../shared-core/ferment/balling.ts';
import {
  extractGPerL,
  gravityFromPlato,
  platoFromGravity,
} from '../../../shared-core/ferment/gravity-and-extract.ts';
import { gravityAt20C } from '../../../shared-core/ferment/gravity-at-20.ts';
import {
  carbonDioxidePerAbvGPerL,
  dissolvedGasGPerL,
  ethanolCarriedGPerG,
  strengthFromMassLoss,
  waterCarriedGPerG,
} from '../../../shared-core/ferment/mass-loss.ts';
import { scaleResolution } from '../../../shared-core/ferment/scale-resolution.ts';
import {
  carbonDioxidePerEthanolGPerG,
  dryGravity,
  fromSugar,
  lawfulSugarPerAbvGPerL,
  strengthOf,
} from '../../../shared-core/ferment/sugar-to-ethanol.ts';
import { referenceTable } from '../../reference-table.ts';

const brews = referenceTable('brews_cutaia_2009.csv') as readonly Record<
  'original_plato' | 'ethanol_pct' | 'real_plato' | 'apparent_plato' | 'abv_from_a_fg',
  number
>[];

describe('sugar to ethanol', () => {
  // IUPAC atomic weights 2021: ethanol 46.069, CO2 44.0095, hexose 180.156, sucrose 342.297.
  test.each([
    ['hexose', 0.51143, 0.48857],
    ['sucrose', 0.53835, 0.51428],
  ] as const)(
    'a gram of %s gives at most %d g of ethanol and %d g of gas',
    (kind, ethanol, gas) => {
      const gives = fromSugar(1, kind);
      expect(gives.atMostEthanolG).toBeCloseTo(ethanol, 4);
      expect(gives.carbonDioxideG).toBeCloseTo(gas, 4);
    },
  );

  test('100 g of hexose give 48.4 g of ethanol in practice, as Pasteur found', () => {
    expect(fromSugar(100, 'hexose').inPracticeEthanolG).toBeCloseTo(48.4, 6);
  });

  test('0.955 g of gas leave with each gram of ethanol, 7.54 g a litre with each % vol', () => {
    expect(carbonDioxidePerEthanolGPerG).toBeCloseTo(0.9553, 4);
    expect(Math.abs(carbonDioxidePerAbvGPerL - 7.54)).toBeLessThan(0.01);
  });

  test('a kilogram of hexose gives 271.6 L of gas at 25 °C and 1 atm', () => {
    expect(Math.abs(fromSugar(1000, 'hexose').carbonDioxideL - 271.6)).toBeLessThan(0.5);
  });

  // French order of 14 September 2011, annex IV (16.83 g/L); theory and Pasteur by the balance above.
  test.each([
    [168.3, 10.0, 10.32, 10.91],
    [250, 14.85, 15.33, 16.2],
  ])('%d g/L give %d % vol by law, %d in practice, %d at most', (sugar, law, practice, most) => {
    const gives = fromSugar(sugar, 'hexose');
    expect(sugar / lawfulSugarPerAbvGPerL.now).toBeCloseTo(law, 1);
    expect(Math.abs(strengthOf(gives.inPracticeEthanolG, 1) - practice)).toBeLessThan(0.011);
    expect(Math.abs(strengthOf(gives.atMostEthanolG, 1) - most)).toBeLessThan(0.011);
    expect(lawfulSugarPerAbvGPerL.former).toBe(17.5);
  });
});

describe('gravity and extract', () => {
  // Values of the cubic of the American Society of Brewing Chemists.
  test.each([
    [1.02, 5.081],
    [1.04, 9.994],
    [1.048, 11.912],
    [1.06, 14.741],
    [1.08, 19.331],
    [1.1, 23.769],
  ])('gravity %d is %d °P, and back', (gravity, plato) => {
    expect(Math.abs(platoFromGravity(gravity) - plato)).toBeLessThan(0.0011);
    expect(gravityFromPlato(platoFromGravity(gravity))).toBeCloseTo(gravity, 9);
  });

  test('extract by volume agrees with the national wine-extract table within 0.1 g/L', () => {
    for (const row of referenceTable('wine_extract_gost.csv')) {
      expect(Math.abs(extractGPerL(row.gravity ?? 0) - (row.extract_g_per_l ?? 0))).toBeLessThan(
        0.1,
      );
    }
  });

  test('water has no extract, and a fermented liquid has less than none that is apparent', () => {
    expect(platoFromGravity(1)).toBe(0);
    expect(platoFromGravity(0.99)).toBeLessThan(-2);
    expect(gravityFromPlato(platoFromGravity(0.99))).toBeCloseTo(0.99, 9);
  });

  test.each([Number.NaN, 0.5, 1.5])('gravity %d throws', (gravity) => {
    expect(() => platoFromGravity(gravity)).toThrow(OutOfRangeError);
  });

  // OIML R 22 (1975).
  test.each([
    [5, 0.99284],
    [10, 0.98648],
    [15, 0.98073],
  ])('a dry liquid of %d % vol reads %d', (abv, gravity) => {
    expect(Math.abs(dryGravity(abv) - gravity)).toBeLessThan(2e-5);
  });

  // Water by OIML R 22 (1975) and glass of 25e-6 1/K, computed apart from this code.
  test.each([
    [10, -0.0013],
    [15, -0.0008],
    [25, 0.001],
    [30, 0.0023],
    [35, 0.0038],
  ])('a hydrometer for 20 °C read at %d °C needs %d', (temperatureC, correction) => {
    expect(Math.abs(gravityAt20C(1, temperatureC) - 1 - correction)).toBeLessThan(1e-4);
  });
});

describe('what a ferment has become', () => {
  test("Balling's formula gives the original extract of 532 brews within 0.25 °P in five means", () => {
    for (const brew of brews) {
      const original = originalExtractPlato(brew.ethanol_pct, brew.real_plato);
      expect(Math.abs(original - brew.original_plato)).toBeLessThan(0.25);
    }
  });

  test('the factors 0.1808 and 0.8192 read 0.10 to 0.19 °P low on all five', () => {
    const low = brews.map(
      (brew) => brew.real_plato - realExtractPlato(brew.original_plato, brew.apparent_plato),
    );
    expect(Math.min(...low)).toBeGreaterThan(0.09);
    expect(Math.max(...low)).toBeLessThan(0.195);
  });

  test('strength from two gravities agrees with all five, and so does 131.25 below 18 °P, within 0.15 % vol', () => {
    for (const brew of brews) {
      const [original, end] = [brew.original_plato, brew.apparent_plato].map(gravityFromPlato);
      const strength = strengthFromGravities(original as number, end as number);
      expect(Math.abs(strength - brew.abv_from_a_fg)).toBeLessThan(0.15);
      const rule = 131.25 * ((original as number) - (end as number));
      expect(Math.abs(rule - brew.abv_from_a_fg)).toBeLessThan(0.15);
    }
  });

  test('a gravity that has not fallen is no strength', () => {
    expect(strengthFromGravities(1.05, 1.06)).toBe(0);
  });

  test('a gravity that no ferment has is refused with its bounds', () => {
    expect(() => strengthFromGravities(1.05, 0.96)).toThrow(
      'gravity is 0.96; it must lie between 0.97 and 1.2.',
    );
    expect(() => strengthFromGravities(1.21, 1)).toThrow(
      'original gravity is 1.21; it must lie between 1 and 1.2.',
    );
  });
});

describe('mass lost', () => {
  // Henry's law at 1 atm and 20 °C (constant from memory); saturated vapours, ideal gas.
  test('CO2 left dissolved makes it read 0.22 % vol low until it is degassed', () => {
    expect(Math.abs(dissolvedGasGPerL(20) - 1.69)).toBeLessThan(0.01);
    const loss = { lostG: 60, volumeL: 1, temperatureC: 20 };
    const off =
      strengthFromMassLoss({ ...loss, isDegassed: false }) -
      strengthFromMassLoss({ ...loss, isDegassed: true });
    expect(Math.abs(off - 0.22)).toBeLessThan(0.01);
  });

  test('vapours that the gas takes along make it read 1 to 3 % high', () => {
    expect(waterCarriedGPerG(20)).toBeCloseTo(0.0097, 4);
    expect(waterCarriedGPerG(30)).toBeCloseTo(0.0179, 4);
    expect(Math.abs(ethanolCarriedGPerG(10, 25) - 0.014)).toBeLessThan(0.002);
    const dry = 60 / carbonDioxidePerAbvGPerL;
    const corrected = strengthFromMassLoss({
      lostG: 60,
      volumeL: 1,
      temperatureC: 20,
      isDegassed: true,
    });
    expect(dry / corrected - 1).toBeGreaterThan(0.01);
    expect(dry / corrected - 1).toBeLessThan(0.03);
  });

  test('gas of the two published curves is the strength that belongs to it', () => {
    for (const curve of referenceTable('carbon_dioxide_curves.csv')) {
      const abv = (curve.gas_g_per_l ?? 0) / carbonDioxidePerAbvGPerL;
      expect(Math.abs(abv - (curve.abv ?? 0))).toBeLessThan(0.01);
    }
  });
});

describe('the step a scale is read in', () => {
  test.each([
    [[1.08, 1.075, 1.06, 1.045], 'gravity', 0.005],
    [[1.08, 1.076, 1.062, 1.044, 1.002], 'gravity', 0.002],
    [[1.081, 1.076, 1.062, 1.045], 'gravity', 0.001],
    [[1.0811, 1.0763, 1.0622, 1.0459], 'gravity', 0.0001],
    [[1200, 1198, 1186, 1170], 'mass', 2],
    [[1200.1, 1199.4, 1186.2, 1171.7], 'mass', 0.1],
    [[1.08], 'gravity', 0.001],
  ] as const)('%j of a %s is read to %d', (values, kind, step) => {
    expect(scaleResolution(values, kind)).toBe(step);
  });
});
