import { describe, expect, test } from 'vitest';
import { azeotrope, bubblePoint, equilibriumCurve, OutOfRangeError } from '#shared-core';
import { fenskeStages } from '../../../../shared-core/column/steady/fenske-stages.ts';
import { minimumRefluxRatio } from '../../../../shared-core/column/steady/minimum-reflux-ratio.ts';
import { simpleBatch } from '../../../../shared-core/column/steady/simple-batch.ts';
import { stepPlates } from '../../../../shared-core/column/steady/step-plates.ts';
import { interpolatedEquilibrium } from '../../../support/interpolated-equilibrium.ts';

const alpha = 3;
const ideal = (x: number) => (alpha * x) / (1 + (alpha - 1) * x);
const model = equilibriumCurve(101.325);

describe('the equilibrium curve', () => {
  test('lies within 2e-5 of the full solution, also near the pure ends', () => {
    for (const pressureKPa of [60, 84.6, 110]) {
      const curve = equilibriumCurve(pressureKPa);
      for (let step = 0; step <= 1000; step++) {
        const x = (step / 1000) ** 2;
        const full = bubblePoint({ ethanolMoleFraction: x, pressureKPa });
        expect(Math.abs(curve(x) - full.vapourEthanolMoleFraction)).toBeLessThan(2e-5);
      }
    }
  });

  test('interpolation passes through its points and rises all the way', () => {
    const points = [0.02, 0.1, 0.3, 0.6, 0.85].map((x) => ({ x, y: model(x) }));
    const curve = interpolatedEquilibrium(points);
    for (const { x, y } of points) expect(curve(x)).toBeCloseTo(y, 12);
    let previous = -1;
    for (let x = 0; x <= 1; x += 0.001) {
      expect(curve(x)).toBeGreaterThan(previous);
      previous = curve(x);
      expect(Math.abs(curve(x) - model(x))).toBeLessThan(0.02);
    }
  });
});

describe('stepping plates', () => {
  test('at huge reflux and constant relative volatility agrees with Fenske', () => {
    const column = { distillateMoleFraction: 0.95, potMoleFraction: 0.05 };
    const stepped = stepPlates({ ...column, equilibrium: ideal, refluxRatio: 1e6 });
    const fenske = fenskeStages({ ...column, relativeVolatility: alpha });
    // The fraction of the last step is counted linearly, Fenske counts it logarithmically.
    expect(Math.floor(stepped.stages ?? Number.NaN)).toBe(Math.floor(fenske));
    expect(Math.abs((stepped.stages ?? Number.NaN) - fenske)).toBeLessThan(0.2);
  });

  test('below the least reflux no number of plates reaches the pot, above it some does', () => {
    for (const distillateMoleFraction of [0.6, 0.75, 0.82, 0.86, 0.88]) {
      const column = { equilibrium: model, distillateMoleFraction, potMoleFraction: 0.04 };
      const least = minimumRefluxRatio(column).refluxRatio ?? Number.NaN;
      expect(stepPlates({ ...column, refluxRatio: least * 0.98 }).stages).toBeNull();
      expect(stepPlates({ ...column, refluxRatio: least * 1.02 }).stages).toBeGreaterThan(3);
    }
  });
});

describe('least reflux', () => {
  test('is the textbook value at a feed pinch of constant relative volatility', () => {
    // R = (x_D − y*)/(y* − x), with y* = 0.75 over x = 0.5.
    const column = { equilibrium: ideal, distillateMoleFraction: 0.9, potMoleFraction: 0.5 };
    expect(minimumRefluxRatio(column)).toEqual({
      refluxRatio: expect.closeTo(0.6, 9),
      pinchMoleFraction: 0.5,
      pinch: 'at-pot',
    });
  });

  test('for strong ethanol the pinch is a tangent, and at the azeotrope no reflux suffices', () => {
    const least = (distillateMoleFraction: number) =>
      minimumRefluxRatio({ equilibrium: model, distillateMoleFraction, potMoleFraction: 0.1 });
    expect([least(0.75).pinch, least(0.87).pinch]).toEqual(['at-pot', 'tangent']);
    expect(least(azeotrope(101.325).ethanolMoleFraction + 1e-3).refluxRatio).toBeNull();
  });
});

describe('batch integrals', () => {
  const span = { chargeMol: 100, potMoleFraction: 0.4, endPotMoleFraction: 0.1 };

  test('simple batch at constant relative volatility has its closed form', () => {
    // Any text: ln(F/W) = 1/(α−1) · ln[(x1(1−x2))/(x2(1−x1))] + ln[(1−x2)/(1−x1)].
    const [x1, x2] = [0.4, 0.1];
    const exact =
      Math.log((x1 * (1 - x2)) / (x2 * (1 - x1))) / (alpha - 1) + Math.log((1 - x2) / (1 - x1));
    expect(simpleBatch({ equilibrium: ideal, ...span }).integral).toBeCloseTo(exact, 8);
  });

  test('a batch keeps its ethanol', () => {
    const { residueMol, distillateMol, distillateMoleFraction } = simpleBatch({
      equilibrium: model,
      ...span,
    });
    expect(residueMol * 0.1 + distillateMol * distillateMoleFraction).toBeCloseTo(40, 9);
  });

  test('what cannot be done is refused: past the azeotrope, NaN', () => {
    expect(() => simpleBatch({ equilibrium: model, ...span, potMoleFraction: 0.95 })).toThrow(
      OutOfRangeError,
    );
    expect(() =>
      stepPlates({
        equilibrium: model,
        distillateMoleFraction: Number.NaN,
        potMoleFraction: 0.1,
        refluxRatio: 1,
      }),
    ).toThrow(OutOfRangeError);
  });
});
