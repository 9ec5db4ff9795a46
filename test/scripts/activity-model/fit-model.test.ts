import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { chosenVariant, fitModel } from '../../../scripts/activity-model/fit-model.ts';
import { fitLeastSquares } from '../../../scripts/activity-model/least-squares.ts';
import { readVleSets } from '../../../scripts/activity-model/vle-set.ts';
import { nrtlParameters } from '../../../shared-core/equilibrium/nrtl-parameters.ts';

describe('the fit of the activity model', () => {
  test('gives the parameters that the program uses', () => {
    const sets = readVleSets(path.join(import.meta.dirname, '..', '..', 'reference', 'vle'));
    const fitted = fitModel(sets, chosenVariant);
    expect(fitted).toEqual({
      a12: expect.closeTo(nrtlParameters.a12, 4),
      b12: expect.closeTo(nrtlParameters.b12, 4),
      a21: expect.closeTo(nrtlParameters.a21, 4),
      b21: expect.closeTo(nrtlParameters.b21, 4),
      alpha0: expect.closeTo(nrtlParameters.alpha0, 4),
      alpha1: expect.closeTo(nrtlParameters.alpha1, 4),
    });
  });

  test('finds a line through points and is not led astray by one outlier', () => {
    const points = [0, 1, 2, 3, 4, 5].map((x) => ({ x, y: x === 4 ? 1000 : 3 + 2 * x }));
    const [offset = 0, slope = 0] = fitLeastSquares(
      ([a = 0, b = 0]) => points.map(({ x, y }) => a + b * x - y),
      [0, 0],
    );
    expect(Math.abs(offset - 3)).toBeLessThan(1);
    expect(Math.abs(slope - 2)).toBeLessThan(1);
  });
});
