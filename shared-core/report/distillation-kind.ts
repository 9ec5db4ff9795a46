import {
  ethanolFigure,
  overlayFigure,
  plateFigure,
  strengthByVolumeFigure,
  strengthFigure,
  temperatureByVolumeFigure,
  temperatureFigure,
} from '../figures/index.ts';
import type { RunStudy } from '../study/index.ts';
import { groupSheetsOf, keyOf, markingSheetOf, worksheetOf } from './distillation-sheets.ts';
import { fromFermentFigure } from './from-ferment-blocks.ts';
import { reportOf } from './report-of.ts';
import type { NamedDrawing, RunKind } from './run-kind.ts';

/** What is drawn and printed of a distillation. */
export const distillationKind: RunKind<RunStudy> = {
  figures: drawingsOf,
  overlay: overlayFigure,
  report: reportOf,
  worksheet: worksheetOf,
  markingSheet: markingSheetOf,
  key: keyOf,
  groupSheets: groupSheetsOf,
};

function drawingsOf(study: RunStudy): readonly NamedDrawing[] {
  const { plates, books, byVolume } = study;
  return [
    {
      name: 'temperature',
      drawing:
        byVolume?.basis === 'table'
          ? null
          : temperatureFigure(study, { stages: true, plateauBand: true }),
    },
    { name: 'strength', drawing: strengthFigure(study) },
    { name: 'ethanol', drawing: ethanolFigure(books) },
    { name: 'stages', drawing: plates === null ? null : plateFigure(plates, true) },
    {
      name: 'temperature-by-volume',
      drawing: temperatureByVolumeFigure(study, { expected: true }),
    },
    { name: 'strength-by-volume', drawing: strengthByVolumeFigure(study) },
    { name: 'sugar-to-distillate', drawing: fromFermentFigure(books.fromFerment) },
  ];
}
