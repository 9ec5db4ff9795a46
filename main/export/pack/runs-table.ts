import { originOf, type RunStudy, runKind } from '#shared-core';
import { byColumns, type Column, type Table, words } from './table.ts';

const columns: readonly Column<RunStudy>[] = [
  words('run_id', 'Which run; the same in every table', ({ runId }) => runId),
  words('name', 'As the person named it', ({ name }) => name),
  words(
    'began',
    'When it began, ISO 8601 with the offset of the computer’s zone; empty where nobody knows',
    ({ startedAtIso }) => startedAtIso,
  ),
  words('readings', 'recorded, imported from a file of another logger, or rehearsal', originOf),
  words('kind', 'simple (no column), fractional, or not described', ({ settings }) =>
    runKind(settings),
  ),
  words('main_fraction', 'yes or no', ({ mainFraction }) => mainFraction),
  {
    ...words('because', 'The verdict in a sentence', ({ verdicts }) => verdicts.verdict.because),
    isSentence: true,
  },
  words('monitor_model', 'Version of what judged the run', ({ modelVersion }) => modelVersion),
  words(
    'recorded_with_model',
    'Version of what judged it while it was recorded; another one may have called otherwise',
    ({ recordedModelVersion }) => recordedModelVersion ?? null,
  ),
  words('equilibrium_model', 'Version of the equilibrium data', (study) => study.equilibriumModel),
];

/** One row a run: what the `run_id` of every other table leads to. */
export function runsTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'runs',
    title: 'Runs',
    primaryKey: ['run_id'],
    ...byColumns(columns, () => studies),
  };
}
