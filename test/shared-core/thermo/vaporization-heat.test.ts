import { expect, test } from 'vitest';
import { enthalpyOfVaporizationJPerMol } from '../../../shared-core/thermo/enthalpy-of-vaporization.ts';
import { mixtureAmounts } from '../../../shared-core/thermo/mixture-amounts.ts';
import { vaporizationHeatJPerMl } from '../../../shared-core/thermo/vaporization-heat.ts';
import { expectRange } from '../../support/expect-range.ts';

test('boiling a millilitre off takes what its ethanol and its water take', () => {
  const of = (strengthAbv: number, temperatureC: number) =>
    vaporizationHeatJPerMl({ strengthAbv, temperatureC });
  // Per mol at 100 °C: ethanol some 36.4 kJ, water 40.65 kJ; per mL at 20 °C 0.78924/46.068 and 0.99820/18.015 mol.
  const ethanol = enthalpyOfVaporizationJPerMol('ethanol', 100);
  const water = enthalpyOfVaporizationJPerMol('water', 100);
  expect([of(100, 100), of(0, 100)]).toEqual([
    expect.closeTo((ethanol * 0.78924) / 46.06844, 1),
    expect.closeTo((water * 0.9982) / 18.015268, 1),
  ]);
  // OIML R 22: 40 % vol is 33.2996 % by mass and 948.0452 kg/m³.
  const [ethanolMol, waterMol] = [
    (0.9480452 * 0.332996) / 46.06844,
    (0.9480452 * 0.667004) / 18.015268,
  ];
  expect(of(40, 100)).toBeCloseTo(ethanolMol * ethanol + waterMol * water, 1);
});

test.each([
  [
    'strength',
    '% vol',
    0,
    100,
    (strengthAbv: number) => vaporizationHeatJPerMl({ strengthAbv, temperatureC: 80 }),
  ],
  [
    'temperature',
    '°C',
    0,
    150,
    (temperatureC: number) => vaporizationHeatJPerMl({ strengthAbv: 40, temperatureC }),
  ],
  [
    'temperature',
    '°C',
    0,
    150,
    (temperatureC: number) => enthalpyOfVaporizationJPerMol('water', temperatureC),
  ],
  ['volume', 'mL', 0, 1e6, (volumeMl: number) => mixtureAmounts({ volumeMl, strengthAbv: 40 })],
] as const)(
  '%s [%s] is answered for from %d to %d, and refused by name beyond (%o)',
  (quantity, unit, low, high, act) => {
    expectRange(act, { quantity, low, high, unit });
  },
);
