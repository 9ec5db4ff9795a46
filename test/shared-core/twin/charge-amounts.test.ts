import { expect, test } from 'vitest';
import { mixtureAmounts } from '../../../shared-core/thermo/mixture-amounts.ts';
import { chargeAmounts } from '../../../shared-core/twin/charge-amounts.ts';

test('a millilitre holds what the mixture of that strength does, between whole per cents nearly so', () => {
  for (const [strengthAbv, digits] of [
    [0, 12],
    [9, 12],
    [9.5, 6],
    [37.25, 6],
  ] as const) {
    const expected = mixtureAmounts({ volumeMl: 1, strengthAbv });
    const found = chargeAmounts(strengthAbv);
    expect(found.ethanolMol).toBeCloseTo(expected.ethanolMol, digits);
    expect(found.waterMol).toBeCloseTo(expected.waterMol, digits);
  }
});

test('what is weaker than none or stronger than 60 % vol is taken for that', () => {
  expect(chargeAmounts(-3)).toEqual(chargeAmounts(0));
  const strongest = mixtureAmounts({ volumeMl: 1, strengthAbv: 60 });
  expect(chargeAmounts(75).ethanolMol).toBeCloseTo(strongest.ethanolMol, 9);
  expect(chargeAmounts(75).waterMol).toBeCloseTo(strongest.waterMol, 9);
});
