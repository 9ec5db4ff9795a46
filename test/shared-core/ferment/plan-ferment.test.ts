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
  });

  test('a volume that is none throws', () => {
    expect(() => planFerment({ ...litre, volumeMl: Number.NaN })).toThrow(OutOfRangeError);
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
