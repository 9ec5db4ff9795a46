import { type Exercise, exerciseLevels, exercisesOf, partMarks } from '../exercises/index.ts';
import type { RunStudy } from '../study/index.ts';
import type { Block, PrintedDocument } from './document.ts';
import { footerOf } from './report-of.ts';
import { levelWords, marksOf } from './worksheet-of.ts';

/**
 * The key of a run's worksheets for a teacher's pocket: both levels on one page, each answer with its limits of acceptance and its marks part
 * by part, without the way to it.
 *
 * @param study from `studyRun`
 *
 * Source: this project's layout; no standard.
 * @example
 * const run = { runId: 'a', name: 'Pear', startedAtIso: '', rehearsal: true, damagedRecords: 0, settings: defaultRunSettings, appVersion: '0', modelVersion: '1', inputs: [], endS: 60 };
 * keyOf(studyRun(run)).title // => "Key: Pear"
 */
export function keyOf(study: RunStudy): PrintedDocument {
  return {
    title: `Key: ${study.name}`,
    subtitle: 'For the teacher: answers, what to accept, marks part by part',
    footer: footerOf([study]),
    blocks: exerciseLevels.map((level): Block => {
      const exercises = exercisesOf(study, level);
      return {
        kind: 'table',
        caption: `${levelWords[level]}: ${marksOf(exercises)}`,
        columns: [
          { title: 'Question', align: 'start', width: 4 },
          { title: 'Answer', align: 'start', width: 8 },
          { title: 'Marks', align: 'end', width: 1.6 },
        ],
        rows: exercises.map((exercise, index) => [
          `${index + 1}  ${exercise.title}`,
          exercise.answer.words,
          marksWords(exercise),
        ]),
      };
    }),
  };
}

/** `3`, or `2 + 1 = 3` in the order of the numbers asked for. */
export function marksWords(exercise: Exercise): string {
  const parts = partMarks(exercise);
  return parts.length < 2
    ? String(exercise.marks)
    : `${parts.map(({ marks }) => marks).join(' + ')} = ${exercise.marks}`;
}
