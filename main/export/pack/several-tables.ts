import { originOf, type RunStudy, runKind } from '#shared-core';
import { otherChannels } from './channel-means.ts';
import { processedTable } from './run-tables.ts';
import type { Table, TableCell, TableField } from './table.ts';

const words = (name: string, description: string): TableField => ({
  name,
  type: 'string',
  unit: null,
  description,
});

const number = (name: string, unit: string, description: string, decimals = 4): TableField => ({
  name,
  type: 'number',
  unit,
  description,
  decimals,
});

const runFields: readonly TableField[] = [
  { name: 'run', type: 'integer', unit: null, description: 'Number of the run in this pack' },
  words('run_id', 'Which run'),
  words('kind', 'simple (no column), fractional, or not described; by the plates set for the rig'),
];

/** When vapour reached the head: what runs are laid over each other from. */
function arrivedS({ verdicts }: RunStudy): number | null {
  return verdicts.events.find(({ event }) => event === 'vapour-arrived')?.timeS ?? null;
}

/** The processed rows of all runs, one under the other: tidy, for filtering and grouping by run. */
export function allRunsTable(studies: readonly RunStudy[]): Table {
  const channels = otherChannels(studies);
  const tables = studies.map((study) => processedTable(study, '', channels));
  // By the clock only some runs have a time, and rows are compared by the time since vapour arrived.
  const fields = (tables[0]?.fields ?? []).filter(({ name }) => name !== 'time_local');
  return {
    name: 'all-runs',
    title: 'All runs, processed',
    fields: [
      ...runFields,
      number('since_vapour_s', 's', 'Time since vapour reached the head; empty if it never did', 3),
      ...fields,
    ],
    *rows() {
      for (const [index, study] of studies.entries()) {
        const table = tables[index];
        if (table === undefined) continue;
        const columns = fields.map(({ name }) =>
          table.fields.findIndex((own) => own.name === name),
        );
        const originS = arrivedS(study);
        for (const row of table.rows()) {
          const [timeS] = row;
          const since = originS === null || typeof timeS !== 'number' ? null : timeS - originS;
          const cells = columns.map((column): TableCell => row[column] ?? null);
          yield [index + 1, study.runId, runKind(study.settings), since, ...cells];
        }
      }
    },
  };
}

/** One row a run: what simple and fractional distillations are compared by. */
export function comparisonTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'comparison',
    title: 'Runs compared',
    fields: [
      ...runFields,
      words('name', 'As the person named it'),
      words('readings', 'recorded, imported from a file of another logger, or rehearsal'),
      number(
        'plates_set',
        '1',
        'Theoretical plates set for the column, the pot not counted; 0 is no column',
      ),
      number('charge_mL', 'mL', 'Volume charged'),
      number('charge_abv', '%{vol}', 'Strength charged'),
      number('air_pressure_kPa', 'kPa', 'Air pressure as set'),
      number('vapour_arrived_s', 's', 'When vapour reached the head'),
      number('plateau_degC', 'Cel', 'Mean head temperature on the plateau'),
      number('plateau_u_K', 'K', 'Its standard uncertainty (k = 1)'),
      number('plateau_std_degC', 'Cel', 'The plateau as it would read at 101.325 kPa'),
      number('plateau_above_azeotrope_K', 'K', 'Plateau above the local azeotrope'),
      number('plateau_lasted_s', 's', 'How long the plateau lasted'),
      number('product_abv', '%{vol}', 'Strength of all cuts measured, together'),
      number('product_mL', 'mL', 'Volume of all cuts measured, together, at 20 °C'),
      number('ethanol_recovery', '%', 'Ethanol in the cuts, of that charged'),
      number('ethanol_recovery_u', '%', 'Its standard uncertainty (k = 1)'),
      number('ethanol_closure', '%', 'Ethanol accounted for, of that charged'),
      number('ethanol_closure_u', '%', 'Its standard uncertainty (k = 1)'),
      number('mass_closure', '%', 'Mass accounted for, of that charged'),
      number('stages_stepped', '1', 'Apparent equilibrium stages, the pot counted'),
      number('simple_abv', '%{vol}', 'What a still without a column would have given (Rayleigh)'),
      words('main_fraction', 'yes or no'),
    ],
    *rows() {
      for (const [index, study] of studies.entries()) {
        const { settings, plateau, product, books, plates, simple } = study;
        const { ethanol = null, total = null } = books.balance ?? {};
        // A recovery that is a least one has no column of its own.
        const recovery = books.unmeasuredCuts.length > 0 ? null : ethanol?.recoveryPercent;
        const span = plateau?.statistics.span;
        yield [
          index + 1,
          study.runId,
          runKind(settings),
          study.name,
          originOf(study),
          settings.rig.plates,
          settings.charge.volumeMl,
          settings.charge.strengthAbv,
          settings.pressure.pressureKPa,
          arrivedS(study),
          plateau?.mean.value ?? null,
          plateau?.mean.standardUncertainty ?? null,
          plateau?.standard.value ?? null,
          plateau?.aboveAzeotropeK.value ?? null,
          span === undefined ? null : span.toS - span.fromS,
          product?.strengthAbv.value ?? null,
          product?.volumeMl.value ?? null,
          recovery?.value ?? null,
          recovery?.standardUncertainty ?? null,
          ethanol?.closurePercent?.value ?? null,
          ethanol?.closurePercent?.standardUncertainty ?? null,
          total?.closurePercent?.value ?? null,
          plates?.plates.stepped.value ?? null,
          simple?.strengthAbv ?? null,
          study.mainFraction,
        ];
      }
    },
  };
}
