import type { ExpectedPoint, RunStudy } from '#shared-core';
import type { Table, TableField } from './table.ts';

const amount = (name: string, unit: string, description: string): TableField => ({
  name,
  type: 'number',
  unit,
  description,
  decimals: 3,
});

/** All runs whose volumes are known, against the volume of distillate, with what theory expects at the same volume. */
export function volumeTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'by-volume',
    title: 'Against the volume of distillate',
    fields: [
      { name: 'run_id', type: 'string', unit: null, description: 'Which run' },
      {
        name: 'volume_from',
        type: 'string',
        unit: null,
        description:
          'How the volume is known: table, receiver-volume, receiver-mass, booked or drip-rate',
      },
      amount('volume_mL', 'mL', 'All distillate so far'),
      amount('head_degC', 'Cel', 'Head temperature, calibrated'),
      amount('head_vapour_abv', '%{vol}', 'Strength of the vapour at 20 °C, best value'),
      amount('head_vapour_abv_low', '%{vol}', 'Low end of its 95 % interval'),
      amount('head_vapour_abv_high', '%{vol}', 'High end of its 95 % interval'),
      amount('collected_abv', '%{vol}', 'Mean strength of all distillate so far'),
      amount('simple_degC', 'Cel', 'Head temperature of a simple still of this charge (Rayleigh)'),
      amount('simple_abv', '%{vol}', 'Strength in a simple still of this charge (Rayleigh)'),
      amount('column_degC', 'Cel', 'Head temperature with the plates and the reflux entered'),
      amount('column_abv', '%{vol}', 'Strength with the plates and the reflux entered'),
    ],
    *rows() {
      for (const { runId, byVolume } of studies) {
        if (byVolume === null) continue;
        const { basis, course, rayleigh, rectified } = byVolume;
        for (const { volumeMl, headC, vapourAbv, collectedAbv } of course) {
          const simple = expectedAt(rayleigh, volumeMl);
          const column = expectedAt(rectified, volumeMl);
          yield [
            runId,
            basis,
            volumeMl,
            headC,
            vapourAbv?.value ?? null,
            vapourAbv?.low ?? null,
            vapourAbv?.high ?? null,
            collectedAbv?.value ?? null,
            simple?.headC ?? null,
            simple?.strengthAbv ?? null,
            column?.headC ?? null,
            column?.strengthAbv ?? null,
          ];
        }
      }
    },
  };
}

/** Between two steps of the expected course on a straight line; null beyond its end. */
function expectedAt(
  course: readonly ExpectedPoint[] | null,
  volumeMl: number,
): Omit<ExpectedPoint, 'volumeMl'> | null {
  const right = course?.findIndex((point) => point.volumeMl >= volumeMl - 1e-9) ?? -1;
  const [after, before] = [course?.[right], course?.[right - 1]];
  if (after === undefined) return null;
  if (before === undefined) return after;
  const share = (volumeMl - before.volumeMl) / (after.volumeMl - before.volumeMl);
  const between = (from: number, to: number) => from + share * (to - from);
  return {
    headC: between(before.headC, after.headC),
    strengthAbv: between(before.strengthAbv, after.strengthAbv),
  };
}
