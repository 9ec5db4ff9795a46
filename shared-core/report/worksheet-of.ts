import { type Exercise, type ExerciseLevel, exercisesOf, partMarks } from '../exercises/index.ts';
import { temperatureByVolumeFigure, temperatureFigure } from '../figures/index.ts';
import type { RunStudy } from '../study/index.ts';
import { counted } from '../wording/index.ts';
import { cautionBlocks } from './caution-blocks.ts';
import type { Block, PrintedDocument } from './document.ts';
import { footerOf } from './report-of.ts';

export const levelWords: Readonly<Record<ExerciseLevel, string>> = {
  school: 'School level',
  undergraduate: 'Undergraduate level',
};

/**
 * A worksheet about a run: the curve without the tool's judgement, the questions, room to write; no answers.
 *
 * @param study from `studyRun`; level: school or undergraduate
 *
 * Source: this project's layout; no standard.
 * @example
 * const run = { runId: 'a', name: 'Pear', startedAtIso: '', rehearsal: true, damagedRecords: 0, settings: defaultRunSettings, appVersion: '0', modelVersion: '1', inputs: [], endS: 60 };
 * worksheetOf(studyRun(run), 'school').title // => "Worksheet: Pear"
 */
export function worksheetOf(study: RunStudy, level: ExerciseLevel): PrintedDocument {
  const exercises = exercisesOf(study, level);
  return {
    title: `Worksheet: ${study.name}`,
    subtitle: `${levelWords[level]} · ${marksOf(exercises)} · ${nameField}  Group ______`,
    footer: footerOf([study]),
    blocks: sheetBlocks(study, exercises),
  };
}

/** Who worked on a sheet, and when. */
export const nameField = 'Name ____________________  Date ____________';

/** What stands on a sheet below its title: cautions, the curve, the questions with room to write. */
export function sheetBlocks(study: RunStudy, exercises: readonly Exercise[]): readonly Block[] {
  return [
    ...cautionBlocks('worksheet'),
    ...curves(study, false),
    ...exercises.flatMap((exercise, index): readonly Block[] => [
      ...asked(exercise, index + 1),
      ...drawn(exercise.figure),
      { kind: 'answer-lines', count: exercise.answerLines },
    ]),
  ];
}

/**
 * The marking sheet to a worksheet: the same questions with answers, limits of acceptance and the way to them.
 *
 * @param study from `studyRun`; level: school or undergraduate
 *
 * Source: this project's layout; no standard.
 * @example
 * const run = { runId: 'a', name: 'Pear', startedAtIso: '', rehearsal: true, damagedRecords: 0, settings: defaultRunSettings, appVersion: '0', modelVersion: '1', inputs: [], endS: 60 };
 * markingSheetOf(studyRun(run), 'school').title // => "Marking sheet: Pear"
 */
export function markingSheetOf(study: RunStudy, level: ExerciseLevel): PrintedDocument {
  const exercises = exercisesOf(study, level);
  return {
    title: `Marking sheet: ${study.name}`,
    subtitle: `${levelWords[level]} · ${marksOf(exercises)} · for the teacher`,
    footer: footerOf([study]),
    blocks: [
      ...cautionBlocks('worksheet'),
      ...curves(study, true),
      ...exercises.flatMap((exercise, index): readonly Block[] => [
        ...asked(exercise, index + 1),
        { kind: 'caution', text: `Answer: ${exercise.answer.words}` },
        { kind: 'list', ordered: true, items: exercise.working },
        ...drawn(exercise.solvedFigure),
      ]),
    ],
  };
}

/** The run's curve, with the tool's judgement for the teacher only; a table by volume has none over time. */
function curves(study: RunStudy, isSolved: boolean): readonly Block[] {
  const byVolume = temperatureByVolumeFigure(study, { expected: isSolved });
  if (study.byVolume?.basis === 'table' && byVolume !== null) {
    const caption = isSolved
      ? 'The head against the volume of distillate, with what a simple still would show.'
      : 'Head temperature against the volume of distillate, as the table gives it.';
    return [{ kind: 'figure', drawing: byVolume, caption }];
  }
  return [
    {
      kind: 'figure',
      drawing: temperatureFigure(study, { stages: isSolved, plateauBand: isSolved }),
      caption: isSolved
        ? 'The run with stages and plateau band.'
        : `Head temperature of the run, as ${study.imported === true ? 'imported from another logger' : 'recorded'}.`,
    },
  ];
}

function asked(exercise: Exercise, number: number): readonly Block[] {
  const { title, marks, question, given } = exercise;
  const parts = partMarks(exercise);
  return [
    { kind: 'question', number, title, marks },
    { kind: 'paragraph', text: question },
    ...(given.length === 0 ? [] : [{ kind: 'list', ordered: false, items: given } as const]),
    ...(parts.length < 2
      ? []
      : [
          {
            kind: 'paragraph',
            text: `Marks: ${parts.map((part) => `${part.of} ${part.marks}`).join(', ')}.`,
          } as const,
        ]),
  ];
}

function drawn(drawing: Exercise['figure']): readonly Block[] {
  return drawing === null ? [] : [{ kind: 'figure', drawing, caption: '' }];
}

/** What a whole sheet is worth: `24 marks`. */
export function marksOf(exercises: readonly Exercise[]): string {
  return counted(
    exercises.reduce((sum, { marks }) => sum + marks, 0),
    'mark',
  );
}
