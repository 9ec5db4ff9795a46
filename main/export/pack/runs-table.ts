import { originOf, type RunStudy, runKind } from '#shared-core';
import type { Table, TableField } from './table.ts';

const words = (name: string, description: string): TableField => ({
  name,
  type: 'string',
  unit: null,
  description,
});

/** One row a run: what the `run_id` of every other table leads to. */
export function runsTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'runs',
    title: 'Runs',
    primaryKey: ['run_id'],
    fields: [
      words('run_id', 'Which run; the same in every table'),
      words('name', 'As the person named it'),
      words('began_utc', 'When it began, ISO 8601, UTC; empty where nobody knows'),
      words('readings', 'recorded, imported from a file of another logger, or rehearsal'),
      words('kind', 'simple (no column), fractional, or not described'),
      words('main_fraction', 'yes or no'),
      { ...words('because', 'The verdict in a sentence'), isSentence: true },
      words('monitor_model', 'Version of what judged the run'),
      words('equilibrium_model', 'Version of the equilibrium data'),
    ],
    *rows() {
      for (const study of studies) {
        const { mainFraction, because } = study.verdicts.verdict;
        yield [
          study.runId,
          study.name,
          study.startedAtIso,
          originOf(study),
          runKind(study.settings),
          mainFraction ? 'yes' : 'no',
          because,
          study.modelVersion,
          study.equilibriumModel,
        ];
      }
    },
  };
}
