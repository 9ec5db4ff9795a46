import { describe, expect, test } from 'vitest';
import { azeotrope, exerciseLevels, type PrintedDocument, studyRun } from '#shared-core';
import { heatOffAt, shownLimitC } from '../../../shared-core/exercises/curve-facts.ts';
import { judgeHeatOff } from '../../../shared-core/exercises/curve-questions.ts';
import type { Exercise } from '../../../shared-core/exercises/exercise.ts';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import { markingSheetOf, worksheetOf } from '../../../shared-core/report/distillation-sheets.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import { pearRun } from '../report/support/pear-run.ts';

const { run } = pearRun();
const study = studyRun(run);
const exercises = exerciseLevels.flatMap((level) => exercisesOf(study, level));
const byId = (id: string): Exercise => {
  const found = exercises.find((exercise) => exercise.id === id);
  if (found === undefined) throw new Error(`There is no exercise ${id}.`);
  return found;
};

function wordsOf({ title, subtitle, footer, blocks }: PrintedDocument): string {
  return [title, subtitle, footer, JSON.stringify(blocks)].join('\n');
}

describe('exercises of the pear ferment', () => {
  test('cover reading, correcting, balancing and judging at both levels', () => {
    expect(exercises.map(({ id }) => id)).toEqual([
      'school-plateau',
      'school-stages',
      'school-pressure',
      'school-recovery',
      'school-critique',
      'school-azeotrope',
      'undergraduate-pressure',
      'undergraduate-sensitivity',
      'undergraduate-balance',
      'undergraduate-plates',
      'undergraduate-rayleigh',
      'undergraduate-yield',
    ]);
  });

  test('the school rule for pressure agrees with the model within its tolerance', () => {
    const [found] = byId('school-pressure').answer.quantities;
    expect(Math.abs((found?.value ?? 0) - azeotrope(99.4).temperatureC)).toBeLessThan(
      found?.tolerance ?? 0,
    );
  });

  test('never calls a head that had just passed the limit as the heat came off below it', () => {
    const limitC = shownLimitC(study) as number;
    const offS = heatOffAt(study) as number;
    const withHeadAtEnd = (headC: number) => ({
      ...study,
      rows: study.rows.map((row) =>
        row.timeS > offS
          ? { ...row, headC: Math.min(row.headC, limitC - 1) }
          : { ...row, headC: row.timeS > offS - 10 ? headC : Math.min(row.headC, limitC - 0.1) },
      ),
    });
    const [limit, passed] = [`${limitC.toFixed(1)} °C`, `${(limitC + 0.4).toFixed(1)} °C`];
    expect(judgeHeatOff(withHeadAtEnd(limitC - 0.3))?.working[0]).toContain(`, not above ${limit}`);
    expect(judgeHeatOff(withHeadAtEnd(limitC + 0.4))?.working[0]).toMatch(
      `the head stood at ${passed}. It had been at ${limit} or below until `,
    );
  });

  test('Clausius and Clapeyron bring the plateau to where the model does', () => {
    const [found] = byId('undergraduate-pressure').answer.quantities;
    expect(Math.abs((found?.value ?? 0) - (study.plateau?.standard.value ?? 0))).toBeLessThan(0.03);
  });

  test('every number of an answer is finite and in words without NaN', () => {
    for (const { answer, working, question, given, marks } of exercises) {
      expect([answer.words, question, ...working, ...given].join(' ')).not.toMatch(
        /NaN|Infinity|undefined|null/,
      );
      expect(marks).toBeGreaterThan(0);
    }
  });
});

describe('worksheet and marking sheet', () => {
  test.each(exerciseLevels)(
    'the %s worksheet holds every question and no answer; the marking sheet holds both',
    (level) => {
      const worksheet = wordsOf(worksheetOf(study, level));
      const marking = wordsOf(markingSheetOf(study, level));
      for (const { question, answer, working } of exercisesOf(study, level)) {
        const json = (text: string) => JSON.stringify(text).slice(1, -1);
        expect(worksheet).toContain(json(question));
        expect(marking).toContain(json(question));
        expect(marking).toContain(json(answer.words));
        expect(worksheet).not.toContain(json(answer.words));
        for (const step of working) {
          expect(marking).toContain(json(step));
          expect(worksheet).not.toContain(json(step));
        }
      }
    },
  );
});

describe('the report', () => {
  const words = wordsOf(reportOf([study]));

  test('carries model versions, cautions and that the run was a rehearsal', () => {
    expect(words).toMatch(/monitor model 1 · equilibrium model ethanol-water/);
    expect(words).toMatch(/no safety device/);
    expect(words).toMatch(/A rehearsal with the simulated still/);
  });

  test('gives every measured value with its uncertainty, and names what was assumed', () => {
    expect(words).toMatch(
      /Plateau from 0:1\d:\d\d to 0:\d\d:\d\d: \(78\.\d\d\u00a0±\u00a00\.\d\d\)\u00a0°C/,
    );
    expect(words).toMatch(/Liquid left in the column and the condenser was not measured/);
    expect(words).not.toMatch(/NaN|Infinity|undefined/);
  });

  test('sets several runs side by side', () => {
    const both = wordsOf(reportOf([study, study]));
    expect(both).toMatch(/The runs side by side/);
    expect(both).toMatch(/"Run 2"/);
  });

  test('of an empty run says what is missing, and nothing else', () => {
    const empty = wordsOf(reportOf([studyRun({ ...run, inputs: [], entries: undefined })]));
    expect(empty).toMatch(
      /No plateau to report: the head never stayed within 1 K for 2 min at 80 % vol or more/,
    );
    expect(empty).toMatch(/No cut was measured/);
  });
});
