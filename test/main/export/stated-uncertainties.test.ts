import { expect, test } from 'vitest';
import { type Mark, type MarkBody, studyRun } from '#shared-core';
import { measurementsTable } from '../../../main/export/pack/mark-tables.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import { pearRun } from '../../shared-core/report/support/pear-run.ts';

const { entries: _, ...run } = pearRun().run;
const after = (bodies: readonly MarkBody[]): readonly Mark[] =>
  bodies.map((mark, index) => ({ kind: 'mark', timeS: run.endS, markId: 50 + index, mark }));

const study = studyRun({
  ...run,
  lateMarks: after([
    {
      type: 'liquid-volume',
      liquid: 'cut-2',
      volumeMl: 23.2,
      temperatureC: 21,
      volumeUncertaintyMl: 0.04,
      temperatureUncertaintyK: 0.1,
    },
    {
      type: 'liquid-chromatogram',
      liquid: 'cut-2',
      alcoholByVolume: 90.1,
      strengthUncertaintyAbv: 0.25,
    },
    {
      type: 'liquid-refractometer',
      liquid: 'cut-3',
      scale: 'volume',
      percent: 78,
      uncertaintyPercent: 3,
    },
    { type: 'liquid-label', liquid: 'cut-1', alcoholByVolume: 92 },
  ]),
});

test('an uncertainty that was written down with a reading stands beside it in measurements.csv', () => {
  const rows = [...measurementsTable([study]).rows()]
    .filter(([, , of]) => typeof of === 'string' && of.startsWith('cut'))
    .map(([, , of, quantity, value, u, unit, by]) => [
      of,
      quantity,
      value,
      Number(Number(u).toFixed(3)),
      unit,
      by,
    ]);
  expect(rows).toEqual(
    expect.arrayContaining([
      ['cut 2', 'volume', 23.2, 0.04, 'mL', 'measuring cylinder'],
      ['cut 2', 'temperature', 21, 0.1, 'Cel', 'thermometer'],
      ['cut 2', 'strength', 90.1, 0.25, '%{vol}', 'gas-chromatograph'],
      ['cut 3', 'strength', 78, 3, '%{vol}', 'refractometer'],
      ['cut 1', 'strength', 92, 0.3, '%{vol}', 'label'],
    ]),
  );
});

test('it is the one that the report’s interval comes from', () => {
  const liquids = reportOf([study]).blocks.find(
    (block) => block.kind === 'table' && block.caption.includes('Liquids'),
  );
  const cut = liquids?.kind === 'table' ? liquids.rows[1] : undefined;
  // 95 %: 90.1 ± 1.96 × 0.25 % vol; 2 × 0.04 mL and next to nothing from the temperature.
  expect(cut?.[5]).toMatch(/^89\.61–90\.59/);
  expect(cut?.[3]).toMatch(/^\(23\.\d+\s±\s0\.08\d?\)/);
});
