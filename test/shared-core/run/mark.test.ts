import { expect, test } from 'vitest';
import { isBookMark, type MarkBody, markBodySchema } from '../../../shared-core/run/mark.ts';

test('a refractometer is read as far as its scale tells strengths apart: 80 % by volume, 73 % by mass', () => {
  const isTaken = (scale: string, percent: number): boolean =>
    markBodySchema.safeParse({ type: 'liquid-refractometer', liquid: 'cut-1', scale, percent })
      .success;
  expect([
    isTaken('volume', 0),
    isTaken('volume', 80),
    isTaken('volume', 80.1),
    isTaken('mass', 73),
    isTaken('mass', 73.1),
    isTaken('mass', -0.1),
  ]).toEqual([true, true, false, true, false, false]);
  const refused = markBodySchema.safeParse({
    type: 'liquid-refractometer',
    liquid: 'cut-1',
    scale: 'volume',
    percent: 90,
  });
  expect(refused.error?.issues.map(({ path }) => path)).toEqual([['percent']]);
});

test('what serves the books alone may be marked after the run; what the monitor goes by may not', () => {
  const books: readonly MarkBody[] = [
    { type: 'liquid-mass', liquid: 'residue', massG: 310 },
    { type: 'liquid-label', liquid: 'cut-1', alcoholByVolume: 40 },
    { type: 'sugar-known', sugarG: 60, standardUncertaintyG: 2 },
    {
      type: 'proof-burned',
      cut: 1,
      volumeMl: 0.5,
      seen: 'burned-away',
      role: 'teacher',
      confirmed: [],
    },
  ];
  const others: readonly MarkBody[] = [
    { type: 'heat-off' },
    { type: 'volume-read', volumeMl: 20 },
    { type: 'strength-read', alcoholByVolume: 90, sampleTemperatureC: 20 },
    { type: 'note', text: 'smells of pears' },
  ];
  expect(books.map(isBookMark)).toEqual(books.map(() => true));
  expect(others.map(isBookMark)).toEqual(others.map(() => false));
});
