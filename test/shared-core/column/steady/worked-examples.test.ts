import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { equilibriumCurve } from '#shared-core';
import type { EquilibriumCurve } from '../../../../shared-core/column/steady/equilibrium-curve.ts';
import { simpleBatch } from '../../../../shared-core/column/steady/simple-batch.ts';
import examples from '../../../reference/batch_worked_examples.json' with { type: 'json' };
import { interpolatedEquilibrium } from '../../../support/interpolated-equilibrium.ts';

const table = path.join(
  import.meta.dirname,
  '../../../reference/vle/isobaric_101325_carey_lewis_1932.csv',
);
const careyLewis = interpolatedEquilibrium(
  readFileSync(table, 'utf8')
    .split('\n')
    .filter((line) => /^\d/.test(line))
    .map((line) => {
      const [, x = Number.NaN, y = Number.NaN] = line.split(',').map(Number);
      return { x, y };
    }),
);
const model = equilibriumCurve(101.3);

const [perry] = examples;
const perrySimple = (equilibrium: EquilibriumCurve) =>
  simpleBatch({ equilibrium, chargeMol: 100, potMoleFraction: 0.18, endPotMoleFraction: 0.06 });

function expectWithin(share: number, computed: number, published: number | undefined): void {
  expect(Math.abs(computed / (published ?? Number.NaN) - 1)).toBeLessThan(share);
}

// Sources of the answers: see "source" in test/reference/batch_worked_examples.json.
describe("Perry's simple batch", () => {
  test('is met within 2 % with the data of Carey & Lewis', () => {
    const computed = perrySimple(careyLewis);
    expectWithin(0.02, computed.integral, perry?.answer.integral);
    expectWithin(0.02, computed.residueMol, perry?.answer.residue_mol);
    expectWithin(0.02, computed.distillateMol, perry?.answer.distillate_mol);
    expectWithin(0.02, computed.distillateMoleFraction, perry?.answer.xD_avg);
  });

  test('with the NRTL model: integral 0.349, residue 70.5 mol, distillate 29.5 mol at 0.467', () => {
    const { integral, residueMol, distillateMol, distillateMoleFraction } = perrySimple(model);
    expect([integral, residueMol, distillateMol, distillateMoleFraction]).toEqual([
      expect.closeTo(0.349, 2),
      expect.closeTo(70.5, 0),
      expect.closeTo(29.5, 0),
      expect.closeTo(0.467, 2),
    ]);
    expectWithin(0.02, distillateMol, perry?.answer.distillate_mol);
  });
});
