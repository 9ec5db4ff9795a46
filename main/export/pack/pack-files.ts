import {
  type CsvFormat,
  type Drawing,
  drawingToSvg,
  exerciseLevels,
  type PrintedDocument,
} from '#shared-core';
import { pngOnce, type RenderPng } from '../print/png-once.ts';
import { printDocument } from '../print/print-document.ts';
import { writeWord } from '../word/write-word.ts';
import { writeWorkbook } from '../workbook/write-workbook.ts';
import type { ZipEntry } from '../zip-stream.ts';
import { byRows, type CsvTable, type PackedRun, type PackKind } from './pack-kind.ts';
import { runStems } from './pack-stem.ts';
import type { TableField } from './table.ts';

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
export function packFiles<Study extends PackedRun>(
  kind: PackKind<Study>,
  studies: readonly Study[],
  createdMs: number,
  render: RenderPng = pngOnce(),
): readonly PackFile[] {
  const stems = runStems(studies);
  const each = <T>(of: (study: Study, stem: string) => readonly T[]) =>
    studies.flatMap((study, index) => of(study, stems[index] ?? ''));
  // A class's pictures of each run would take longer than all else together: as vectors they are there all the same.
  const withPictures = studies.length <= mostWithPictures;
  const isWanted = ({ path }: PackFile) => withPictures || !path.endsWith('.png');
  let made: PrintedDocument | null = null;
  const report = () => {
    made ??= kind.report(studies);
    return made;
  };
  const files: PackFile[] = [
    ...formats.flatMap((format) =>
      [...each(kind.ownTables), ...kind.tables(studies).map(byRows)].map((table) =>
        tableFile(table, format),
      ),
    ),
    ...each(kind.besides),
    ...kind.notebooks(),
    ...each((study, stem) =>
      kind
        .figures(study)
        .flatMap(({ name, drawing }, index) =>
          drawnFiles(`figures/${stem}-${index + 1}-${name}`, drawing, render).filter(isWanted),
        ),
    ),
    ...drawnFiles('figures/runs-over-one-another', kind.overlay(studies), render),
    printed('report.pdf', report, createdMs),
    ...(withPictures ? [writtenOn('report.docx', report, createdMs, render)] : []),
    ...each((study, stem) => [
      printed(`marking/${stem}-key.pdf`, () => kind.key(study), createdMs),
    ]),
    ...(studies.length > 1
      ? exerciseLevels.map((level) =>
          printed(
            `worksheets/all-groups-${level}.pdf`,
            () => kind.groupSheets(studies, level),
            createdMs,
          ),
        )
      : []),
    ...each((study, stem) =>
      exerciseLevels.flatMap((level) => [
        printed(`worksheets/${stem}-${level}.pdf`, () => kind.worksheet(study, level), createdMs),
        printed(`marking/${stem}-${level}.pdf`, () => kind.markingSheet(study, level), createdMs),
      ]),
    ),
    {
      path: 'workbook.xlsx',
      content: writeWorkbook({
        title: studies.map(({ name }) => name).join(', '),
        createdMs,
        sheets: kind.sheets(studies),
      }),
      stored: true,
    },
  ];
  return files.toSorted((a, b) => (a.path < b.path ? -1 : 1));
}

function tableFile(
  { name, title, fields, primaryKey, csv }: CsvTable,
  format: CsvFormat,
): PackFile {
  return {
    path: `${folders[format]}/${name}.csv`,
    content: csv(format),
    table: { title, format, fields, primaryKey },
  };
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
