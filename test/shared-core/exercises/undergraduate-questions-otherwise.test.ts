import { describe, expect, test } from 'vitest';
import { bookLiquid } from '../../../shared-core/bookkeeping/book-liquid.ts';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import type { RunStudy } from '../../../shared-core/study/study-run.ts';
import { plainEntries, plainStudy } from './support/plain-study.ts';
import { printedQuestion } from './support/printed-question.ts';

const plain = plainStudy();
const asked = (id: string, study: RunStudy): readonly string[] =>
  printedQuestion(exercisesOf(study, 'undergraduate').find((one) => one.id === id) ?? null);
const withPlateau = (changes: Partial<NonNullable<RunStudy['plateau']>>): RunStudy => ({
  ...plain,
  plateau: plain.plateau && { ...plain.plateau, ...changes },
});
const withPlates = (plates: number | null): RunStudy => ({
  ...plain,
  settings: { ...plain.settings, rig: { ...plain.settings.rig, plates } },
});
const about = (value: number, standardUncertainty: number) => ({ value, standardUncertainty });

test('questions stand in the order of the lesson', () => {
  expect(exercisesOf(plain, 'undergraduate').map(({ id }) => id)).toEqual(
    ['pressure', 'sensitivity', 'balance', 'plates', 'rayleigh', 'yield'].map(
      (name) => `undergraduate-${name}`,
    ),
  );
});

describe('the plateau at standard pressure', () => {
  test('is not asked where it is the plateau’s own, nor without a plateau', () => {
    const isAsked = (pressureKPa: number) =>
      asked('undergraduate-pressure', withPlateau({ pressureKPa })).length > 0;
    expect([101.02, 101.03, 101.62, 101.63].map(isAsked)).toEqual([true, false, false, true]);
    expect(asked('undergraduate-pressure', { ...plain, plateau: null })).toEqual([]);
  });

  test('is told by what its distance from the azeotrope means within two standard uncertainties', () => {
    const meaning = (value: number) =>
      asked('undergraduate-pressure', withPlateau({ aboveAzeotropeK: about(value, 0.1) }))
        .at(-1)
        ?.split('azeotrope: ')[1];
    expect([0.21, 0.2, -0.2, -0.21].map(meaning)).toEqual([
      'the vapour is on the water side of it.',
      'within its uncertainty that is the azeotrope.',
      'within its uncertainty that is the azeotrope.',
      'no mixture of ethanol and water boils there: thermometer or barometer is off.',
    ]);
  });

  test('far from it is accepted within a twentieth of the shift', () => {
    const lines = asked('undergraduate-pressure', withPlateau({ pressureKPa: 80 }));
    // Some 25 K times the logarithm of 101.325/80 are 6 K.
    expect(lines.find((line) => line.startsWith('  corrected'))).toMatch(/± 0\.3 °C$/);
  });
});

describe('the doubt of the strength', () => {
  const change = (meanC: number) =>
    asked('undergraduate-sensitivity', withPlateau({ mean: about(meanC, 0.1) }))
      .find((line) => line.startsWith('= '))
      ?.split('the interval ')[1];

  test('is less, alike or more three kelvins warmer, as the dew curve bends', () => {
    expect([78.4, 81, 88].map(change)).toEqual(['is narrower.', 'hardly changes.', 'is wider.']);
  });

  test('begins above the azeotrope, where there is vapour to speak of', () => {
    // The azeotrope of 98.3 kPa boils at 77.38 °C.
    const given = asked('undergraduate-sensitivity', withPlateau({ mean: about(77.4, 0.1) }))[2];
    expect(given).toMatch(/% vol at 77\.5 °C; .*at 78\.5 °C; .*at 80\.5 °C; .*at 81\.5 °C\./);
  });

  test('is not asked near pure water, of a perfect thermometer, or without a plateau', () => {
    expect([change(94.5), change(95.5)]).toEqual(['is wider.', undefined]);
    const withProbe = (standardUncertaintyK: number) => {
      const probe = { ...plain.settings.probe, standardUncertaintyK };
      return asked('undergraduate-sensitivity', {
        ...plain,
        settings: { ...plain.settings, probe },
      });
    };
    expect([withProbe(0.014).length > 0, withProbe(0.02).length > 0]).toEqual([false, true]);
    expect(asked('undergraduate-sensitivity', { ...plain, plateau: null })).toEqual([]);
  });
});

describe('the balance', () => {
  const balance = (study: RunStudy) => asked('undergraduate-balance', study);

  test('is not asked without a cut, and not closed without the residue', () => {
    expect(balance({ ...plain, books: { ...plain.books, balance: null } })).toEqual([]);
    const lines = balance(plainStudy({}, { ...plainEntries, residue: undefined }));
    expect(lines[0]).toContain('[7 marks, 12 lines]');
    expect(lines[1]).toMatch(/improve first\?$/);
    expect(lines.some((line) => line.includes('missing'))).toBe(false);
    expect(lines.at(-1)).toBe(
      '> The residue was not measured, so closure cannot be judged: a difference always closes.',
    );
  });

  test('counts what was found in the column, and says that it closes', () => {
    const holdUp = {
      amount: { by: 'mass', massG: about(3.6, 0.5) },
      strength: { by: 'stated', strengthAbv: about(50, 1) },
    } as const;
    const lines = balance(plainStudy({}, { ...plainEntries, holdUp }));
    // 3.6 g of 42.43 % by mass are 1.53 g.
    expect(lines).toContain(
      '- Hold-up: (3.6~±~1.0)~g with a mass fraction of ethanol of (42.4~±~1.9)~%.',
    );
    expect(lines.at(-1)).toBe(
      '> Missing: 23.68 − 21.31 − 0.79 − 1.53 = 0.1 g. Within the uncertainty the balance closes.',
    );
  });

  test('of a still without a column looks for the rest on the glass', () => {
    expect(balance(withPlates(0)).at(-1)).toContain('what stayed on the glass among it.');
  });

  test('of an empty receiver divides by nothing', () => {
    const nothing = bookLiquid({
      name: 'Cut 2',
      amount: { by: 'volume', volumeMl: about(0, 0.5), temperatureC: about(20, 0.5) },
      strength: { by: 'stated', strengthAbv: about(60, 0.5) },
    });
    const [first, second] = plain.books.cuts;
    const cuts = [first!, { ...second!, booked: nothing }];
    const lines = balance({ ...plain, books: { ...plain.books, cuts } });
    expect(lines.join('\n')).not.toMatch(/NaN|Infinity/);
    // 14.20 g of 23.68 g.
    expect(lines).toContain('  recovery: 60 ± 0.8 %');
  });
});

describe('the plates', () => {
  const counted = (changes: Partial<NonNullable<RunStudy['plates']>['plates']>) =>
    asked('undergraduate-plates', {
      ...plain,
      plates: plain.plates && {
        ...plain.plates,
        plates: { ...plain.plates.plates, ...changes },
      },
    });

  test('are stepped off alone where Fenske’s equation has none', () => {
    const lines = counted({ fenske: null });
    expect(lines.slice(0, 2)).toEqual([
      'undergraduate-plates (undergraduate): Count the plates [4 marks, 8 lines, to draw on, solved]',
      'Step off the equilibrium stages at total reflux on the diagram.',
    ]);
    expect(lines.filter((line) => /^- Relative|^> Fenske|differ/.test(line))).toEqual([]);
    expect(lines).toContain('= 3.5~stages (accept ±0.4~stages)');
  });

  test('have no upper end where the azeotrope is within the interval', () => {
    expect(counted({ stepped: { value: 3.5, low: 3, high: null } }).at(-1)).toBe(
      '> The upper end of the interval reaches the azeotrope: no largest number of stages can be given.',
    );
  });

  test('are not asked where none were counted, or where a step is hardly longer than an eye’s error', () => {
    expect(counted({ stepped: { value: null, low: null, high: null } })).toEqual([]);
    expect(asked('undergraduate-plates', { ...plain, plates: null })).toEqual([]);
    const near = (value: number) => ({
      ...plain,
      plates: plain.plates && {
        ...plain.plates,
        distillateMoleFraction: { value, low: value - 0.01, high: value + 0.01 },
      },
    });
    const stages = (value: number) =>
      asked('undergraduate-plates', near(value)).find((line) => line.startsWith('  stepped'));
    expect([0.7, 0.8, 0.885].map(stages)).toEqual([
      '  stepped: 3.5 ± 0.4 stages',
      expect.stringMatching(/ ± (0\.[5-9]|1\.\d) stages$/),
      undefined,
    ]);
  });

  test('of many stages are accepted within eight in a hundred', () => {
    expect(counted({ stepped: { value: 8, low: 7, high: 9 } })).toContain(
      '  stepped: 8 ± 0.6 stages',
    );
  });

  test('of a still without a column are the pot and a little of the wall', () => {
    expect(asked('undergraduate-plates', withPlates(0)).join('\n')).toContain(
      '3.5 stages, the pot counted; without a column the pot alone is one, the wall of the still head adds a little.',
    );
    expect(counted({ stepped: { value: 0.8, low: 0.7, high: 0.9 } }).join('\n')).toContain(
      '0.8 stages, the pot counted; 0.0 plates in the column.',
    );
  });
});

describe('Rayleigh’s equation', () => {
  test('is compared as the still allows it', () => {
    const words = (plates: number | null) => {
      const lines = asked('undergraduate-rayleigh', withPlates(plates));
      return [lines[0]?.split(': ')[1]?.split(' [')[0], lines[1]?.split('residue').at(-1)];
    };
    expect([words(0), words(6), words(null)].map(([title]) => title)).toEqual([
      'Does Rayleigh’s equation describe this still?',
      'What would a still without a column have given?',
      'What would a still without a column have given?',
    ]);
    const asks = (plates: number | null) =>
      asked('undergraduate-rayleigh', withPlates(plates))[1]?.split('distillate')[1];
    expect([asks(0), asks(6), asks(null)]).toEqual([
      '. What is the mole fraction of the ',
      ', as if there were no column. What is the mole fraction of the ',
      ', as if there were no column. What is the mole fraction of the ',
    ]);
    const compared = (plates: number | null) => {
      const lines = asked('undergraduate-rayleigh', withPlates(plates));
      return [
        lines[1]?.split('distillate? ')[1],
        lines.find((line) => line.startsWith('= '))?.split('mol). ')[1],
      ];
    };
    expect([compared(0), compared(6), compared(null)]).toEqual([
      ['Compare it with what was measured.', 'Measured minus Rayleigh: +22.6~% vol.'],
      ['Express the gain of the column in % vol.', 'Gain of the column: +22.6~% vol.'],
      [
        'Compare it with what was measured: was there a column at work?',
        'Measured minus Rayleigh: +22.6~% vol.',
      ],
    ]);
  });

  test('may expect more than was measured', () => {
    const product = plain.product && {
      ...plain.product,
      strengthAbv: { value: 50, low: 49, high: 51 },
    };
    const lines = asked('undergraduate-rayleigh', { ...plain, product });
    // 50.0 − 54.8.
    expect(lines.find((line) => line.startsWith('= '))).toMatch(/Rayleigh: −4\.8~% vol\.$/);
  });

  test('is not asked without a product, where it can’t be solved, or where the table leads astray', () => {
    expect(asked('undergraduate-rayleigh', { ...plain, product: null })).toEqual([]);
    expect(asked('undergraduate-rayleigh', { ...plain, simple: null })).toEqual([]);
    const simple = plain.simple && { ...plain.simple, distillateMoleFraction: 0.3 };
    expect(asked('undergraduate-rayleigh', { ...plain, simple })).toEqual([]);
    const deep = plain.simple && { ...plain.simple, residueMoleFraction: 0.04 };
    expect(asked('undergraduate-rayleigh', { ...plain, simple: deep })).toEqual([]);
  });

  test('takes the run’s pressure where there was no plateau', () => {
    const study = { ...plain, plateau: null, pressureKPa: 90.3 };
    expect(asked('undergraduate-rayleigh', study)[3]).toMatch(/at 90\.3 kPa/);
  });
});

describe('the yields', () => {
  test('are not asked without sugar or balance', () => {
    const without = (changes: Partial<RunStudy['books']>) =>
      asked('undergraduate-yield', { ...plain, books: { ...plain.books, ...changes } });
    expect([without({ ferment: null }), without({ balance: null })]).toEqual([[], []]);
  });

  test('beyond the equation are called misread, and its very yield is not', () => {
    const said = (sugarG: number) =>
      asked(
        'undergraduate-yield',
        plainStudy({}, { ...plainEntries, sugarG: about(sugarG, 1) }),
      ).at(-1);
    // 23.68 g are all that 46.3 g of sugar can give.
    expect(said(46)).toBe('> More than the sugar can give: sugar or strength was misread.');
    expect(said(46.3)).toMatch(/^> Yeast makes cells/);
  });
});
