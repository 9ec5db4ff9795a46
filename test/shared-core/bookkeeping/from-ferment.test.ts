import { expect, test } from 'vitest';
import { bookTables, defaultRunSettings, fromFermentFigure, type RunSettings } from '#shared-core';
import { booksOfRun } from '../../../shared-core/bookkeeping/books-of-run.ts';
import { pearOrigin } from '../../support/pear-origin.ts';

type FermentOrigin = NonNullable<RunSettings['ferment']>;

const origin: FermentOrigin = {
  ...pearOrigin,
  strengthAbv: { low: 7.6, value: 8, high: 8.4 },
  sugarGPerL: { value: 135, standardUncertainty: 3 },
};
const settings = {
  ...defaultRunSettings,
  charge: { volumeMl: 500, strengthAbv: 8, standardUncertaintyAbv: 0.25 },
  ferment: origin,
};
const exact = (value: number) => ({ value, standardUncertainty: 0.2 });
const books = (has: { readonly cut: boolean; readonly ferment?: FermentOrigin | undefined }) =>
  booksOfRun({
    settings: { ...settings, ferment: has.ferment },
    inputs: [],
    verdicts: { estimates: [], events: [] },
    endS: 3600,
    entries: {
      cuts: has.cut
        ? [
            {
              number: 1,
              amount: { by: 'mass', massG: exact(32) },
              strength: { by: 'stated', strengthAbv: exact(88) },
            },
          ]
        : [],
    },
  });

test('a charge from a kept ferment tells each step from its sugar to its distillate, by hand to within the last digit', () => {
  const { fromFerment } = books({ cut: true, ferment: origin });
  // By hand: 0.5 L × 135 g/L; × 0.5114; × 0.484; 0.5 L × 8 % vol × 7.8924 g/L; 32 g of 88 % vol, 83.0 % by mass (OIML R 22).
  const by = (key: 'sugarG' | 'mostG' | 'practiceG' | 'byLogG' | 'chargedG' | 'collectedG') =>
    fromFerment?.[key]?.value ?? Number.NaN;
  expect(by('sugarG')).toBeCloseTo(67.5, 6);
  expect(by('mostG')).toBeCloseTo(34.52, 2);
  expect(by('practiceG')).toBeCloseTo(32.67, 2);
  expect(by('byLogG')).toBeCloseTo(31.57, 2);
  expect(by('chargedG')).toBeCloseTo(31.57, 2);
  expect(Math.abs(by('collectedG') - 26.6)).toBeLessThan(0.1);
  expect(fromFerment?.fermentPercent?.value).toBeCloseTo(91.45, 1);
  // Of the interval of the judge, the volume and the sugar: √((0.4/1.645/8)² + u(V)² + (3/135)² …).
  expect(fromFerment?.fermentPercent?.standardUncertainty).toBeGreaterThan(3);
  expect(fromFerment?.fermentPercent?.standardUncertainty).toBeLessThan(4.5);
  expect(Math.abs((fromFerment?.yields?.overallPercent.value ?? 0) - 77)).toBeLessThan(0.4);
  // What the sugar can give is as uncertain as the sugar.
  const relative = (key: 'sugarG' | 'mostG' | 'practiceG') =>
    (fromFerment?.[key]?.standardUncertainty ?? 0) / by(key);
  expect(relative('sugarG')).toBeGreaterThan(0.02);
  for (const key of ['mostG', 'practiceG'] as const)
    expect(relative(key)).toBeCloseTo(relative('sugarG'), 12);
  const lines = fromFerment?.fermentPercent?.budget.lines ?? [];
  expect(lines.map(({ name, reason }) => `${name} ${reason}`).toSorted()).toEqual([
    'Pear by its log [g]',
    'Sugar as it began [g]',
  ]);
});

test('one table and one picture tell them, with the interval of the judge; of a charge from elsewhere there is neither', () => {
  const whole = books({ cut: true, ferment: origin });
  const table = bookTables(whole).find(({ caption }) => caption.startsWith('From sugar'));
  expect(table?.rows.map(([step]) => step)).toEqual([
    'Sugar of this charge',
    'Ethanol at most',
    'Ethanol expected',
    'Ethanol in the ferment',
    'Ethanol charged',
    'Ethanol collected',
  ]);
  expect(JSON.stringify(table)).toContain('its log: 8.0 % vol, nine times in ten 7.6 to 8.4');
  expect(fromFermentFigure(whole.fromFerment)?.altText).toMatch(/Sugar .*Ethanol collected /);
  const elsewhere = books({ cut: true });
  expect([elsewhere.fromFerment, fromFermentFigure(elsewhere.fromFerment)]).toEqual([null, null]);
  expect(bookTables(elsewhere).some(({ caption }) => caption.startsWith('From sugar'))).toBe(false);
});

test('what nobody measured is said to be so: no cut yet, or a sugar that nothing told', () => {
  const early = bookTables(books({ cut: false, ferment: origin })).at(-1);
  expect(early?.rows.at(-1)).toEqual(['Ethanol collected', 'not measured', '–', '–']);
  const unknown = books({ cut: true, ferment: { ...origin, sugarGPerL: null } });
  const rows = bookTables(unknown).at(-1)?.rows ?? [];
  expect(rows[0]?.[1]).toBe('not known');
  expect(unknown.fromFerment?.yields).toBeNull();
});
