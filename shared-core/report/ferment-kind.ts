import { fermentExercises } from '../exercises/index.ts';
import { fermentStrengthFigure } from '../figures/index.ts';
import type { FermentStudy } from '../study/index.ts';
import { massesFigure, massesOfFerment } from './ferment-steps.ts';
import {
  footerOfFerments,
  overlayOfFerments,
  reportOfFerments,
  weekFigure,
} from './report-of-ferment.ts';
import type { RunKind } from './run-kind.ts';
import { groupSheets, key, markingSheet, type SheetRun, worksheet } from './sheets.ts';

/** What is drawn and printed of a ferment's week. */
export const fermentKind: RunKind<FermentStudy> = {
  figures: (study) => [
    { name: 'week', drawing: weekFigure(study) },
    { name: 'strength', drawing: fermentStrengthFigure(study.course) },
    {
      name: 'sugar',
      drawing:
        study.balance === null ? null : massesFigure(massesOfFerment(study.balance), 'Mass / g'),
    },
  ],
  overlay: overlayOfFerments,
  report: reportOfFerments,
  worksheet: (study, level) => worksheet(sheetRun(study), level),
  markingSheet: (study, level) => markingSheet(sheetRun(study), level),
  key: (study) => key(sheetRun(study)),
  groupSheets: (studies, level) =>
    groupSheets(studies.map(sheetRun), level, footerOfFerments(studies)),
};

function sheetRun(study: FermentStudy): SheetRun {
  return {
    name: study.name,
    footer: footerOfFerments([study]),
    cautions: 'ferment',
    curves: (isSolved) => {
      const week = weekFigure(study, isSolved);
      const caption = 'The week as it was entered and heard.';
      return week === null ? [] : [{ kind: 'figure', drawing: week, caption }];
    },
    exercises: (level) => fermentExercises(study, level),
  };
}
