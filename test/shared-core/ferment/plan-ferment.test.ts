import { describe, expect, test } from 'vitest';
import { leastUsefulStrengthAbv, OutOfRangeError, planFerment, sugarToWeighG } from '#shared-core';
import type { FermentPlanRequest } from '../../../shared-core/ferment/plan-ferment.ts';

const litre: FermentPlanRequest = {
  sources: [{ kind: 'hexose', massG: 168.3 }],
  volumeMl: 1000,
  vesselMl: 1500,
  yeastBearsAbv: 14,
  leastUsefulAbv: null,
};

describe('planFerment', () => {
  test('shows the strength by the equation and in practice', () => {
    const plan = planFerment(litre);
    // Stoichiometry 10.91, Pasteur 10.32, French order of 14 September 2011 10.00 % vol.
    expect(plan.atMostAbv.high).toBeCloseTo(10.91, 1);
    expect(plan.inPracticeAbv.high).toBeCloseTo(10.32, 1);
    expect(plan.inPracticeAbv.low).toBeCloseTo(10, 2);
    // 0.488 g of gas from a gram, 271.6 L from a kilogram.
    expect(plan.carbonDioxideL.high).toBeCloseTo(0.1683 * 271.6, 0);
    expect(plan.massLossG.low).toBeLessThan(75.4);
    expect(plan.massLossG.high).toBeGreaterThan(82.2);
    expect(plan.warnings).toEqual([]);
  });

  test('carries the range of a fruit table through and says that it is too wide to trust', () => {
    // Apples alone: 3.4 to 9.6 % vol by 16.83 g/L, if their juice were the whole volume at density 1.
    const plan = planFerment({
      ...litre,
      sources: [{ kind: 'fruit', fruit: 'apple', massG: 1000 }],
    });
    expect(plan.inPracticeAbv.low).toBeCloseTo(3.4, 1);
    expect(plan.inPracticeAbv.high).toBeGreaterThan(9.5);
    expect(plan.warnings).toEqual(['table-too-wide']);
  });

  test('takes a juice by its gravity, less what in it is no sugar', () => {
    const plan = planFerment({
      ...litre,
      sources: [{ kind: 'juice', gravity: 1.05, volumeMl: 1000 }],
    });
    // 129.8 g/L of extract by the national table.
    expect(plan.sugarG.high).toBeLessThan(129.8);
    expect(plan.inPracticeAbv.low).toBeLessThan(6.6);
    expect(plan.inPracticeAbv.high).toBeGreaterThan(6.6);
  });

  test('is reckoned by hand: sugar, gas and what the vessel loses', () => {
    const plan = planFerment({
      ...litre,
      sources: [
        { kind: 'hexose', massG: 50 },
        { kind: 'sucrose', massG: 40 },
        { kind: 'juice', gravity: 1.05, volumeMl: 500 },
        { kind: 'fruit', fruit: 'apple', massG: 200 },
      ],
      volumeMl: 2000,
      vesselMl: 3000,
    });
    // A gram of sucrose is 1.05263 g of hexose; 129.8 g/L of extract less 8 to 30 g/L; apples hold 5.7 to 16 %.
    expect(plan.sugarG.low).toBeCloseTo(50 + 42.105 + 0.5 * 99.8 + 0.2 * 57, 0);
    expect(plan.sugarG.high - plan.sugarG.low).toBeGreaterThan(0.5 * 22);
    const gas = (grams: number) => 0.48857 * grams;
    expect(plan.massLossG.high).toBeCloseTo(1.03 * gas(plan.sugarG.high), 1);
    // 1.69 g/L stay dissolved at 20 °C.
    expect(plan.massLossG.low).toBeCloseTo(0.93 * gas(plan.sugarG.low) - 2 * 1.69, 1);
    expect(plan.carbonDioxideL.low).toBeCloseTo(0.2716 * plan.sugarG.low, 0);
    expect(plan.atMostAbv.low).toBeCloseTo((0.51143 * plan.sugarG.low) / 2 / 7.8924, 2);
    expect(plan.headspacePercent).toBeCloseTo(100 / 3, 9);
  });

  test('a little sugar leaves no gas that the balance could show, and a thin juice has none', () => {
    expect(planFerment({ ...litre, sources: [{ kind: 'hexose', massG: 1 }] }).massLossG.low).toBe(
      0,
    );
    const thin = planFerment({
      ...litre,
      sources: [{ kind: 'juice', gravity: 1.001, volumeMl: 1000 }],
    });
    expect(thin.sugarG).toEqual({ low: 0, high: 0 });
    expect(thin.warnings).toEqual(['no-sugar']);
  });

  test('the limits of its warnings belong to the better side', () => {
    const warnings = (change: Partial<FermentPlanRequest>) =>
      planFerment({ ...litre, ...change }).warnings;
    // A quarter of the vessel free; 270 g/L; as strong as is useful, or as the yeast bears.
    expect(warnings({ vesselMl: 4000 / 3 })).toEqual([]);
    expect(warnings({ vesselMl: 1332 })).toEqual(['too-full']);
    expect(warnings({ sources: [{ kind: 'hexose', massG: 270 }], yeastBearsAbv: 20 })).toEqual([]);
    expect(warnings({ sources: [{ kind: 'hexose', massG: 271 }], yeastBearsAbv: 20 })).toEqual([
      'too-sweet',
    ]);
    const { inPracticeAbv } = planFerment(litre);
    expect(warnings({ leastUsefulAbv: inPracticeAbv.low })).toEqual([]);
    expect(warnings({ leastUsefulAbv: inPracticeAbv.high })).toEqual(['perhaps-too-weak']);
  });

  test.each([
    ['too-sweet', { sources: [{ kind: 'sucrose', massG: 300 }] }],
    ['too-weak', { leastUsefulAbv: 11 }],
    ['perhaps-too-weak', { leastUsefulAbv: 10.2 }],
    ['too-full', { vesselMl: 1100 }],
    ['no-sugar', { sources: [] }],
  ] as const)('warns of %s', (warning, change) => {
    expect(planFerment({ ...litre, ...change }).warnings).toEqual([warning]);
  });

  test('no more alcohol than the yeast bears is promised', () => {
    const sweet = planFerment({ ...litre, sources: [{ kind: 'hexose', massG: 300 }] });
    expect(sweet.inPracticeAbv.high).toBe(14);
    expect(sweet.atMostAbv.high).toBeGreaterThan(19);
  });

  test('says how much sugar to weigh for a strength, and the plan of that much holds it', () => {
    const massG = sugarToWeighG(9, 2000, 0, 'sucrose');
    const plan = planFerment({
      ...litre,
      sources: [{ kind: 'sucrose', massG }],
      volumeMl: 2000,
      vesselMl: 3000,
    });
    expect(plan.inPracticeAbv.low).toBeCloseTo(9, 6);
    expect(plan.inPracticeAbv.high).toBeLessThan(9.4);
    expect(sugarToWeighG(5, 1000, 500, 'hexose')).toBe(0);
    expect(sugarToWeighG(5, 2000, 20, 'hexose')).toBeCloseTo(10 * 16.83 - 20, 9);
    for (const [abv, ml, alreadyG, what] of [
      [21, 1000, 0, /^strength is 21 % vol/],
      [5, 0, 0, /^volume is 0 mL/],
      [5, 1000, -1, /^sugar that is in it is -1 g/],
    ] as const) {
      expect(() => sugarToWeighG(abv, ml, alreadyG, 'hexose')).toThrow(what);
    }
  });

  test('a volume that is none throws', () => {
    expect(() => planFerment({ ...litre, volumeMl: Number.NaN })).toThrow(OutOfRangeError);
    const refused = (change: Partial<FermentPlanRequest>) => () =>
      planFerment({ ...litre, ...change });
    expect(refused({ volumeMl: 0 })).toThrow(/^volume is 0 mL/);
    expect(refused({ vesselMl: 0 })).toThrow(/^vessel is 0 mL/);
    expect(refused({ yeastBearsAbv: 21 })).toThrow(/^strength the yeast bears is 21 % vol/);
    expect(refused({ sources: [{ kind: 'hexose', massG: -1 }] })).toThrow(/^sugar is -1 g/);
    expect(refused({ sources: [{ kind: 'fruit', fruit: 'apple', massG: -1 }] })).toThrow(
      /^fruit is -1 g/,
    );
    expect(refused({ sources: [{ kind: 'juice', gravity: 1.05, volumeMl: -1 }] })).toThrow(
      /^juice is -1 mL/,
    );
  });
});

describe('leastUsefulStrengthAbv', () => {
  test('falls with more plates and rises with the strength that is wanted', () => {
    const with2 = leastUsefulStrengthAbv(2, 80, 101.325) ?? 100;
    const with5 = leastUsefulStrengthAbv(5, 80, 101.325) ?? 100;
    expect(with5).toBeLessThan(with2);
    expect(leastUsefulStrengthAbv(5, 90, 101.325) ?? 100).toBeGreaterThan(with5);
    expect(leastUsefulStrengthAbv(0, 92, 101.325)).toBeNull();
  });
});
