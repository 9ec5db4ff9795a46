import { describe, expect, test } from 'vitest';
import { balanceBatch } from '../../../shared-core/bookkeeping/balance-batch.ts';
import { bookLiquid } from '../../../shared-core/bookkeeping/book-liquid.ts';

describe('a balance', () => {
  const liquid = (name: string, massG: number, abv: number) =>
    bookLiquid({
      name,
      amount: { by: 'mass', massG: { value: massG, standardUncertainty: 0.1 } },
      strength: { by: 'stated', strengthAbv: { value: abv, standardUncertainty: 0 } },
    });
  const charge = liquid('Charge', 250, 11);
  const cuts = [liquid('Cut 1', 5, 92), liquid('Cut 2', 20, 90)];
  const residue = liquid('Residue', 220, 0.5);

  test('of masses is a sum and a difference, with the doubts in squares', () => {
    const doubt = (parts: number) => expect.closeTo(0.1 * Math.sqrt(parts), 6);
    const { total } = balanceBatch({ charge, cuts, residue, holdUp: liquid('Hold-up', 4, 60) });
    expect(total).toEqual({
      inG: { value: 250, standardUncertainty: doubt(1) },
      cutsG: { value: 25, standardUncertainty: doubt(2) },
      residueG: { value: 220, standardUncertainty: doubt(1) },
      holdUpG: { value: 4, standardUncertainty: doubt(1) },
      missingG: { value: 1, standardUncertainty: doubt(5) },
      closurePercent: expect.objectContaining({ value: expect.closeTo(99.6, 9) }),
      closes: false,
      recoveryPercent: expect.objectContaining({ value: expect.closeTo(10, 9) }),
    });
    expect(balanceBatch({ charge, cuts, residue, holdUp: null }).total).toMatchObject({
      holdUpG: null,
      missingG: { value: 5 },
    });
  });

  test.each([
    [4.56, true],
    [4.54, false],
    [5.44, true],
    [5.46, false],
  ])(
    'with %d g of hold-up closes (%s) where twice the doubt covers what is missing',
    (massG, closes) => {
      // 5 g are missing without it; 2 √5 × 0.1 g = 0.447 g.
      const { total } = balanceBatch({
        charge,
        cuts,
        residue,
        holdUp: liquid('Hold-up', massG, 60),
      });
      expect(total.closes).toBe(closes);
    },
  );

  test('of nothing, or of water, is an error that names what is missing', () => {
    expect(() => balanceBatch({ charge: liquid('', 0, 11), cuts, residue, holdUp: null })).toThrow(
      /mass charged.*g/,
    );
    expect(() => balanceBatch({ charge: liquid('', 9, 0), cuts, residue, holdUp: null })).toThrow(
      /ethanol charged.*g/,
    );
  });
});
