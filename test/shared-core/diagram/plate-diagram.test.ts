import { describe, expect, test } from 'vitest';
import { equilibriumCurve, plateDiagram } from '#shared-core';
import { fenskeStages } from '../../../shared-core/column/steady/fenske-stages.ts';
import { minimumRefluxRatio } from '../../../shared-core/column/steady/minimum-reflux-ratio.ts';

const constantVolatility = (x: number) => (3 * x) / (1 + 2 * x);
const exactly = (value: number) => ({ value, low: value, high: value });

describe('plateDiagram', () => {
  test('at total reflux the stages are those of Fenske’s equation (Ind. Eng. Chem. 24 (1932) 482)', () => {
    const diagram = plateDiagram({
      equilibrium: constantVolatility,
      head: exactly(0.9),
      pot: exactly(0.1),
      refluxRatio: Number.POSITIVE_INFINITY,
    });
    const fenske = fenskeStages({
      distillateMoleFraction: 0.9,
      potMoleFraction: 0.1,
      relativeVolatility: 3,
    });
    expect(fenske).toBeCloseTo(4, 12);
    expect(diagram?.stages.value).toBeCloseTo(fenske, 3);
  });

  test('every step touches the equilibrium curve, then the operating line', () => {
    const equilibrium = equilibriumCurve(99.4);
    const diagram = plateDiagram({
      equilibrium,
      head: exactly(0.75),
      pot: exactly(0.03),
      refluxRatio: 4,
    });
    const corners = diagram?.staircase ?? [];
    expect(corners.length).toBeGreaterThan(5);
    for (let index = 1; index < corners.length; index++) {
      const { x = 0, y = 0 } = corners[index] ?? {};
      if (index % 2 === 1) expect(equilibrium(x)).toBeCloseTo(y, 6);
      else expect(y).toBeCloseTo((4 * x + 0.75) / 5, 9);
    }
  });

  test('doubt about head and pot widens the count on both sides', () => {
    const stages = plateDiagram({
      equilibrium: constantVolatility,
      head: { value: 0.8, low: 0.7, high: 0.85 },
      pot: { value: 0.1, low: 0.08, high: 0.12 },
      refluxRatio: 6,
    })?.stages;
    expect(stages?.low).toBeLessThan(stages?.value ?? 0);
    expect(stages?.high).toBeGreaterThan(stages?.value ?? 0);
  });

  test('doubt about the reflux alone widens the count too, more reflux needing fewer stages', () => {
    const stages = plateDiagram({
      equilibrium: constantVolatility,
      head: exactly(0.8),
      pot: exactly(0.1),
      refluxRatio: 6,
      refluxRange: { low: 4.5, high: 12 },
    })?.stages;
    expect(stages?.low).toBeLessThan(stages?.value ?? 0);
    expect(stages?.high).toBeGreaterThan(stages?.value ?? 0);
  });

  test('with less than the least reflux no number of stages will do', () => {
    const column = { distillateMoleFraction: 0.8, potMoleFraction: 0.1 };
    const least = minimumRefluxRatio({ equilibrium: constantVolatility, ...column }).refluxRatio;
    const at = (refluxRatio: number) =>
      plateDiagram({
        equilibrium: constantVolatility,
        head: exactly(0.8),
        pot: exactly(0.1),
        refluxRatio,
      });
    expect(at(0.9 * (least ?? 0))?.stages).toEqual({ value: null, low: null, high: null });
    expect(at(1.2 * (least ?? 0))?.stages.value).toBeGreaterThan(3);
    expect(at(1)?.minimumReflux).toBe(least);
  });

  test('above the azeotrope there are no steps, and a head weaker than the pot gives no diagram', () => {
    const equilibrium = equilibriumCurve(101.325);
    const above = plateDiagram({
      equilibrium,
      head: exactly(0.93),
      pot: exactly(0.05),
      refluxRatio: 10,
    });
    expect(above?.stages.value).toBe(null);
    expect(
      plateDiagram({
        equilibrium,
        head: exactly(0.1),
        pot: exactly(0.1),
        refluxRatio: 10,
      }),
    ).toBe(null);
  });
});
