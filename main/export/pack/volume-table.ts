import type { RunStudy } from '#shared-core';
import { amount, byColumns, type Column, type Table, words } from './table.ts';

type ByVolume = NonNullable<RunStudy['byVolume']>;

/** A volume read, and what theory expects there. */
type AtVolume = ByVolume['course'][number] & {
  readonly runId: string;
  readonly basis: ByVolume['basis'];
};

const columns: readonly Column<AtVolume>[] = [
  words('run_id', 'Which run', ({ runId }) => runId),
  words(
    'volume_from',
    'How the volume is known: table, receiver-volume, receiver-mass, booked or drip-rate',
    ({ basis }) => basis,
  ),
  amount('volume_mL', 'mL', 'All distillate so far', (at) => at.volumeMl, 3),
  amount('head_degC', 'Cel', 'Head temperature, calibrated', (at) => at.headC, 3),
  amount(
    'head_vapour_abv',
    '%{vol}',
    'Strength of the vapour at 20 °C, best value: as the monitor concluded it, of a table by its temperature alone',
    (at) => at.vapourAbv?.value,
    3,
  ),
  amount(
    'head_vapour_abv_low',
    '%{vol}',
    'Low end of its 95 % interval',
    (at) => at.vapourAbv?.low,
    3,
  ),
  amount(
    'head_vapour_abv_high',
    '%{vol}',
    'High end of its 95 % interval',
    (at) => at.vapourAbv?.high,
    3,
  ),
  amount(
    'collected_abv',
    '%{vol}',
    'Mean strength of all distillate so far',
    (at) => at.collectedAbv?.value,
    3,
  ),
  amount(
    'simple_degC',
    'Cel',
    'Head temperature of a simple still of this charge (Rayleigh)',
    (at) => at.simple?.headC,
    3,
  ),
  amount(
    'simple_abv',
    '%{vol}',
    'Strength in a simple still of this charge (Rayleigh)',
    (at) => at.simple?.strengthAbv,
    3,
  ),
  amount(
    'column_degC',
    'Cel',
    'Head temperature with the plates and the reflux entered',
    (at) => at.column?.headC,
    3,
  ),
  amount(
    'column_abv',
    '%{vol}',
    'Strength with the plates and the reflux entered',
    (at) => at.column?.strengthAbv,
    3,
  ),
];

/** All runs whose volumes are known, against the volume of distillate, with what theory expects at the same volume. */
export function volumeTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'by-volume',
    title: 'Against the volume of distillate',
    ...byColumns(columns, function* () {
      for (const { runId, byVolume } of studies) {
        if (byVolume === null) continue;
        const { basis, course } = byVolume;
        for (const at of course) yield { ...at, runId, basis };
      }
    }),
  };
}
