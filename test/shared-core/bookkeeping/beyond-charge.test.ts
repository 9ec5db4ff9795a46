import { describe, expect, test } from 'vitest';
import { booksOfRun, defaultRunSettings, type MarkBody } from '#shared-core';
import { isMoreThanCharge } from '../../../shared-core/bookkeeping/beyond-charge.ts';

/** Books of 350 mL of 9 % vol. */
function booksWith(...marks: readonly MarkBody[]) {
  return booksOfRun({
    settings: defaultRunSettings,
    inputs: marks.map((mark, index) => ({ kind: 'mark', timeS: index, markId: index + 1, mark })),
    verdicts: { estimates: [], events: [] },
    endS: 60,
  });
}

const cut = (volumeMl: number): readonly MarkBody[] => [
  { type: 'liquid-volume', liquid: 'cut-1', volumeMl, temperatureC: 20 },
  { type: 'liquid-strength', liquid: 'cut-1', alcoholByVolume: 85, temperatureC: 20 },
];
const residue = (volumeMl: number): readonly MarkBody[] => [
  { type: 'liquid-volume', liquid: 'residue', volumeMl, temperatureC: 20 },
  { type: 'liquid-strength', liquid: 'residue', alcoholByVolume: 1, temperatureC: 20 },
];

describe('more liquid than was charged', () => {
  test('is left out of the balance with the reason, instead of giving a recovery of thousands of per cent', () => {
    const { balance, cuts, assumptions } = booksWith(...cut(3500));
    expect([balance, cuts[0]?.booked]).toEqual([null, null]);
    expect(assumptions.join('\n')).toMatch(
      /^Cut 1: 2\d{3} g is more than the 34\d g that were charged, so it is not in the balance\. Look/m,
    );
  });

  test('in several liquids that are possible one by one is told', () => {
    expect(booksWith(...cut(30), ...residue(340)).assumptions.join()).toMatch(
      /All liquids together weigh \d+ g, more than the \d+ g that were charged/,
    );
    expect(booksWith(...cut(30), ...residue(315)).assumptions.join()).not.toContain('together');
  });
});

test('a surplus counts once it is more than three times the doubts of all masses in squares', () => {
  const weighed = (value: number, standardUncertainty: number) => ({
    massG: { value, standardUncertainty },
  });
  // √(3² + 4²) = 5 g; without the doubts of the charge, or of a liquid, it would be less.
  const charge = weighed(300, 4);
  expect(
    [14.9, 15.1].map((surplusG) => isMoreThanCharge([weighed(300 + surplusG, 3)], charge)),
  ).toEqual([false, true]);
  // √(3² + 2² + 6²) = 7 g of two liquids.
  const two = (surplusG: number) => [weighed(100, 2), weighed(200 + surplusG, 6)];
  expect([20.9, 21.1].map((surplusG) => isMoreThanCharge(two(surplusG), weighed(300, 3)))).toEqual([
    false,
    true,
  ]);
});
