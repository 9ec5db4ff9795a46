import type { KeptFerment } from '../ferment-log/index.ts';
import type { FermentReading } from './ferment-log.ts';
import { readingsOfFerment } from './readings-of-ferment.ts';

/** A temperature that a probe heard of the ferment. */
export interface HeardTemperature {
  readonly timeH: number;
  readonly temperatureC: number;
}

type Row = Partial<FermentReading> & { readonly timeH: number };

const columns: readonly {
  readonly title: string;
  readonly value: (row: Row) => string;
}[] = [
  { title: 'time_h', value: ({ timeH }) => timeH.toFixed(2) },
  { title: 'gravity', value: ({ gravity }) => numberText(gravity, 4) },
  { title: 'mass_g', value: ({ massG }) => numberText(massG, 1) },
  { title: 'temperature_C', value: ({ temperatureC }) => numberText(temperatureC, 2) },
  { title: 'bubbles_per_min', value: ({ bubblesPerMin }) => numberText(bubblesPerMin, 1) },
  { title: 'degassed', value: ({ isDegassed }) => (isDegassed ? 'yes' : '') },
];

/**
 * A ferment as a table (CSV, decimal points, lines ended as RFC 4180 says): what was read by hand, gravities at 20 °C, and what a probe
 * heard, in time order. `readFermentCsv` reads it back.
 *
 * @param kept a ferment with its entries
 * @param heard temperatures [°C] at hours since the beginning
 *
 * Source: RFC 4180 for the form.
 * @example
 * fermentTable({ stated: { beganAtIso: '2026-05-01T08:00:00Z' }, entries: [] }, [{ timeH: 1, temperatureC: 30 }]).split('\r\n')[1] // => "1.00,,,30.00,,"
 */
export function fermentTable(
  kept: { readonly stated: Pick<KeptFerment['stated'], 'beganAtIso'> } & Pick<
    KeptFerment,
    'entries'
  >,
  heard: readonly HeardTemperature[],
): string {
  const rows: readonly Row[] = [...readingsOfFerment(kept), ...heard].toSorted(
    (a, b) => a.timeH - b.timeH,
  );
  const lines = [
    columns.map(({ title }) => title),
    ...rows.map((row) => columns.map(({ value }) => value(row))),
  ];
  return lines.map((cells) => `${cells.join(',')}\r\n`).join('');
}

function numberText(value: number | null | undefined, decimals: number): string {
  return value === null || value === undefined ? '' : value.toFixed(decimals);
}
