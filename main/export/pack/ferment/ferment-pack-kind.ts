import { type FermentStudy, fermentKind } from '#shared-core';
import type { Sheet } from '../../workbook/workbook.ts';
import { byRows, type PackKind } from '../pack-kind.ts';
import { type Table, tableSheet } from '../table.ts';
import { fermentNotebooks } from './ferment-notebooks.ts';
import {
  daysTable,
  fermentResultsTable,
  fermentsTable,
  judgedTable,
  logTable,
  minutesTable,
  stretchesTable,
} from './ferment-tables.ts';
import { weekTable } from './week-table.ts';

/** A ferment's week as its pack needs it. */
export const fermentPackKind: PackKind<FermentStudy> = {
  ...fermentKind,
  description: 'Logs and results of fermentations in a teaching laboratory.',
  dataSources: [
    'Readings of the ferments, by the instruments named in the columns',
    'Strength and density: OIML R 22 (1975), International alcoholometric tables',
    'Ethanol from sugar: Gay-Lussac’s equation, molar masses by IUPAC',
  ],
  readMe: {
    title: 'Ferments, exported by Still Head Monitor',
    remarksOn: ({ verdict }) => [verdict.state],
    files: (isSeveral) => [
      'data/raw            what was read by hand and counts, as the judge was given it',
      'data/processed      what the readings up to each moment say',
      'data/*.csv          runs (one row a ferment), readings, judged, minutes, warmth, days, results',
      ...(isSeveral
        ? [
            'worksheets/all-groups-…  the sheets of all ferments to print at once, one group a ferment',
          ]
        : []),
      'data-semicolon/     the same with semicolon and decimal comma',
      'datapackage.json    Frictionless Data Package: columns, units, sizes and hashes of the CSV files',
      'workbook.xlsx       the same tables for a spreadsheet, with charts',
      'report.pdf          report; figures/ holds its pictures as SVG and (up to 6 ferments) PNG',
      'report.docx         the same for a word processor, to go on writing in (up to 6 ferments)',
      'worksheets/         questions about the ferments, without answers',
      'marking/            the same with worked answers, and a key on one page: for the teacher',
      'notebooks/          to start from in Python (pandas, matplotlib) and R (readr, ggplot2)',
    ],
    remarks: [
      'A file in data/raw is judged again, to the same end, by npm run --silent analyse -- FILE.csv --kind ferment',
      'with --volume-ml, and with --sugar-g where data/runs.csv says how much went in.',
      'Texts of notes were left out. Names of ferments and what went in stand here as they were typed:',
      'look for names of people in them before you pass these files on.',
      'Units in datapackage.json are UCUM codes: Cel = °C, %{vol} = % vol at 20 °C, [pH] = pH.',
      'Intervals of the judgement hold nine times in ten; standard uncertainties are k = 1.',
    ],
    cautions: 'ferment',
  },
  ownTables: (study, stem) => [
    byRows(weekTable(study, `raw/${stem}`)),
    byRows(judgedTable([study], `processed/${stem}`)),
  ],
  tables: (studies) => [
    fermentsTable(studies),
    logTable(studies),
    judgedTable(studies),
    daysTable(studies),
    minutesTable(studies),
    stretchesTable(studies),
    fermentResultsTable(studies),
  ],
  sheets: sheetsOf,
  besides: () => [],
  notebooks: fermentNotebooks,
};

function sheetsOf(studies: readonly FermentStudy[]): readonly Sheet[] {
  const numbered = (name: string, index: number) =>
    studies.length === 1 ? name : `${name} ${index + 1}`;
  return [
    tableSheet(fermentsTable(studies), 'Ferments'),
    tableSheet(fermentResultsTable(studies), 'Results'),
    tableSheet(logTable(studies), 'Readings'),
    tableSheet(daysTable(studies), 'Days'),
    ...studies.flatMap((study, index) => [
      charted(judgedTable([study]), numbered('Judged', index), study.name, [
        ['Gravity', 'gravity'],
        ['Strength / % vol', 'strength_abv'],
      ]),
      charted(stretchesTable([study]), numbered('Warmth', index), study.name, [
        ['Ferment / °C', 'mean_degC'],
      ]),
    ]),
  ];
}

type ChartAxes =
  | readonly [readonly [string, string]]
  | readonly [readonly [string, string], readonly [string, string]];

function charted(table: Table, sheet: string, title: string, [left, right]: ChartAxes): Sheet {
  const column = (of: string) => table.fields.findIndex(({ name }) => name === of);
  const axis = ([words, of]: readonly [string, string]) => ({
    title: words,
    columns: [column(of)],
  });
  return tableSheet(table, sheet, {
    title,
    xTitle: 'Time / h',
    xColumn: column('time_h'),
    yAxes: right === undefined ? [axis(left)] : [axis(left), axis(right)],
  });
}
