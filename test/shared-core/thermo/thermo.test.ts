import { describe, expect, test } from 'vitest';
import { OutOfRangeError } from '#shared-core';
import { enthalpyOfVaporizationJPerMol } from '../../../shared-core/thermo/enthalpy-of-vaporization.ts';
import { mixtureAmounts } from '../../../shared-core/thermo/mixture-amounts.ts';
import { molarVolumeMlPerMol } from '../../../shared-core/thermo/molar-volume.ts';
import pure from '../../reference/pure_components.json' with { type: 'json' };

describe('enthalpy of vaporization', () => {
  // CRC Handbook values in test/reference/pure_components.json.
  test('is within 0.5 % for water and 1.2 % for ethanol at 25 °C and at the boiling point', () => {
    const { ethanol, water } = pure;
    const cases = [
      ['water', 25, water.Hvap_J_mol.at_298K, 0.005],
      ['water', 100, water.Hvap_J_mol.at_nbp_CRC, 0.005],
      ['ethanol', 25, ethanol.Hvap_J_mol.at_298K, 0.012],
      ['ethanol', 78.29, ethanol.Hvap_J_mol.at_nbp, 0.012],
    ] as const;
    for (const [component, temperatureC, value, tolerance] of cases) {
      const computed = enthalpyOfVaporizationJPerMol(component, temperatureC);
      expect(Math.abs(computed / value - 1)).toBeLessThan(tolerance);
    }
  });

  test('refuses NaN', () => {
    expect(() => enthalpyOfVaporizationJPerMol('water', Number.NaN)).toThrow(OutOfRangeError);
  });
});

describe('amounts and volumes', () => {
  test('the amounts in a volume fill that volume again', () => {
    for (const strengthAbv of [0, 0.5, 9, 40, 82.3, 96, 100]) {
      const { ethanolMol, waterMol } = mixtureAmounts({ volumeMl: 350, strengthAbv });
      const total = ethanolMol + waterMol;
      expect(total * molarVolumeMlPerMol(ethanolMol / total)).toBeCloseTo(350, 8);
    }
  });
});
