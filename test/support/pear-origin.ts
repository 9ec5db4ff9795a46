import type { RunSettings } from '#shared-core';

/** Where a charge of finished pear juice comes from, as Prepare keeps it in the settings of a run. */
export const pearOrigin: NonNullable<RunSettings['ferment']> = {
  fermentId: 'pear',
  name: 'Pear',
  wentIn: 'pear juice',
  beganAtIso: '2026-05-01T08:00:00.000Z',
  chargedAtIso: '2026-05-09T08:00:00.000Z',
  entries: 9,
  state: 'finished',
  strengthAbv: { low: 8.1, value: 8.5, high: 8.9 },
  sugarGPerL: { value: 150, standardUncertainty: 3 },
};
