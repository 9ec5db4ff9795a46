import { csvDialects, parseCsv, type RunInput, writeReadingsCsv } from '#shared-core';
import type { TableField } from './table.ts';

const units: Readonly<Record<string, string | null>> = {
  degC: 'Cel',
  g: 'g',
  mL: 'mL',
  kPa: 'kPa',
  '1': null,
};

/** The columns of a raw CSV, told from the titles that its own writer gives them. */
export function rawFields(inputs: readonly RunInput[]): readonly TableField[] {
  const [titles = ''] = writeReadingsCsv({ inputs, stages: null, endS: 0 }, 'csv');
  const [row] = parseCsv(titles, csvDialects.csv.delimiter);
  return (row?.cells ?? []).map(rawField);
}

function rawField(name: string): TableField {
  if (name === 'time_s') {
    return { name, type: 'number', unit: 's', description: 'Time since the run began, monotonic' };
  }
  if (name === 'marks') {
    const description =
      'What a person did or saw, or what happened to the probe, in a row of its own';
    return { name, type: 'string', unit: null, description };
  }
  const [, channel = name, of = ''] = /^(.+)_([a-zA-Z0-9]+)$/.exec(name) ?? [];
  if (of === 'quality') {
    const description = `Quality of the reading of ${channel}: good, suspect or bad`;
    return { name, type: 'string', unit: null, description };
  }
  const description = `Reading of ${channel}, as recorded, uncorrected`;
  return { name, type: 'number', unit: units[of] ?? null, description };
}
