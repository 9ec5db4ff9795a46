import { type ExerciseLevel, exercisesOf } from '../exercises/index.ts';
import { temperatureByVolumeFigure, temperatureFigure } from '../figures/index.ts';
import type { RunStudy } from '../study/index.ts';
import type { Block, PrintedDocument } from './document.ts';
import { footerOf } from './report-of.ts';
import { groupSheets, key, markingSheet, type SheetRun, worksheet } from './sheets.ts';

/** A worksheet about a distillation. */
export function worksheetOf(study: RunStudy, level: ExerciseLevel): PrintedDocument {
  return worksheet(sheetRun(study), level);
}

/** The marking sheet to a distillation's worksheet. */
export function markingSheetOf(study: RunStudy, level: ExerciseLevel): PrintedDocument {
  return markingSheet(sheetRun(study), level);
}

/** The key of a distillation's worksheets. */
export function keyOf(study: RunStudy): PrintedDocument {
  return key(sheetRun(study));
}

/** The worksheets of a class, one distillation a group. */
export function groupSheetsOf(studies: readonly RunStudy[], level: ExerciseLevel): PrintedDocument {
  return groupSheets(studies.map(sheetRun), level, footerOf(studies));
}

function sheetRun(study: RunStudy): SheetRun {
  return {
    name: study.name,
    footer: footerOf([study]),
    cautions: 'worksheet',
    curves: (isSolved) => curves(study, isSolved),
    exercises: (level) => exercisesOf(study, level),
  };
}

/** A table by volume has no curve over time. */
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
