import { distillationKind, type RunStudy, writeReadingsCsv, writeSettingsFile } from '#shared-core';
import { cutsTable, resultsTable } from './book-tables.ts';
import { classTable } from './class-table.ts';
import { marksTable, measurementsTable } from './mark-tables.ts';
import { notebooks } from './notebooks.ts';
import { byRows, type CsvTable, type PackKind } from './pack-kind.ts';
import { distillationSheets } from './pack-workbook.ts';
import { rawFields } from './raw-fields.ts';
import { callsTable, longReadingsTable, processedTable, stagesTable } from './run-tables.ts';
import { runsTable } from './runs-table.ts';
import { allRunsTable, comparisonTable } from './several-tables.ts';
import { volumeTable } from './volume-table.ts';

/** A distillation as its pack needs it. */
export const distillationPackKind: PackKind<RunStudy> = {
  ...distillationKind,
  description: 'Readings and results of fractional distillations in a teaching laboratory.',
  dataSources: [
    'Readings of the runs, by the instruments named in measurements and settings',
    'Strength, density and temperature: OIML R 22 (1975), International alcoholometric tables',
    'Equilibrium of ethanol and water: NRTL fitted to published data, named with the model version in data/runs.csv',
  ],
  readMe: {
    title: 'Distillation runs, exported by Still Head Monitor',
    remarksOn: ({ rehearsal, imported, underWay, unjudged }) => [
      ...(rehearsal ? ['rehearsal with the simulated still'] : []),
      ...(imported === true ? ['imported from another logger'] : []),
      ...(unjudged === null ? [] : [unjudged]),
      ...(underWay === true ? ['under way when this was made: not the whole run'] : []),
    ],
    files: (isSeveral) => [
      'data/raw            readings and marks as recorded: comma, decimal point (RFC 4180)',
      'data/processed      calibrated means with stage, pressure and vapour strength',
      'data/*.csv          runs, readings, marks, measurements, cuts, results, stages, calls: all runs, one row each',
      ...(isSeveral
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
    ],
    remarks: [
      'A file in data/raw, imported again together with its file in settings/, gives the same stages and calls.',
      'Texts of notes were left out. Names of runs and rigs stand here as they were typed:',
      'look for names of people in them before you pass these files on.',
      'Units in datapackage.json are UCUM codes: Cel = °C, %{vol} = % vol at 20 °C.',
    ],
    cautions: 'pack',
  },
  ownTables: (study, stem) => [
    rawTable(study, stem),
    byRows(processedTable(study, `processed/${stem}`)),
  ],
  tables: (studies) => [
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
  ],
  sheets: distillationSheets,
  besides: ({ settings, startedAtIso }, stem) => [
    { path: `settings/${stem}.json`, content: [writeSettingsFile({ settings, startedAtIso })] },
  ],
  notebooks,
};

function rawTable(study: RunStudy, stem: string): CsvTable {
  const { inputs, lateMarks, name, underWay } = study;
  const endS = underWay === true ? null : study.endS;
  return {
    name: `raw/${stem}`,
    title: `${name}: as recorded`,
    fields: rawFields(inputs),
    csv: (format) => writeReadingsCsv({ inputs, stages: null, endS, lateMarks }, format),
  };
}
