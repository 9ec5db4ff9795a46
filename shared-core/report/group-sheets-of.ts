import { type ExerciseLevel, exercisesOf } from '../exercises/index.ts';
import type { RunStudy } from '../study/index.ts';
import type { Block, PrintedDocument } from './document.ts';
import { footerOf } from './report-of.ts';
import { levelWords, marksOf, nameField, sheetBlocks } from './worksheet-of.ts';

/**
 * The worksheets of a class in one document to print at one press: each group has the sheet of its own run, beginning on a page of its own.
 *
 * @param studies from `studyRun`, one a group; level: school or undergraduate
 *
 * Source: this project's layout; no standard.
 * @example
 * const run = { runId: 'a', name: 'Pear', startedAtIso: '', rehearsal: true, damagedRecords: 0, settings: defaultRunSettings, appVersion: '0', modelVersion: '1', inputs: [], endS: 60 };
 * groupSheetsOf([studyRun(run), studyRun(run)], 'school').title // => "Worksheets of 2 groups"
 */
export function groupSheetsOf(studies: readonly RunStudy[], level: ExerciseLevel): PrintedDocument {
  return {
    title: `Worksheets of ${studies.length} groups`,
    subtitle: `${levelWords[level]} · each group has the numbers of its own run`,
    footer: footerOf(studies),
    blocks: studies.flatMap((study, index): readonly Block[] => {
      const exercises = exercisesOf(study, level);
      return [
        ...(index === 0 ? [] : [{ kind: 'page-break' } as const]),
        { kind: 'heading', level: 1, text: `Group ${index + 1}: ${study.name}` },
        { kind: 'paragraph', text: `${marksOf(exercises)} · ${nameField}` },
        ...sheetBlocks(study, exercises),
      ];
    }),
  };
}
