import { describe, expect, test } from 'vitest';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import { plateauFigure } from '../../../shared-core/figures/plateau-figure.ts';
import type { RunStudy } from '../../../shared-core/study/study-run.ts';
import { headRows, mark, plainEntries, plainInputs, plainStudy } from './support/plain-study.ts';
import { printedQuestion } from './support/printed-question.ts';

const plain = plainStudy();
const asked = (id: string, study: RunStudy): readonly string[] =>
  printedQuestion(exercisesOf(study, 'school').find((question) => question.id === id) ?? null);
const at = (pressureKPa: number): RunStudy => ({ ...plain, pressureKPa });
const withCharge = (volumeMl: number): RunStudy => ({
  ...plain,
  settings: { ...plain.settings, charge: { ...plain.settings.charge, volumeMl } },
});

test('questions stand in the order of the lesson', () => {
  expect(exercisesOf(plain, 'school').map(({ id }) => id)).toEqual([
    'school-plateau',
    'school-stages',
    'school-pressure',
    'school-recovery',
    'school-critique',
    'school-azeotrope',
  ]);
});

describe('a boiling point elsewhere', () => {
  test('is not asked where the pressures differ by less than half a kilopascal', () => {
    // The table's 101.325 kPa are printed as 101.3.
    expect(asked('school-pressure', at(100.9))).toEqual([]);
    expect(asked('school-pressure', at(100.8))).not.toEqual([]);
    expect(asked('school-pressure', at(101.8))).not.toEqual([]);
    expect(asked('school-pressure', at(101.7))).toEqual([]);
  });

  test('is higher under more air', () => {
    expect(asked('school-pressure', at(104.3)).slice(-4)).toEqual([
      '> Difference in pressure: 101.3 − 104.3 = −3.0 kPa.',
      '> Difference in temperature: −3.0 × 0.25 = −0.75 °C.',
      '> 78.15 + 0.75 = 78.9 °C.',
      '> Higher pressure, higher boiling point: the vapour has more air to push against.',
    ]);
  });

  test('is that of the run’s pressure, where there was no plateau', () => {
    const study = { ...at(90.3), plateau: null };
    expect(asked('school-pressure', study)[2]).toMatch(/^- Air pressure at the still: 90\.3 kPa/);
    expect(asked('school-azeotrope', study)[2]).toContain('here at 75.3 °C');
  });
});

describe('what came over', () => {
  test('is not asked where nothing was measured of it', () => {
    expect(asked('school-recovery', { ...plain, product: null })).toEqual([]);
    const books = { ...plain.books, balance: null };
    expect(asked('school-recovery', { ...plain, books })).toEqual([]);
  });

  test('may be in one receiver, its strength an estimate', () => {
    const cuts = plain.books.cuts
      .slice(0, 1)
      .map((cut) => ({ ...cut, strengthFrom: 'head-temperature' as const }));
    const lines = asked('school-recovery', { ...plain, books: { ...plain.books, cuts } });
    expect(lines[1]).toContain('How many are in receiver 1? What percentage is that?');
    expect(lines).toContain(
      '- Receiver 1: 20.0 mL of 90.0 % vol (an estimate from the head temperature).',
    );
    // 18 mL of 30 mL.
    expect(lines).toContain('> In the receiver: 20.0 × 90.0/100 = 18.0 mL ethanol.');
    expect(lines).toContain('> 18.0/30.0 × 100 % = 60.0 %.');
  });

  test('leaves out a receiver that was not measured', () => {
    const [first, second] = plain.books.cuts;
    if (first === undefined || second === undefined) throw new Error('Two receivers were used.');
    const books = { ...plain.books, cuts: [{ ...first, booked: null }, second] };
    expect(asked('school-recovery', { ...plain, books })[1]).toContain('are in receiver 2?');
  });

  test('is more than there was, where something was misread; and a small charge forgives rounding', () => {
    // 100 mL of 12 % vol hold 12 mL, of which 20/12 % may be rounding.
    const lines = asked('school-recovery', withCharge(100));
    expect(lines).toContain('  ethanol charged: 12 ± 0.1 mL');
    expect(lines).toContain('  recovery: 225 ± 2 %');
    expect(lines.at(-1)).toBe(
      '> More than was there cannot come over: the charge, a volume or a strength was misread.',
    );
  });

  test('of all that was charged is no mistake', () => {
    // 225 mL of 12 % vol are the 27 mL that came over.
    expect(asked('school-recovery', withCharge(225)).at(-1)).toMatch(/^> The rest is still/);
  });

  test('clings to the glass where there is no column', () => {
    const rig = { ...plain.settings.rig, plates: 0 };
    const study = { ...plain, settings: { ...plain.settings, rig } };
    expect(asked('school-recovery', study).at(-1)).toBe(
      '> The rest is still in the flask, clings to the glass, or was lost as vapour.',
    );
  });
});

test('nothing is asked of a plateau that there is not', () => {
  const bare = { ...plain, plateau: null };
  expect(asked('school-plateau', bare)).toEqual([]);
  expect(asked('school-critique', bare)).toEqual([]);
  expect(asked('school-stages', bare)[0]).toContain('[2 marks, 3 lines]');
});

test('a plateau that rises, and a long one, are read less closely', () => {
  const statistics = plain.plateau && {
    ...plain.plateau.statistics,
    lowestC: 78,
    highestC: 78.98,
    span: { fromS: 900, toS: 900 + 41 * 60 },
  };
  const plateau = plain.plateau && statistics && { ...plain.plateau, statistics };
  expect(asked('school-plateau', { ...plain, plateau })).toEqual(
    expect.arrayContaining(['  temperature: 78.4 ± 0.5 °C', '  length: 41 ± 11 min']),
  );
});

test('without a mark of it nothing is said of the heat’s end', () => {
  const inputs = plainInputs.filter(
    (input) => input.kind !== 'mark' || input.mark.type !== 'heat-off',
  );
  const study = plainStudy({ inputs }, plainEntries);
  expect(asked('school-plateau', study).filter((line) => line.startsWith('- '))).toEqual([
    '- Up to 82.7 °C the vapour here holds at least 80 % vol.',
  ]);
  const moments = asked('school-stages', study);
  expect(moments.filter((line) => line.startsWith('- '))).toEqual([]);
  expect(moments).toContain('  B: 54.2 ± 2 min');
  expect(asked('school-critique', study)).toEqual([]);
});

test('the curve to read the plateau off does not show where it lies, the solved one does', () => {
  const question = exercisesOf(plain, 'school').find(({ id }) => id === 'school-plateau');
  expect(question?.figure).toEqual(plateauFigure(plain, false));
  expect(question?.solvedFigure).toEqual(plateauFigure(plain, true));
  expect(question?.figure).not.toEqual(question?.solvedFigure);
});

describe('whether the heat came off in time', () => {
  /** The limit passed so slowly that no eye can say when, at 3600 s; heat off so long after. */
  const slowly = (offS: number): RunStudy => ({
    ...plain,
    rows: headRows((timeS) => 82.699 + ((timeS - 3600) / 60) * 0.07, 4200),
    inputs: [...plainInputs.slice(0, -2), mark(offS, { type: 'heat-off' })],
  });

  test('is not asked of a head that hovers above the limit for more than two minutes', () => {
    expect(asked('school-critique', slowly(4200))).toEqual([]);
    expect(asked('school-critique', slowly(3710))).toContain('  late by: 0 ± 2 min');
  });

  test('is answered by the head as printed beside the limit as printed', () => {
    // 82.7 °C at 3600 s as printed is not above 82.7 °C, though the reading after it is.
    expect(asked('school-critique', slowly(3610)).at(-2)).toBe(
      '> At 1:00:10 the head stood at 82.7 °C, not above 82.7 °C.',
    );
    expect(asked('school-critique', slowly(3700)).at(-2)).toBe(
      '> At 1:01:40 the head stood at 82.8 °C. It had been at 82.7 °C or below until 1:00:00.',
    );
  });
});
