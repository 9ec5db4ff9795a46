import { expect, test } from 'vitest';
import { bookLiquid } from '../../../shared-core/bookkeeping/book-liquid.ts';
import { fermentYield } from '../../../shared-core/bookkeeping/ferment-yield.ts';
import {
  atStandardPressureC,
  longestPlateau,
  plateauStatistics,
} from '../../../shared-core/bookkeeping/plateau-statistics.ts';
import { poolLiquids } from '../../../shared-core/bookkeeping/pool-liquids.ts';
import { simpleDistillation } from '../../../shared-core/bookkeeping/simple-distillation.ts';
import { measuredStrength } from '../../../shared-core/bookkeeping/strength-measurement.ts';
import { expectRange } from '../../support/expect-range.ts';

const exactly = (value: number) => ({ value, standardUncertainty: 0 });
const strength = { by: 'stated', strengthAbv: exactly(40) } as const;
const yields = { sugarG: exactly(100), fermentEthanolG: exactly(40), productEthanolG: exactly(30) };
const points = [78.1, 78.2].map((temperatureC, index) => ({ timeS: 60 * index, temperatureC }));
const batch = { chargeMol: 100, potMoleFraction: 0.1, pressureKPa: 101.325, distillateMol: 20 };

test.each([
  ['band', 'K', Number.MIN_VALUE, 1000, (bandK: number) => longestPlateau(points, bandK)],
  [
    'plateau temperature',
    '°C',
    -50,
    150,
    (temperatureC: number) => atStandardPressureC({ temperatureC, pressureKPa: 100 }),
  ],
  [
    'amount of Cut',
    'g',
    0,
    1e6,
    (massG: number) =>
      bookLiquid({ name: 'Cut', amount: { by: 'mass', massG: exactly(massG) }, strength }),
  ],
  [
    'amount of Cut',
    'mL',
    0,
    1e6,
    (volumeMl: number) =>
      bookLiquid({
        name: 'Cut',
        amount: { by: 'volume', volumeMl: exactly(volumeMl), temperatureC: exactly(20) },
        strength,
      }),
  ],
  [
    'strength',
    '% vol',
    0,
    100,
    (abv: number) => measuredStrength({ by: 'stated', strengthAbv: exactly(abv) }),
  ],
  [
    'sugar',
    'g',
    1e-6,
    1e9,
    (sugarG: number) => fermentYield({ ...yields, sugarG: exactly(sugarG) }),
  ],
  [
    'ethanol in the ferment',
    'g',
    1e-6,
    1e9,
    (ethanolG: number) => fermentYield({ ...yields, fermentEthanolG: exactly(ethanolG) }),
  ],
  [
    'ethanol in the product',
    'g',
    0,
    1e9,
    (ethanolG: number) => fermentYield({ ...yields, productEthanolG: exactly(ethanolG) }),
  ],
  [
    'distillate',
    'mol',
    1e-9 * 100,
    99.9,
    (distillateMol: number) => simpleDistillation({ ...batch, distillateMol }),
  ],
] as const)(
  '%s [%s] is answered for from %d to %d, and refused by name beyond (%o)',
  (quantity, unit, low, high, act) => {
    expectRange(act, { quantity, low, high, unit });
  },
);

const refused = (quantity: string, unit: string) =>
  expect.objectContaining({ detail: expect.objectContaining({ quantity, unit }) });

test('what has no mass, no length or no ethanol is refused by name', () => {
  expect(() => poolLiquids([])).toThrow(refused('mass', 'g'));
  expect(() => plateauStatistics(points)).toThrow(refused('number of readings', ''));
  const atOnce = [1, 2, 3].map(() => ({ timeS: 3600, temperatureC: 78 }));
  expect(() => plateauStatistics(atOnce)).toThrow(refused('length of the plateau', 's'));
  expect(() => simpleDistillation({ ...batch, potMoleFraction: 0.9 })).toThrow(
    refused('ethanol in the charge', 'mol/mol'),
  );
});

test('a plateau late in a run is as long as it is', () => {
  const late = [78.1, 78.2, 78.1].map((temperatureC, index) => ({
    timeS: 3600 + 60 * index,
    temperatureC,
  }));
  expect(plateauStatistics(late).span).toEqual({ fromS: 3600, toS: 3720 });
  const tooLong = late.map((point) => ({ ...point, timeS: (point.timeS - 3600) * 1e8 }));
  expect(() => plateauStatistics(tooLong)).toThrow(refused('length of the plateau', 's'));
});
