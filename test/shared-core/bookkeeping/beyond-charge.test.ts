import { describe, expect, test } from 'vitest';
import { booksOfRun, defaultRunSettings, type MarkBody } from '#shared-core';

/** Books of 350 mL of 9 % vol. */
function booksWith(...marks: readonly MarkBody[]) {
  return booksOfRun({
    settings: defaultRunSettings,
    inputs: marks.map((mark, index) => ({ kind: 'mark', timeS: index, markId: index + 1, mark })),
    verdicts: { estimates: [] },
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
