import type { CautionPlace } from '../cautions/index.ts';
import {
  type Exercise,
  type ExerciseLevel,
  exerciseLevels,
  partMarks,
} from '../exercises/index.ts';
import { counted } from '../wording/index.ts';
import { cautionBlocks } from './caution-blocks.ts';
import type { Block, PrintedDocument } from './document.ts';

/** What a run's sheets are made of, whatever kind of run it is. */
export interface SheetRun {
  readonly name: string;
  readonly footer: string;
  readonly cautions: CautionPlace;
  /** The run's curve, with the tool's judgement for the teacher only. */
  readonly curves: (isSolved: boolean) => readonly Block[];
  readonly exercises: (level: ExerciseLevel) => readonly Exercise[];
}

const levelWords: Readonly<Record<ExerciseLevel, string>> = {
  school: 'School level',
  undergraduate: 'Undergraduate level',
};

/** Who worked on a sheet, and when. */
const nameField = 'Name ____________________  Date ____________';

/** The curve without the tool's judgement, the questions, room to write; no answers. */
export function worksheet(run: SheetRun, level: ExerciseLevel): PrintedDocument {
  const exercises = run.exercises(level);
  return {
    title: `Worksheet: ${run.name}`,
    subtitle: `${levelWords[level]} · ${marksOf(exercises)} · ${nameField}  Group ______`,
    footer: run.footer,
    blocks: sheetBlocks(run, exercises),
  };
}

/** What stands on a sheet below its title: cautions, the curve, the questions with room to write. */
function sheetBlocks(run: SheetRun, exercises: readonly Exercise[]): readonly Block[] {
  return [
    ...cautionBlocks(run.cautions),
    ...run.curves(false),
    ...nothingAsked(exercises),
    ...exercises.flatMap((exercise, index): readonly Block[] => [
      ...asked(exercise, index + 1),
      ...drawn(exercise.figure),
      { kind: 'answer-lines', count: exercise.answerLines },
    ]),
  ];
}

/** A sheet without a question says so, instead of looking as if one had been lost. */
function nothingAsked(exercises: readonly Exercise[]): readonly Block[] {
  return exercises.length > 0
    ? []
    : [
        {
          kind: 'paragraph',
          text: 'There is no question at this level: too little of this run was measured to ask for.',
        },
      ];
}

/** The same questions with answers, limits of acceptance and the way to them. */
export function markingSheet(run: SheetRun, level: ExerciseLevel): PrintedDocument {
  const exercises = run.exercises(level);
  return {
    title: `Marking sheet: ${run.name}`,
    subtitle: `${levelWords[level]} · ${marksOf(exercises)} · for the teacher`,
    footer: run.footer,
    blocks: [
      ...cautionBlocks(run.cautions),
      ...run.curves(true),
      ...nothingAsked(exercises),
      ...exercises.flatMap((exercise, index): readonly Block[] => [
        ...asked(exercise, index + 1),
        { kind: 'caution', text: `Answer: ${exercise.answer.words}` },
        { kind: 'list', ordered: true, items: exercise.working },
        ...drawn(exercise.solvedFigure),
      ]),
    ],
  };
}

/** The key for a teacher's pocket: both levels on one page. */
export function key(run: SheetRun): PrintedDocument {
  return {
    title: `Key: ${run.name}`,
    subtitle: 'For the teacher: answers, what to accept, marks part by part',
    footer: run.footer,
    blocks: exerciseLevels.flatMap((level): readonly Block[] => {
      const exercises = run.exercises(level);
      if (exercises.length === 0) return [];
      return [
        {
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
        },
      ];
    }),
  };
}

/** The worksheets of a class in one document, each group's beginning on a page of its own. */
export function groupSheets(
  runs: readonly SheetRun[],
  level: ExerciseLevel,
  footer: string,
): PrintedDocument {
  return {
    title: `Worksheets of ${runs.length} groups`,
    subtitle: `${levelWords[level]} · each group has the numbers of its own run`,
    footer,
    blocks: runs.flatMap((run, index): readonly Block[] => {
      const exercises = run.exercises(level);
      return [
        ...(index === 0 ? [] : [{ kind: 'page-break' } as const]),
        { kind: 'heading', level: 1, text: `Group ${index + 1}: ${run.name}` },
        { kind: 'paragraph', text: `${marksOf(exercises)} · ${nameField}` },
        ...sheetBlocks(run, exercises),
      ];
    }),
  };
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
function marksOf(exercises: readonly Exercise[]): string {
  return counted(
    exercises.reduce((sum, { marks }) => sum + marks, 0),
    'mark',
  );
}

/** `3`, or `2 + 1 = 3` in the order of the numbers asked for. */
function marksWords(exercise: Exercise): string {
  const parts = partMarks(exercise);
  return parts.length < 2
    ? String(exercise.marks)
    : `${parts.map(({ marks }) => marks).join(' + ')} = ${exercise.marks}`;
}
