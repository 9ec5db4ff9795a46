import { expect, test } from 'vitest';
import { booksOfRun, defaultRunSettings, type MarkBody } from '#shared-core';
import { areAtOdds } from '../../../shared-core/bookkeeping/amounts-at-odds.ts';
import type { AmountMeasurement } from '../../../shared-core/bookkeeping/book-liquid.ts';

const mass = (value: number, standardUncertainty = 0): AmountMeasurement => ({
  by: 'mass',
  massG: { value, standardUncertainty },
});
const volume = (value: number, standardUncertainty = 0): AmountMeasurement => ({
  by: 'volume',
  volumeMl: { value, standardUncertainty },
  temperatureC: { value: 20, standardUncertainty: 0 },
});

test('a mass and a volume are at odds where the liquid would be lighter than ethanol at 40 °C or heavier than water', () => {
  // ρ(1, 40 °C) = 772.0 kg/m³ and ρ(0, 10 °C) = 999.7 kg/m³ (OIML R 22).
  const perMl = [0.771, 0.773, 0.9, 0.999, 1.001];
  expect(perMl.map((gPerMl) => areAtOdds(mass(100 * gPerMl), volume(100)))).toEqual([
    true,
    false,
    false,
    false,
    true,
  ]);
  expect(areAtOdds(volume(100), mass(77))).toBe(true);
});

test('three standard uncertainties of both together part two volumes', () => {
  expect(areAtOdds(volume(40, 0.3), volume(42, 0.3))).toBe(true);
  expect(areAtOdds(volume(40, 0.4), volume(42, 0.3))).toBe(false);
});

/** Books of a run whose first receiver was taken away with 42 mL in it, and weighed later. */
function booksWith(...later: readonly MarkBody[]) {
  const marks: readonly MarkBody[] = [{ type: 'receiver-changed', volumeMl: 42 }, ...later];
  return booksOfRun({
    settings: defaultRunSettings,
    inputs: marks.map((mark, index) => ({ kind: 'mark', timeS: index, markId: index + 1, mark })),
    verdicts: { estimates: [], events: [] },
    endS: 60,
  }).assumptions.join('\n');
}

test('the books tell of a cut that was weighed with less than its volume can weigh, and of no other', () => {
  const weighed = (massG: number): MarkBody => ({ type: 'liquid-mass', liquid: 'cut-1', massG });
  expect(booksWith(weighed(25))).toContain(
    'Cut 1: 42.0 mL in its receiver and 25.0 g measured later are not one liquid. 25.0 g is booked; look at both again.',
  );
  expect(booksWith(weighed(35))).not.toContain('not one liquid');
  expect(booksWith()).not.toContain('not one liquid');
});
