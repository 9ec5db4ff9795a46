import { cautionsAt, cautionWords, type RunStudy } from '#shared-core';
import type { TableField } from './table.ts';

/** A file with the columns of its table, if it holds one. */
export interface DescribedFile {
  readonly path: string;
  readonly table?: { readonly fields: readonly TableField[] };
}

function columnLines({ path, table }: DescribedFile): readonly string[] {
  if (table === undefined || !path.startsWith('data/')) return [];
  return [
    '',
    path,
    ...table.fields.map(
      ({ name, unit, description }) =>
        `  ${name}${unit === null ? '' : ` [${unit}]`}: ${description}`,
    ),
  ];
}

/** What is what, for whoever opens the pack years later. */
export function readMe(studies: readonly RunStudy[], files: readonly DescribedFile[]): string {
  const runs = studies.map(
    ({ runId, name, rehearsal, imported, underWay }) =>
      `  ${runId}  ${name}${rehearsal ? '  (rehearsal with the simulated still)' : ''}${imported === true ? '  (imported from another logger)' : ''}${underWay === true ? '  (under way when this was made: not the whole run)' : ''}`,
  );
  return [
    'Distillation runs, exported by Still Head Monitor',
    '',
    ...runs,
    '',
    'data/raw            readings and marks as recorded: comma, decimal point (RFC 4180)',
    'data/processed      calibrated means with stage, pressure and vapour strength',
    'data/*.csv          runs, readings, marks, measurements, cuts, results, stages, calls: all runs, one row each',
    ...(studies.length > 1
      ? [
          'data/all-runs.csv   the processed rows of all runs, one under the other',
          'data/comparison.csv one row a run, to compare simple and fractional',
          'data/class.csv      the results of all runs together: mean, spread, least, median, greatest',
          'worksheets/all-groups-…  the sheets of all runs to print at once, one group a run',
        ]
      : []),
    'data-semicolon/     the same with semicolon and decimal comma',
    'datapackage.json    Frictionless Data Package: columns, units, sizes and hashes of the CSV files',
    'workbook.xlsx       the same tables for a spreadsheet, with charts',
    'report.pdf          report; figures/ holds its pictures as SVG and (up to 6 runs) PNG',
    'report.docx         the same for a word processor, to go on writing in (up to 6 runs)',
    'worksheets/         questions about the runs, without answers',
    'marking/            the same with worked answers, and a key on one page: for the teacher',
    'notebooks/          to start from in Python (pandas, matplotlib) and R (readr, ggplot2)',
    'settings/           charge, pressure, rig, probe and limits of each run',
    '',
    'A file in data/raw, imported again together with its file in settings/, gives the same stages and calls.',
    'Texts of notes were left out. Names of runs and rigs stand here as they were typed:',
    'look for names of people in them before you pass these files on.',
    'Units in datapackage.json are UCUM codes: Cel = °C, %{vol} = % vol at 20 °C.',
    ...cautionsAt('pack').map(cautionWords),
    '',
    'Columns of the tables in data/ (data-semicolon/ has the same)',
    ...files.flatMap(columnLines),
    '',
    ...files.map(({ path }) => path),
    '',
  ].join('\r\n');
}
