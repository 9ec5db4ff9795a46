import { expect, test } from 'vitest';
import { fermentYield } from '../../../shared-core/bookkeeping/ferment-yield.ts';
import { fermentSentence } from '../../../shared-core/report/ferment-sentence.ts';

const about = (value: number, standardUncertainty: number) => ({ value, standardUncertainty });
const told = (fermentEthanolG: number) =>
  fermentSentence(
    fermentYield({
      sugarG: about(60, 1),
      fermentEthanolG: about(fermentEthanolG, 1),
      productEthanolG: about(20, 0.5),
    }),
  );

test('more ethanol than the sugar can give is said to be a misreading, once it is beyond doubt', () => {
  // 60 g of hexose give 30.7 g at most; U of the share is some 7 %.
  expect(told(29)).not.toContain('More than the sugar can give');
  expect(told(31.5)).not.toContain('More than the sugar can give');
  expect(told(79)).toContain('More than the sugar can give');
});
