import { describe, expect, test } from 'vitest';
import type { ExerciseLevel } from '../../../shared-core/exercises/exercise.ts';
import { fermentExercises } from '../../../shared-core/exercises/ferment-exercises.ts';
import { momentAt, plainWeek } from './support/plain-week.ts';
import { printedQuestion } from './support/printed-question.ts';

type Week = ReturnType<typeof plainWeek>;

const week = plainWeek();
const asked = (id: string, of: Week, level: ExerciseLevel = 'school') =>
  printedQuestion(fermentExercises(of, level).find((question) => question.id === id) ?? null);
const ofGravities = (...gravities: readonly number[]): Week => ({
  ...week,
  moments: gravities.map((gravity, index) => momentAt(24 * index, gravity, null)),
});
const ofMasses = (...massesG: readonly number[]): Week => ({
  ...week,
  moments: massesG.map((massG, index) => momentAt(24 * index, null, massG)),
});
const withStrength = (strengthAbv: Week['verdict']['strengthAbv']): Week => ({
  ...week,
  verdict: { ...week.verdict, strengthAbv },
});
const strength = (value: number) => ({ low: value - 0.4, value, high: value + 0.4 });

test('questions stand in the order of the lesson', () => {
  const ids = (level: ExerciseLevel) => fermentExercises(week, level).map(({ id }) => id);
  expect([ids('school'), ids('undergraduate')]).toEqual([
    ['fall-of-gravity', 'fastest-day', 'sugar-to-alcohol', 'never-sealed'].map(
      (name) => `school-${name}`,
    ),
    ['balling', 'strength-doubt', 'sugar-yield', 'gas-to-ethanol'].map(
      (name) => `undergraduate-${name}`,
    ),
  ]);
});

describe('the fall of the gravity', () => {
  const isAsked = (of: Week) => asked('school-fall-of-gravity', of).length > 0;

  test('is asked for from 0.005 on', () => {
    expect([isAsked(ofGravities(1.06, 1.055)), isAsked(ofGravities(1.06, 1.056))]).toEqual([
      true,
      false,
    ]);
  });

  test('is not asked for where the judge does not believe the first reading, or had none', () => {
    const withOriginal = (originalGravity: Week['verdict']['originalGravity']) => ({
      ...week,
      verdict: { ...week.verdict, originalGravity },
    });
    expect([
      isAsked(withOriginal({ low: 1.06, value: 1.0649, high: 1.07 })),
      isAsked(withOriginal({ low: 1.06, value: 1.0651, high: 1.07 })),
      isAsked(withOriginal(null)),
      isAsked({ ...week, moments: [] }),
      isAsked(ofMasses(1480, 1424)),
    ]).toEqual([true, false, false, false, false]);
    expect(asked('undergraduate-balling', withOriginal(null), 'undergraduate')).toEqual([]);
    expect(asked('undergraduate-strength-doubt', withOriginal(null), 'undergraduate')).toEqual([]);
  });

  test('is from the first to the last that were read, whatever stood between', () => {
    expect(asked('school-fall-of-gravity', ofGravities(1.06, 1.07, 0.99, 1.05))).toContain(
      '> Fall: 1.060 − 1.050 = 0.010.',
    );
  });
});

describe('the fastest day', () => {
  const fastest = (of: Week) =>
    asked('school-fastest-day', of)
      .find((line) => line.startsWith('='))
      ?.split('). ')[1];

  test('is asked for of four to twelve readings', () => {
    expect(fastest(ofGravities(1.06, 1.05, 1.02))).toBeUndefined();
    expect(fastest(ofGravities(1.06, 1.05, 1.02, 1.01))).toBe('Between day 1.0 and day 2.0.');
    const falling = (count: number) =>
      ofGravities(1.09, ...Array.from({ length: count - 1 }, (_, index) => 1.05 - 0.003 * index));
    expect([fastest(falling(12)), fastest(falling(13))]).toEqual([
      'Between day 0.0 and day 1.0.',
      undefined,
    ]);
  });

  test('is one: two that fall alike within a tenth have no answer', () => {
    expect(fastest(ofGravities(1.06, 1.05, 1.027, 1.007))).toBe('Between day 1.0 and day 2.0.');
    expect(fastest(ofGravities(1.06, 1.05, 1.029, 1.009))).toBeUndefined();
  });

  test('is by the day, and no two readings of one moment', () => {
    const at = (timeH: number, gravity: number) => momentAt(timeH, gravity, null);
    const uneven = [at(0, 1.06), at(6, 1.05), at(7, 1.04), at(48, 1.01), at(96, 1)];
    const lines = asked('school-fastest-day', { ...week, moments: uneven });
    // 0.010 in 0.3 of a day as printed; the hour between day 0.3 and day 0.3 is none.
    expect(lines).toContain('> (1.060 − 1.050)/0.3 = 0.0333 in a day.');
    expect(fastest(ofMasses(1480, 1470, 1460, 1450))).toBeUndefined();
  });
});

describe('the sugar that became alcohol', () => {
  test('is asked for from a strength of 1 % vol on', () => {
    const lines = (value: number) =>
      asked('school-sugar-to-alcohol', withStrength(strength(value)));
    expect([lines(1).length > 0, lines(0.9)]).toEqual([true, []]);
    expect(asked('school-sugar-to-alcohol', withStrength(null))).toEqual([]);
  });

  test('is no share of a sugar that is not known', () => {
    const lines = asked('school-sugar-to-alcohol', { ...week, balance: null });
    expect(lines[0]).toContain('[3 marks, 7 lines]');
    expect(lines[1]).toMatch(/of sugar did they come\?$/);
    expect(lines.filter((line) => /beginning|share|%\.$|rest/.test(line))).toEqual([]);
    expect(lines.at(-1)).toBe('> 63.2 × 100/51 = 123.9 g of sugar.');
  });

  test('may be all, and is misread where it is more', () => {
    const last = (sugarG: number) =>
      asked('school-sugar-to-alcohol', {
        ...week,
        balance: week.balance && {
          ...week.balance,
          sugarG: { value: sugarG, standardUncertainty: 2 },
        },
      }).at(-1);
    expect(last(124)).toMatch(/^> The rest fed the yeast/);
    expect(last(123)).toBe(
      '> More than there was: the sugar, the volume or the strength was misread.',
    );
  });

  test('of a little is accepted within two tenths', () => {
    const stated = { ...week.kept.stated, volumeMl: 100 };
    const lines = asked('school-sugar-to-alcohol', { ...week, kept: { ...week.kept, stated } });
    expect(lines).toContain('  alcohol: 8 ± 0.2 mL');
  });
});

describe('a vessel that is never sealed', () => {
  test('is asked about in words where no mass tells of its gas', () => {
    const words = [
      'school-never-sealed (school): Why is the vessel never sealed? [2 marks, 4 lines]',
      'A kilogram of sugar gives about 272 L of carbon dioxide. What would happen in a closed vessel, and what does an air lock do?',
      '= The gas needs hundreds of times the room of the sugar; in a closed vessel the pressure grows until it bursts. An air lock lets the gas out and no air in.',
      '> One mark for the pressure, one for the air lock.',
    ];
    expect(asked('school-never-sealed', ofGravities(1.06, 1))).toEqual(words);
    expect(asked('school-never-sealed', ofMasses(1480, 1479))).toEqual(words);
    expect(asked('school-never-sealed', ofMasses(1480, 1478.9))[0]).toContain('[3 marks');
  });

  test('of little gas is accepted within two tenths of a litre', () => {
    // 5.0 g of 0.56 L each.
    expect(asked('school-never-sealed', ofMasses(1480, 1475))).toContain('  room: 2.8 ± 0.2 L');
  });
});

describe('at a university', () => {
  const at = (id: string, of: Week) => asked(`undergraduate-${id}`, of, 'undergraduate');

  test('an apparent extract below nothing has a true minus', () => {
    // 135.997 · 0.988047936 − 630.272 · 0.992016 + 1111.14 · 0.996 − 616.868 = −1.04.
    const lines = at('balling', ofGravities(1.06, 0.996));
    expect(lines).toContain('> p = 14.74 %; m = −1.04 %.');
    expect(lines.join('\n')).toContain('0.8192 × (−1.04) =');
    expect(lines.join('\n')).not.toMatch(/-\d/);
  });

  test('nothing rests on a strength that is not known', () => {
    const unknown = withStrength(null);
    expect(
      ['balling', 'sugar-yield', 'gas-to-ethanol'].map((id) => at(id, unknown).length),
    ).toEqual([0, 0, 0]);
    expect(at('strength-doubt', unknown)).not.toEqual([]);
  });

  test('a small fall is in doubt by more of itself', () => {
    // 0.054 of 131.25 · 0.005 = 0.656 % vol.
    expect(at('strength-doubt', ofGravities(1.06, 1.055))).toContain('  share: 8.2 ± 0.8 %');
  });

  test('a yield needs the sugar, and a strength with a doubt', () => {
    expect(at('sugar-yield', { ...week, balance: null })).toEqual([]);
    expect(at('sugar-yield', withStrength({ low: 8, value: 8, high: 8 }))).toEqual([]);
  });

  test('more than the sugar can give is called misread, and all of it is not', () => {
    const said = (value: number) => at('sugar-yield', withStrength(strength(value))).at(-1);
    // 66.48 g are 8.42 % vol.
    expect(said(8.4)).toMatch(/^> What is missing of 100 % is yeast/);
    expect(said(8.5)).toBe(
      '> More than the sugar can give, by more or less than U: sugar, volume or strength may be misread.',
    );
  });

  test('a ferment that was degassed keeps no gas', () => {
    const [first, ...others] = ofMasses(1480, 1424).moments;
    const degassed = others.map((moment) => ({
      ...moment,
      read: { ...moment.read, treatments: ['degassed' as const] },
    }));
    const lines = at('gas-to-ethanol', { ...week, moments: [first!, ...degassed] });
    expect(lines[3]).toBe(
      '- At 24 °C each gram of CO₂ carries 0.012 g of water away; the ferment was degassed before it was weighed last.',
    );
    expect(lines).toContain(
      '> Lost: 1480.0 − 1424.0 = 56.0 g; gas among it 56.0/(1 + 0.012) g = 55.34 g.',
    );
  });

  test('the warmth is the probe’s, else the thermometer’s, else a room’s, and never beyond the law', () => {
    const warmth = (changes: Partial<Week>) =>
      /At (\d+) °C/.exec(at('gas-to-ethanol', { ...week, ...changes }).join('\n'))?.[1];
    const heard = (...meansC: readonly number[]) => ({
      stretches: meansC.map((meanC) => ({
        atIso: '2026-03-08T08:00:00.000Z',
        lowC: meanC,
        meanC,
        highC: meanC,
        minutes: 10,
      })),
    });
    const unread = week.moments.map((moment) => ({
      ...moment,
      read: { ...moment.read, temperatureC: null },
    }));
    expect([
      warmth(heard(28, 32)),
      warmth({}),
      warmth({ moments: unread }),
      warmth(heard(45)),
      warmth(heard(0)),
    ]).toEqual(['30', '24', '20', '40', '1']);
  });

  test('without masses there is no balance to weigh by', () => {
    expect(at('gas-to-ethanol', ofGravities(1.06, 1))).toEqual([]);
  });
});
