import { describe, expect, test } from 'vitest';
import {
  fermentedLiquid,
  originalExtractPlato,
  realExtractPlato,
  strengthFromGravities,
} from '../../../shared-core/ferment/balling.ts';
import { spendGas, usualGasG } from '../../../shared-core/ferment/gas-budget.ts';
import {
  extractGPerL,
  gravityFromPlato,
  platoFromGravity,
} from '../../../shared-core/ferment/gravity-and-extract.ts';
import { gravityAt20C } from '../../../shared-core/ferment/gravity-at-20.ts';
import {
  dissolvedGasGPerL,
  ethanolCarriedGPerG,
  strengthFromMassLoss,
  waterCarriedGPerG,
} from '../../../shared-core/ferment/mass-loss.ts';
import { drawFerments } from '../../../shared-core/ferment/possible-ferments.ts';
import { abvPerGravity, endGravity } from '../../../shared-core/ferment/practical-end.ts';
import {
  dryGravity,
  fromSugar,
  strengthOf,
} from '../../../shared-core/ferment/sugar-to-ethanol.ts';
import { createRandom } from '../../../shared-core/random/create-random.ts';

describe('a fermented liquid', () => {
  test('is by Balling’s masses what is left of 100 g, its gravity by Tabarié’s rule', () => {
    // Of 100 g with 14.741 g of extract, 4 g of ethanol take 8.266 g of it; 4.266 g leave as gas or become yeast.
    const { gravity, abv, realExtractPlato: extract, ethanolGPerL } = fermentedLiquid(1.06, 4);
    const left = 100 - 4.266;
    expect(extract).toBeCloseTo((100 * (14.741 - 8.266)) / left, 2);
    const massFraction = 4 / left;
    expect(ethanolGPerL).toBeCloseTo(massFraction * gravity * 998.20123, 9);
    // A litre that holds as much ethanol at 0.78924 g/mL.
    expect(abv).toBeCloseTo(ethanolGPerL / 7.8924, 2);
    expect(gravity).toBeCloseTo(dryGravity(abv / gravity) + gravityFromPlato(extract) - 1, 3);
  });

  test('may have used up all of its extract, and no more', () => {
    const all = platoFromGravity(1.04) / 2.0665;
    expect(fermentedLiquid(1.04, all).realExtractPlato).toBe(0);
    expect(() => fermentedLiquid(1.04, all + 1e-6)).toThrow(/^extract left is -/);
  });

  test('that reads lower than all of its extract allows has the strength of all of it', () => {
    const all = fermentedLiquid(1.04, platoFromGravity(1.04) / 2.0665);
    expect(strengthFromGravities(1.04, 0.98)).toBeCloseTo(all.abv, 9);
    expect(strengthFromGravities(1.04, all.gravity)).toBeCloseTo(all.abv, 6);
  });

  test('of a gravity that it made is as strong as it was', () => {
    for (const ethanolG of [0.5, 3, 5.5]) {
      const made = fermentedLiquid(1.07, ethanolG);
      expect(strengthFromGravities(1.07, made.gravity)).toBeCloseTo(made.abv, 6);
    }
  });
});

describe('what ferments in practice', () => {
  test('gain the strength of Balling for each unit of gravity, within 0.3 %', () => {
    for (const original of [1.04, 1.06, 1.09, 1.12]) {
      const exact = strengthFromGravities(original, 1.005) / (original - 1.005);
      expect(Math.abs(abvPerGravity(original) / exact - 1)).toBeLessThan(0.004);
    }
  });

  test('end where their sugar is used but for what the yeast leaves, or at what it bears', () => {
    const end = endGravity(1.06, 2, 100);
    const abv = abvPerGravity(1.06) * (1.06 - end);
    // Two degrees Plato raise the gravity by 0.00775.
    expect(end).toBeCloseTo(dryGravity(abv) + 2 * 0.003876, 5);
    expect(endGravity(1.12, 2, 10)).toBeCloseTo(1.12 - 10 / abvPerGravity(1.12), 9);
    // What has next to nothing to ferment still falls a little.
    expect(endGravity(1.005, 5, 15)).toBeCloseTo(1.003, 9);
  });

  test('make gas by their strength, of a litre that shrinks a little', () => {
    const cloud = drawFerments(createRandom('gas'), { volumeMl: 2000, sugarG: null }, null);
    cloud.original[0] = 1.06;
    cloud.lost[0] = 0.05;
    // 7.5396 g of gas a litre for each % vol, in 0.997 L of must for each litre.
    expect(usualGasG(cloud, 0, 2000)).toBeCloseTo(
      abvPerGravity(1.06) * 0.05 * 7.5396 * 2 * 0.997,
      2,
    );
  });
});

describe('the gas of a ferment', () => {
  const nothing = { madeG: 0, heldG: 0, leftG: 0, takenAlongG: 0 };

  test('where nobody reads the warmth, is that of a warm corner', () => {
    expect(spendGas(nothing, 60, null, 1000)).toEqual(spendGas(nothing, 60, 23, 1000));
  });

  test('is reckoned no colder than ice and no warmer than 40 °C', () => {
    expect(spendGas(nothing, 60, -5, 1000)).toEqual(spendGas(nothing, 60, 1, 1000));
    expect(spendGas(nothing, 60, 60, 1000)).toEqual(spendGas(nothing, 60, 40, 1000));
  });

  test('stays in the liquid while there is little of it', () => {
    expect(spendGas(nothing, 1, 20, 1000)).toEqual({
      madeG: 1,
      heldG: 1,
      leftG: 0,
      takenAlongG: 0,
    });
  });

  test('is a strength, with what it carried away and what is still dissolved', () => {
    const loss = { lostG: 60, volumeL: 2, temperatureC: 25 };
    const carried = 1 + waterCarriedGPerG(25) + ethanolCarriedGPerG(30 / 7.5396 / 2, 25);
    const shaken = strengthFromMassLoss({ ...loss, isDegassed: true });
    expect(shaken).toBeCloseTo(30 / carried / 7.5396, 3);
    const unshaken = strengthFromMassLoss({ ...loss, isDegassed: false });
    expect(unshaken - shaken).toBeCloseTo(dissolvedGasGPerL(25) / 7.5396, 3);
    expect(strengthFromMassLoss({ ...loss, lostG: 0, isDegassed: false })).toBe(0);
  });

  test('is the less dissolved the warmer, by its heat of solution', () => {
    // ln k falls by 2400 K (1/T − 1/293.15 K).
    expect(dissolvedGasGPerL(30) / dissolvedGasGPerL(20)).toBeCloseTo(
      Math.exp(2400 * (1 / 303.15 - 1 / 293.15)),
      9,
    );
  });
});

test.each<[string, () => number, RegExp]>([
  ['sugar', () => fromSugar(-1, 'hexose').carbonDioxideG, /^sugar is -1 g; it must lie between 0/],
  ['ethanol', () => strengthOf(-1, 1), /^ethanol is -1 g; it must lie between 0/],
  ['volume', () => strengthOf(1, 0), /^volume is 0 L; it must lie between 0\.001/],
  ['ethanol by mass', () => originalExtractPlato(21, 1), /^ethanol is 21 % by mass; .* 0 and 20/],
  ['real extract', () => originalExtractPlato(4, 41), /^real extract is 41 °P; .* 0 and 40/],
  ['original', () => realExtractPlato(41, 3), /^original extract is 41 °P; .* 0 and 40/],
  ['apparent', () => realExtractPlato(14, -9), /^apparent extract is -9 °P; .* -8 and 40/],
  ['gravity', () => fermentedLiquid(1.21, 1).abv, /^original gravity is 1\.21; .* 1 and 1\.2/],
  ['ethanol made', () => fermentedLiquid(1.06, -1).abv, /^ethanol is -1 g; .* 0 and 20/],
  ['extract', () => gravityFromPlato(41), /^extract is 41 °P; .* -8 and 40/],
  ['gravity of an extract', () => platoFromGravity(0.96), /^gravity is 0\.96; .* 0\.97 and 1\.2/],
  ['extract of a litre', () => extractGPerL(0.99), /^gravity is 0\.99; .* 1 and 1\.2/],
  ['scale', () => gravityAt20C(1.3, 20), /^gravity is 1\.3; .* 0\.97 and 1\.2/],
  ['jar', () => gravityAt20C(1.05, 41), /^temperature is 41 °C; .* 0 and 40/],
  ['dissolved', () => dissolvedGasGPerL(-1), /^temperature is -1 °C; .* 0 and 40/],
  ['water', () => waterCarriedGPerG(0), /^temperature is 0 °C; .* 1 and 40/],
  ['strength', () => ethanolCarriedGPerG(21, 20), /^strength is 21 % vol; .* 0 and 20/],
  ['vapour', () => ethanolCarriedGPerG(10, 41), /^temperature is 41 °C; .* 1 and 40/],
])('%s outside its range is refused by name, with unit and bounds', (_, compute, message) => {
  expect(compute).toThrow(message);
});

test('no liquid is stronger than ethanol', () => {
  expect(strengthOf(900, 1)).toBe(100);
});
