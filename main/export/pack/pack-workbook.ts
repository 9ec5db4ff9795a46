import { offsetWords, type RunStudy } from '#shared-core';
import type { Sheet } from '../workbook/workbook.ts';
import { cutsTable, resultsTable } from './book-tables.ts';
import { classTable } from './class-table.ts';
import { callsTable, processedTable, readingsTable, stagesTable } from './run-tables.ts';
import { comparisonTable } from './several-tables.ts';
import { tableSheet, wallMs } from './table.ts';

/** The sheets of a pack's workbook: results first, then every run's curve with its chart, then the raw readings. */
export function distillationSheets(studies: readonly RunStudy[]): readonly Sheet[] {
  const single = studies.length === 1;
  const numbered = (name: string, index: number) => (single ? name : `${name} ${index + 1}`);
  return [
    runsSheet(studies),
    ...(single
      ? []
      : [
          tableSheet(comparisonTable(studies), 'Comparison'),
          tableSheet(classTable(studies), 'Class'),
        ]),
    tableSheet(resultsTable(studies), 'Results'),
    tableSheet(cutsTable(studies), 'Cuts'),
    tableSheet(stagesTable(studies), 'Stages'),
    tableSheet(callsTable(studies), 'Calls'),
    ...studies.map((study, index) => processedSheet(study, numbered('Processed', index))),
    ...studies.map((study, index) =>
      tableSheet(readingsTable(study, 'readings'), numbered('Readings', index)),
    ),
  ];
}

/** Which run is which, with its date as a date. */
function runsSheet(studies: readonly RunStudy[]): Sheet {
  return {
    name: 'Runs',
    columns: [
      { title: 'run', type: 'number', decimals: 0 },
      { title: 'run_id', type: 'text' },
      { title: 'name', type: 'text' },
      { title: 'began', type: 'date-time' },
      { title: 'zone', type: 'text' },
      { title: 'rehearsal', type: 'text' },
      { title: 'verdict', type: 'text' },
      { title: 'monitor_model', type: 'text' },
      { title: 'recorded_with_model', type: 'text' },
      { title: 'equilibrium_model', type: 'text' },
    ],
    rows: studies.map((study, index) => {
      const beganMs = wallMs(study.startedAtIso);
      return [
        index + 1,
        study.runId,
        study.name,
        ...(Number.isFinite(beganMs) ? [beganMs, offsetWords(study.startedAtIso)] : [null, null]),
        study.rehearsal ? 'yes' : 'no',
        study.verdicts.verdict.because,
        study.modelVersion,
        study.recordedModelVersion ?? null,
        study.equilibriumModel,
      ];
    }),
  };
}

function processedSheet(study: RunStudy, name: string): Sheet {
  const table = processedTable(study, 'processed');
  const column = (of: string) => table.fields.findIndex((field) => field.name === of);
  const fields = table.fields.map((field) =>
    field.type === 'datetime'
      ? { ...field, name: `${field.name} (${offsetWords(study.startedAtIso)})` }
      : field,
  );
  return tableSheet({ ...table, fields }, name, {
    title: study.name,
    xTitle: 'Time / s',
    xColumn: column('time_s'),
    yAxes: [
      { title: 'Head temperature / °C', columns: [column('head_degC')] },
      { title: 'Strength of the vapour / % vol', columns: [column('head_vapour_abv')] },
    ],
  });
}
