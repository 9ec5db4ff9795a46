import { describe, expect, test } from 'vitest';
import { exerciseLevels, studyRun } from '#shared-core';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import { worksheetOf } from '../../../shared-core/report/distillation-sheets.ts';
import { calculationsIn } from './support/printed-arithmetic.ts';
import { readSheet } from './support/printed-sheet.ts';
import { solveQuestion } from './support/solve-question.ts';
import { variedRunsOf, variedStills } from './support/varied-runs.ts';

describe('every worksheet', () => {
  const asked = new Map<string, number>();

  const calculated = new Set<string>();
  let gone = 0;

  test.each(variedStills)(
    'of still %i, %s, is answered from the sheet alone as its key says, whose printed digits give its printed results',
    (still) => {
      const wrong: string[] = [];
      for (const [name, run] of variedRunsOf(still)) {
        gone += 1;
        const study = studyRun(run);
        for (const level of exerciseLevels) {
          const sheet = readSheet(worksheetOf(study, level));
          const enlarged =
            sheet.questions.find(({ title }) => title === 'Read the plateau')?.figure ?? null;
          const keys = exercisesOf(study, level);
          expect(sheet.questions.map(({ title }) => title)).toEqual(keys.map(({ title }) => title));
          for (const [index, { id, answer, working }] of keys.entries()) {
            for (const { words, computed, printed, rounding } of working.flatMap(calculationsIn)) {
              calculated.add(id);
              if (!(Math.abs(computed - printed) <= rounding + 1e-9)) {
                wrong.push(`${name}: ${id}: ${words}, but it is ${computed.toFixed(4)}`);
              }
            }
            asked.set(id, (asked.get(id) ?? 0) + 1);
            const question = sheet.questions[index]!;
            const found = solveQuestion(question, sheet.curve, enlarged);
            const { quantities, words } = answer;
            const isRight =
              found.length === quantities.length &&
              quantities.every(
                ({ value, tolerance }, at) =>
                  Math.abs((found[at] ?? Number.NaN) - value) <= tolerance,
              );
            if (!isRight) {
              wrong.push(
                `${name}: ${id}: found ${found.map((value) => value.toFixed(2))}; key: ${words}`,
              );
            }
          }
        }
        if (!study.verdicts.verdict.mainFraction && study.plateau !== null) {
          wrong.push(`${name}: a plateau beside “${study.verdicts.verdict.because}”`);
        }
      }
      expect(wrong).toEqual([]);
    },
  );

  test('asks each question of some of them, and of none what it cannot answer', () => {
    expect(gone).toBe(40);
    for (const [id, count] of asked) {
      expect(`${id} ${count > 2}`).toBe(`${id} true`);
      const isAlwaysAsked = id === 'school-azeotrope' || id === 'school-stages';
      if (!isAlwaysAsked) expect(`${id} ${count < 40}`).toBe(`${id} true`);
    }
    expect(asked.size).toBe(13);
    expect([...calculated].toSorted()).toEqual([
      'school-pressure',
      'school-recovery',
      'undergraduate-balance',
      'undergraduate-plates',
      'undergraduate-pressure',
      'undergraduate-sensitivity',
      'undergraduate-yield',
    ]);
  });
});
