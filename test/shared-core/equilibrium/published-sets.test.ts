import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { azeotrope, dewPoint } from '#shared-core';
import { setErrors } from '../../../scripts/activity-model/set-errors.ts';
import { readVleSets, type VleSet } from '../../../scripts/activity-model/vle-set.ts';
import { equilibriumModelUncertaintyK } from '../../../shared-core/equilibrium/model-uncertainty.ts';

const sets = readVleSets(path.join(import.meta.dirname, '..', '..', 'reference', 'vle'));

/** Bounds a little above what the model reaches; sources in the files themselves. */
const bounds = new Map([
  ['Kamihama 2012, 101.3 kPa', { temperatureK: 0.08, vapour: 0.005 }],
  ['Carey & Lewis 1932, 101.325 kPa', { temperatureK: 0.45, vapour: 0.008 }],
  ['Voutsas 2011, 32.86 kPa', { temperatureK: 0.2, vapour: 0.01 }],
  ['Pemberton & Mash 1978, 30 °C', { temperatureK: 0.16, vapour: 0.007 }],
  ['Kurihara 1995, 55 °C', { temperatureK: 0.1, vapour: 0.005 }],
  ['Pemberton & Mash 1978, 90 °C', { temperatureK: 0.06, vapour: Number.NaN }],
]);

describe('the equilibrium model against published measurements', () => {
  test.each(sets)('stays within its bounds of $name', (set) => {
    const errors = setErrors(set);
    const bound = bounds.get(set.name);
    expect(errors.temperatureRmsK).toBeLessThan(bound?.temperatureK ?? 0);
    if (errors.vapourRms !== null) expect(errors.vapourRms).toBeLessThan(bound?.vapour ?? 0);
    expect(set.points.length).toBeGreaterThan(13);
  });

  test('holds the stated number of measured vapours within its own uncertainty, 95 % only with their scatter', () => {
    const measured = sets.map(vapoursInside).filter(({ count }) => count > 0);
    expect(measured).toEqual([
      { name: 'Kamihama 2012, 101.3 kPa', count: 17, byModel: 13, withScatter: 17 },
      { name: 'Carey & Lewis 1932, 101.325 kPa', count: 15, byModel: 12, withScatter: 14 },
      { name: 'Voutsas 2011, 32.86 kPa', count: 11, byModel: 7, withScatter: 10 },
      { name: 'Kurihara 1995, 55 °C', count: 32, byModel: 32, withScatter: 32 },
    ]);
  });

  test('places the azeotrope at 1 atm between 78.10 and 78.20 °C and between 0.89 and 0.91', () => {
    // Carey & Lewis (1932): 78.15 °C, 0.8943; Kamihama et al. (2012): 78.11 °C, about 0.90.
    const { temperatureC, ethanolMoleFraction } = azeotrope(101.325);
    expect(temperatureC).toBeGreaterThan(78.1);
    expect(temperatureC).toBeLessThan(78.2);
    expect(ethanolMoleFraction).toBeGreaterThan(0.89);
    expect(ethanolMoleFraction).toBeLessThan(0.91);
  });
});

/** Vapours whose measured temperature lies within ±1.96 u of the model's dew temperature. */
function vapoursInside(set: VleSet) {
  let count = 0;
  let byModel = 0;
  let withScatter = 0;
  for (const { temperatureK, pressureKPa, y } of set.points) {
    // The model starts at 20 kPa, and a head thermometer sees the water-rich side only.
    if (y === null || pressureKPa < 20) continue;
    const highest = azeotrope(pressureKPa);
    if (y > highest.ethanolMoleFraction) continue;
    const dewC = (ethanolMoleFraction: number) =>
      dewPoint({ ethanolMoleFraction, pressureKPa }).temperatureC;
    const modelK = equilibriumModelUncertaintyK({
      temperatureAboveAzeotropeK: dewC(y) - highest.temperatureC,
      pressureKPa,
    });
    const slopeK = (dewC(y) - dewC(y - 1e-4)) / 1e-4;
    const scatterK = Math.hypot(set.temperatureUncertaintyK, slopeK * set.vapourUncertainty);
    const errorK = Math.abs(temperatureK - 273.15 - dewC(y));
    count += 1;
    byModel += Number(errorK <= 1.96 * modelK);
    withScatter += Number(errorK <= 1.96 * Math.hypot(modelK, scatterK));
  }
  return { name: set.name, count, byModel, withScatter };
}
