import {
  type CsvFormat,
  type Drawing,
  drawingToSvg,
  ethanolFigure,
  exerciseLevels,
  groupSheetsOf,
  keyOf,
  markingSheetOf,
  overlayFigure,
  type PrintedDocument,
  plateFigure,
  type RunStudy,
  reportOf,
  strengthByVolumeFigure,
  strengthFigure,
  temperatureByVolumeFigure,
  temperatureFigure,
  worksheetOf,
  writeReadingsCsv,
  writeSettingsFile,
} from '#shared-core';
import { pngOnce, type RenderPng } from '../print/png-once.ts';
import { printDocument } from '../print/print-document.ts';
import { writeWord } from '../word/write-word.ts';
import { writeWorkbook } from '../workbook/write-workbook.ts';
import type { ZipEntry } from '../zip-stream.ts';
import { cutsTable, resultsTable } from './book-tables.ts';
import { classTable } from './class-table.ts';
import { marksTable, measurementsTable } from './mark-tables.ts';
import { notebooks } from './notebooks.ts';
import { runStems } from './pack-stem.ts';
import { packWorkbook } from './pack-workbook.ts';
import { rawFields } from './raw-fields.ts';
import { callsTable, longReadingsTable, processedTable, stagesTable } from './run-tables.ts';
import { runsTable } from './runs-table.ts';
import { allRunsTable, comparisonTable } from './several-tables.ts';
import { type Table, type TableField, tableCsv } from './table.ts';
import { volumeTable } from './volume-table.ts';

/** A file of a pack; CSV files say what is in them. */
export interface PackFile extends ZipEntry {
  readonly table?: {
    readonly title: string;
    readonly format: CsvFormat;
    readonly fields: readonly TableField[];
    readonly primaryKey?: readonly string[] | undefined;
  };
}

const folders: Readonly<Record<CsvFormat, string>> = {
  csv: 'data',
  'csv-semicolon': 'data-semicolon',
};
const formats = ['csv', 'csv-semicolon'] as const satisfies readonly CsvFormat[];

/** Runs up to which each figure is also a picture of dots. */
const mostWithPictures = 6;

/** Every file of a pack but its description, in order of their names; contents are made when they are read. */
export function packFiles(
  studies: readonly RunStudy[],
  createdMs: number,
  render: RenderPng = pngOnce(),
): readonly PackFile[] {
  const stems = runStems(studies);
  const each = <T>(of: (study: RunStudy, stem: string) => readonly T[]) =>
    studies.flatMap((study, index) => of(study, stems[index] ?? ''));
  // A class's pictures of each run would take longer than all else together: as vectors they are there all the same.
  const withPictures = studies.length <= mostWithPictures;
  const isWanted = ({ path }: PackFile) => withPictures || !path.endsWith('.png');
  let made: PrintedDocument | null = null;
  const report = () => {
    made ??= reportOf(studies);
    return made;
  };
  const files: PackFile[] = [
    ...formats.flatMap((format) => [
      ...each((study, stem) => [rawFile(study, stem, format)]),
      ...each((study, stem) => [tableFile(processedTable(study, `processed/${stem}`), format)]),
      ...[
        runsTable(studies),
        longReadingsTable(studies),
        marksTable(studies),
        measurementsTable(studies),
        cutsTable(studies),
        resultsTable(studies),
        stagesTable(studies),
        callsTable(studies),
        ...(studies.some(({ byVolume }) => byVolume !== null) ? [volumeTable(studies)] : []),
        ...(studies.length > 1
          ? [allRunsTable(studies), comparisonTable(studies), classTable(studies)]
          : []),
      ].map((table) => tableFile(table, format)),
    ]),
    ...each((study, stem) => [settingsFile(study, stem)]),
    ...notebooks(),
    ...each((study, stem) => figureFiles(study, stem, render).filter(isWanted)),
    ...drawnFiles('figures/runs-over-one-another', overlayFigure(studies), render),
    printed('report.pdf', report, createdMs),
    ...(withPictures ? [writtenOn('report.docx', report, createdMs, render)] : []),
    ...each((study, stem) => [printed(`marking/${stem}-key.pdf`, () => keyOf(study), createdMs)]),
    ...(studies.length > 1
      ? exerciseLevels.map((level) =>
          printed(
            `worksheets/all-groups-${level}.pdf`,
            () => groupSheetsOf(studies, level),
            createdMs,
          ),
        )
      : []),
    ...each((study, stem) =>
      exerciseLevels.flatMap((level) => [
        printed(`worksheets/${stem}-${level}.pdf`, () => worksheetOf(study, level), createdMs),
        printed(`marking/${stem}-${level}.pdf`, () => markingSheetOf(study, level), createdMs),
      ]),
    ),
    {
      path: 'workbook.xlsx',
      content: writeWorkbook(packWorkbook(studies, createdMs)),
      stored: true,
    },
  ];
  return files.toSorted((a, b) => (a.path < b.path ? -1 : 1));
}

function rawFile(study: RunStudy, stem: string, format: CsvFormat): PackFile {
  const { inputs, lateMarks, name, underWay } = study;
  const endS = underWay === true ? null : study.endS;
  return {
    path: `${folders[format]}/raw/${stem}.csv`,
    content: writeReadingsCsv({ inputs, stages: null, endS, lateMarks }, format),
    table: { title: `${name}: as recorded`, format, fields: rawFields(inputs) },
  };
}

function settingsFile({ settings, startedAtIso }: RunStudy, stem: string): PackFile {
  return {
    path: `settings/${stem}.json`,
    content: [writeSettingsFile({ settings, startedAtIso })],
  };
}

function tableFile(table: Table, format: CsvFormat): PackFile {
  return {
    path: `${folders[format]}/${table.name}.csv`,
    content: tableCsv(table, format),
    table: { title: table.title, format, fields: table.fields, primaryKey: table.primaryKey },
  };
}

function figureFiles(study: RunStudy, stem: string, render: RenderPng): readonly PackFile[] {
  const { plates, books } = study;
  const drawn = (path: string, drawing: Drawing | null) => drawnFiles(path, drawing, render);
  return [
    ...drawn(
      `figures/${stem}-1-temperature`,
      study.byVolume?.basis === 'table'
        ? null
        : temperatureFigure(study, { stages: true, plateauBand: true }),
    ),
    ...drawn(`figures/${stem}-2-strength`, strengthFigure(study)),
    ...drawn(`figures/${stem}-3-ethanol`, ethanolFigure(books)),
    ...drawn(`figures/${stem}-4-stages`, plates === null ? null : plateFigure(plates, true)),
    ...drawn(
      `figures/${stem}-5-temperature-by-volume`,
      temperatureByVolumeFigure(study, { expected: true }),
    ),
    ...drawn(`figures/${stem}-6-strength-by-volume`, strengthByVolumeFigure(study)),
  ];
}

function drawnFiles(path: string, drawing: Drawing | null, render: RenderPng): readonly PackFile[] {
  if (drawing === null) return [];
  return [
    { path: `${path}.svg`, content: [drawingToSvg(drawing)] },
    { path: `${path}.png`, content: lazily(() => render(drawing)), stored: true },
  ];
}

function printed(path: string, document: () => PrintedDocument, createdMs: number): PackFile {
  return { path, content: lazily(() => printDocument(document(), createdMs)) };
}

function writtenOn(
  path: string,
  document: () => PrintedDocument,
  createdMs: number,
  render: RenderPng,
): PackFile {
  return { path, content: lazily(() => writeWord(document(), createdMs, render)), stored: true };
}

async function* lazily(make: () => Promise<Uint8Array>): AsyncGenerator<Uint8Array> {
  yield await make();
}
