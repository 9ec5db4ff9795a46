import { describe, expect, test } from 'vitest';
import {
  azeotrope,
  createRandom,
  dewPoint,
  headVapour,
  moleFractionFromStrength,
  OutOfRangeError,
  strengthFromMoleFraction,
} from '#shared-core';
import { massFractionFromMoleFraction } from '../../../shared-core/alcoholometry/amount-fractions.ts';
import { equilibriumModelUncertaintyK } from '../../../shared-core/equilibrium/model-uncertainty.ts';

const reading = {
  pressureKPa: 98.6,
  temperatureUncertaintyK: 0.1,
  pressureUncertaintyKPa: 0.2,
};

function azeotropeAbv(pressureKPa: number): number {
  return strengthFromMoleFraction(azeotrope(pressureKPa).ethanolMoleFraction);
}

describe('headVapour', () => {
  test('tells the three kinds apart by more than the 95 % uncertainty', () => {
    const azeotropeC = azeotrope(98.6).temperatureC;
    const kindAt = (temperatureC: number) => headVapour({ ...reading, temperatureC }).kind;
    expect({
      farBelow: kindAt(azeotropeC - 1),
      withinDoubtBelow: kindAt(azeotropeC - 0.15),
      plateau: kindAt(azeotropeC + 0.4),
      tail: kindAt(95),
      withinDoubtAbove: kindAt(99.4),
      farAbove: kindAt(101),
    }).toEqual({
      farBelow: 'below-azeotrope',
      withinDoubtBelow: 'ethanol-water',
      plateau: 'ethanol-water',
      tail: 'ethanol-water',
      withinDoubtAbove: 'ethanol-water',
      farAbove: 'above-water',
    });
  });

  test('inverts the dew point and gives the same vapour by mole, mass and volume', () => {
    for (const abv of [5, 30, 60, 80, 90, 96]) {
      const y = moleFractionFromStrength(abv);
      const { temperatureC } = dewPoint({ ethanolMoleFraction: y, pressureKPa: 98.6 });
      const vapour = headVapour({ ...reading, temperatureC });
      expect(vapour.ethanolMoleFraction.value).toBeCloseTo(y, 7);
      expect(vapour.ethanolMassFraction.value).toBeCloseTo(massFractionFromMoleFraction(y), 7);
      expect(vapour.alcoholByVolume.value).toBeCloseTo(abv, 5);
      for (const { low, value, high } of [vapour.ethanolMoleFraction, vapour.alcoholByVolume]) {
        expect(low).toBeLessThan(value);
        expect(value).toBeLessThan(high);
      }
    }
  });

  test('shows that near the azeotrope the temperature says little', () => {
    const azeotropeC = azeotrope(98.6).temperatureC;
    const { low, high } = headVapour({ ...reading, temperatureC: azeotropeC }).alcoholByVolume;
    const limit = headVapour({ ...reading, temperatureC: azeotropeC + 5 }).alcoholByVolume;
    expect(high).toBeGreaterThan(azeotropeAbv(98.6));
    expect(high - low).toBeGreaterThan(2 * (limit.high - limit.value));
  });

  test('covers the truth with its 95 % interval in 93 … 97 % of 12 000 readings, if the model errs as it says', () => {
    const random = createRandom('head vapour coverage');
    const groups = new Map<string, { inside: number; count: number }>();
    const total = { inside: 0, count: 0 };
    for (let index = 0; index < 12_000; index++) {
      const pressureKPa = 62 + 45 * random.uniform();
      const highest = azeotrope(pressureKPa);
      const abv = 40 + (azeotropeAbv(pressureKPa) - 40) * random.uniform();
      const y = Math.min(moleFractionFromStrength(abv), highest.ethanolMoleFraction);
      const { temperatureC } = dewPoint({ ethanolMoleFraction: y, pressureKPa });
      const temperatureUncertaintyK = [0.05, 0.1, 0.2, 0.5][random.integer(0, 3)] ?? 0;
      const pressureUncertaintyKPa = [0.05, 0.2, 1][random.integer(0, 2)] ?? 0;
      const modelK = equilibriumModelUncertaintyK({
        temperatureAboveAzeotropeK: temperatureC - highest.temperatureC,
        pressureKPa,
      });
      const { low, high } = headVapour({
        temperatureC:
          temperatureC + temperatureUncertaintyK * random.normal() + modelK * random.normal(),
        pressureKPa: pressureKPa + pressureUncertaintyKPa * random.normal(),
        temperatureUncertaintyK,
        pressureUncertaintyKPa,
      }).ethanolMoleFraction;
      const inside = low <= y && y <= high;
      for (const name of [
        `probe ${temperatureUncertaintyK} K`,
        `barometer ${pressureUncertaintyKPa} kPa`,
        abv > 90 ? 'near the azeotrope' : abv > 80 ? 'above the limit' : 'below the limit',
      ]) {
        const group = groups.get(name) ?? { inside: 0, count: 0 };
        groups.set(name, { inside: group.inside + Number(inside), count: group.count + 1 });
      }
      total.inside += Number(inside);
      total.count += 1;
    }
    for (const [name, { inside, count }] of [...groups, ['all', total] as const]) {
      expect([name, inside / count > 0.93 && inside / count < 0.97]).toEqual([name, true]);
    }
  });

  test('agrees with a Monte Carlo propagation of the same doubts (JCGM 101)', () => {
    const random = createRandom('propagation of distributions');
    for (const temperatureC of [77.8, 79.5, 84]) {
      const { alcoholByVolume: interval, uncertainty } = headVapour({ ...reading, temperatureC });
      const modelK = uncertainty.lines.find(({ name }) => name === 'Equilibrium model');
      const doubtK = Math.hypot(0.1, modelK?.standardUncertainty ?? Number.NaN);
      const draws = Array.from({ length: 4000 }, () => {
        const drawn = headVapour({
          ...reading,
          temperatureC: temperatureC + doubtK * random.normal(),
          pressureKPa: reading.pressureKPa + 0.2 * random.normal(),
        });
        return drawn.alcoholByVolume.value;
      }).sort((a, b) => a - b);
      // Compared as temperatures' worth of strength: within a tenth of the half width.
      const tolerance = (interval.high - interval.low) / 20;
      expect(Math.abs((draws[100] ?? 0) - interval.low)).toBeLessThan(tolerance);
      if (interval.high < azeotropeAbv(98.6)) {
        expect(Math.abs((draws[3900] ?? 0) - interval.high)).toBeLessThan(tolerance);
      }
    }
  });

  test.each([20, 101, 200])(
    'answers at both ends of the thermometer’s range at %d kPa',
    (pressureKPa) => {
      const at = (temperatureC: number) => headVapour({ ...reading, pressureKPa, temperatureC });
      expect({ cold: at(-50).kind, hot: at(150).kind }).toEqual({
        cold: 'below-azeotrope',
        hot: 'above-water',
      });
      expect(at(-50).ethanolMoleFraction.value).toBeCloseTo(
        azeotrope(pressureKPa).ethanolMoleFraction,
        12,
      );
      expect(at(150).ethanolMoleFraction.value).toBe(0);
    },
  );

  test('lists the doubts behind the interval, largest first', () => {
    const { uncertainty } = headVapour({ ...reading, temperatureC: 80 });
    expect(uncertainty.lines.map(({ name }) => name)).toEqual([
      'Thermometer',
      'Equilibrium model',
      'Air pressure',
    ]);
    expect(uncertainty.combinedStandardUncertainty).toBeCloseTo(0.13, 1);
  });

  test('refuses readings outside its range, NaN included', () => {
    const good = { ...reading, temperatureC: 80 };
    for (const bad of [
      { temperatureC: Number.NaN },
      { temperatureC: 151 },
      { pressureKPa: Number.NaN },
      { pressureKPa: 19 },
      { temperatureUncertaintyK: -0.1 },
      { temperatureUncertaintyK: Number.NaN },
      { pressureUncertaintyKPa: -0.1 },
      { pressureUncertaintyKPa: Number.NaN },
    ]) {
      expect(() => headVapour({ ...good, ...bad })).toThrow(OutOfRangeError);
    }
  });
});
