import { expect, test } from 'vitest';
import { exerciseLevels, studyRun } from '#shared-core';
import { printDocument } from '../../../main/export/print/print-document.ts';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import { partMarks } from '../../../shared-core/exercises/part-marks.ts';
import { groupSheetsOf, keyOf } from '../../../shared-core/report/distillation-sheets.ts';
import { carefulRun } from '../../shared-core/exercises/support/varied-runs.ts';
import { pearRun } from '../../shared-core/report/support/pear-run.ts';

const pear = studyRun(pearRun().run);
const simple = studyRun(
  carefulRun(
    {
      rig: 'simpleHead',
      volumeMl: 250,
      abv: 11,
      pressureKPa: 99.4,
      limitAbv: 40,
      easedW: 60,
      lateS: 60,
    },
    7,
  ),
);

/** Pages of a PDF, by the count that its page tree holds. */
async function pagesOf(document: Parameters<typeof printDocument>[0]): Promise<number> {
  const bytes = await printDocument(document, 0);
  const counts = Buffer.from(bytes)
    .toString('latin1')
    .matchAll(/\/Type \/Pages\s[^>]*?\/Count (\d+)/g);
  return Number([...counts][0]?.[1]);
}

test('the key of a run fits on one page, however much was measured and however long its name', async () => {
  const long = {
    ...pear,
    name: 'A pear-juice ferment of the second group, repeated in the afternoon',
  };
  expect(await Promise.all([pear, simple, long].map((study) => pagesOf(keyOf(study))))).toEqual([
    1, 1, 1,
  ]);
});

test('the key has each question of both levels with its answer, and marks that add up', () => {
  const tables = keyOf(pear).blocks.flatMap((block) => (block.kind === 'table' ? [block] : []));
  for (const [at, level] of exerciseLevels.entries()) {
    const exercises = exercisesOf(pear, level);
    expect(tables[at]?.rows.map(([question, answer]) => [question, answer])).toEqual(
      exercises.map(({ title, answer }, index) => [`${index + 1}  ${title}`, answer.words]),
    );
    for (const exercise of exercises) {
      const parts = partMarks(exercise);
      expect(parts.map(({ of }) => of)).toEqual(exercise.answer.quantities.map(({ of }) => of));
      if (parts.length > 0) {
        expect(parts.reduce((sum, { marks }) => sum + marks, 0)).toBe(exercise.marks);
        expect(Math.min(...parts.map(({ marks }) => marks))).toBeGreaterThan(0);
      }
    }
  }
});

test('each group of a class has the sheet of its own run, with a field for its names, on a page of its own', async () => {
  const { blocks } = groupSheetsOf([pear, simple], 'school');
  const starts = blocks.flatMap((block, index) =>
    block.kind === 'heading' && block.text.startsWith('Group') ? [index] : [],
  );
  expect(starts).toHaveLength(2);
  expect(blocks[(starts[1] ?? 0) - 1]?.kind).toBe('page-break');
  const titles = (from: number, to?: number) =>
    blocks.slice(from, to).flatMap((block) => (block.kind === 'question' ? [block.title] : []));
  const [first = 0, second = 0] = starts;
  expect([titles(first, second), titles(second)]).toEqual(
    [pear, simple].map((study) => exercisesOf(study, 'school').map(({ title }) => title)),
  );
  for (const index of starts) {
    expect(blocks[index + 1]).toMatchObject({ text: expect.stringMatching(/marks · Name _+/) });
  }
  expect(await pagesOf(groupSheetsOf([pear, simple], 'school'))).toBeGreaterThan(2);
});
