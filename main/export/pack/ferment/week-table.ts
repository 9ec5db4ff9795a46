import type { FermentStudy } from '#shared-core';
import { amount, byColumns, type Column, type Table, words } from '../table.ts';

type WeekRow = FermentStudy['moments'][number];

const columns: readonly Column<WeekRow>[] = [
  amount('time_h', 'h', 'Since the ferment was begun', ({ timeH }) => timeH, 4),
  amount('gravity', '1', 'Gravity 20/20, brought to 20 °C', (row) => row.gravityAt20C, 5),
  amount('mass_g', 'g', 'Vessel and ferment', ({ read }) => read.massG),
  amount('temperature_C', 'Cel', 'Ferment, by hand', ({ read }) => read.temperatureC),
  amount(
    'bubbles_per_min',
    '/min',
    'Bubbles through the air lock',
    ({ read }) => read.bubblesPerMin,
  ),
  words('degassed', 'yes where the gas was shaken or stirred out before', ({ read }) =>
    read.treatments.includes('degassed') ? 'yes' : null,
  ),
];

/** What was read by hand, as the judge was given it: the form that `npm run analyse -- --kind ferment` takes. */
export function weekTable(study: FermentStudy, name: string): Table {
  return {
    name,
    title: `${study.name}: the week as read`,
    ...byColumns(columns, () => study.moments),
  };
}
