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
import { massFractionFromDensity } from '../../../shared-core/alcoholometry/mass-fraction-from-density.ts';
import { referenceTable } from '../../reference-table.ts';

// OIML R 22 (1975), general formula, evaluated independently.
const byMass = referenceTable('oiml_r22_check_values.csv').map((row) => Object.values(row));
const byVolume = referenceTable('oiml_r22_abv_to_mass.csv').map((row) => Object.values(row));
const temperaturesC = [-20, 0, 10, 15, 20, 25, 30, 40];

describe('OIML R 22', () => {
  test('gives every tabulated density, mole fraction and strength to the last printed digit', () => {
    const computed = byMass.map(([massPercent = Number.NaN]) => {
      const ethanolMassFraction = massPercent / 100;
      return [
        massPercent,
        Number(moleFractionFromMassFraction(ethanolMassFraction).toFixed(6)),
        ...temperaturesC.map((temperatureC) =>
          Number(densityKgPerM3({ ethanolMassFraction, temperatureC }).toFixed(3)),
        ),
        Number(alcoholByVolume({ ethanolMassFraction }).toFixed(4)),
      ];
    });
    expect(computed).toEqual(byMass);
    expect(computed.length).toBe(21);
  });

  test('gives every tabulated mass percentage for a strength to the last printed digit', () => {
    const computed = byVolume.map(([abv = Number.NaN]) => {
      const ethanolMassFraction = massFractionFromAlcoholByVolume({ alcoholByVolume: abv });
      return [
        abv,
        Number((100 * ethanolMassFraction).toFixed(4)),
        Number(moleFractionFromMassFraction(ethanolMassFraction).toFixed(6)),
        Number(densityKgPerM3({ ethanolMassFraction, temperatureC: 20 }).toFixed(4)),
      ];
    });
    expect(computed).toEqual(byVolume);
    expect(computed.length).toBeGreaterThan(20);
  });

  test('gives every tabulated mole fraction for a strength, and the strength back', () => {
    for (const [abv = Number.NaN, , mole = Number.NaN] of byVolume) {
      expect(moleFractionFromStrength(abv)).toBeCloseTo(mole, 6);
      expect(strengthFromMoleFraction(moleFractionFromStrength(abv))).toBeCloseTo(abv, 9);
    }
  });
});

describe('conversions', () => {
  test('return to where they came from', () => {
    for (let index = 0; index <= 200; index++) {
      const fraction = index / 200;
      const abv = alcoholByVolume({ ethanolMassFraction: fraction });
      expect(massFractionFromAlcoholByVolume({ alcoholByVolume: abv })).toBeCloseTo(fraction, 11);
      const mole = moleFractionFromMassFraction(fraction);
      expect(massFractionFromMoleFraction(mole)).toBeCloseTo(fraction, 14);
      for (const temperatureC of [0, 12.5, 40]) {
        const density = densityKgPerM3({ ethanolMassFraction: fraction, temperatureC });
        const back = massFractionFromDensity({ densityKgPerM3: density, temperatureC });
        expect(back).toBeCloseTo(fraction, 10);
      }
    }
  });

  test('refuse what is outside their range, NaN included', () => {
    const wrong = [Number.NaN, -1e-9, 1.000001];
    for (const fraction of wrong) {
      expect(() => moleFractionFromMassFraction(fraction)).toThrow(OutOfRangeError);
      expect(() => massFractionFromMoleFraction(fraction)).toThrow(OutOfRangeError);
      expect(() => strengthFromMoleFraction(fraction)).toThrow(OutOfRangeError);
      expect(() => moleFractionFromStrength(100 * fraction)).toThrow(OutOfRangeError);
      expect(() => alcoholByVolume({ ethanolMassFraction: fraction })).toThrow(OutOfRangeError);
      expect(() => massFractionFromAlcoholByVolume({ alcoholByVolume: 100 * fraction })).toThrow(
        OutOfRangeError,
      );
      expect(() => densityKgPerM3({ ethanolMassFraction: fraction, temperatureC: 20 })).toThrow(
        OutOfRangeError,
      );
    }
    for (const temperatureC of [Number.NaN, -20.1, 40.1]) {
      expect(() => densityKgPerM3({ ethanolMassFraction: 0.4, temperatureC })).toThrow(
        OutOfRangeError,
      );
    }
    for (const density of [Number.NaN, 780, 1005]) {
      expect(() => massFractionFromDensity({ densityKgPerM3: density, temperatureC: 20 })).toThrow(
        OutOfRangeError,
      );
    }
  });
});
