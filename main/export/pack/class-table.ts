import type { RunStudy } from '#shared-core';
import { comparisonTable } from './several-tables.ts';
import type { Table, TableField } from './table.ts';

const number = (name: string, description: string): TableField => ({
  name,
  type: 'number',
  unit: null,
  description,
  decimals: 4,
});

/** The results of a class with their spread: one row a quantity, over all runs that have it. */
export function classTable(studies: readonly RunStudy[]): Table {
  const { fields, rows } = comparisonTable(studies);
  return {
    name: 'class',
    title: 'Results of the class',
    primaryKey: ['quantity'],
    fields: [
      {
        name: 'quantity',
        type: 'string',
        unit: null,
        description: 'A column of comparison.csv, where it is explained',
      },
      { name: 'unit', type: 'string', unit: null, description: 'UCUM code' },
      { name: 'runs', type: 'integer', unit: null, description: 'Runs that have it' },
      number('mean', 'Arithmetic mean, in the unit beside it'),
      number('standard_deviation', 'Of the runs, n − 1; empty for a single one'),
      number('least', 'Smallest value'),
      number('median', 'Half of the runs lie below'),
      number('greatest', 'Largest value'),
    ],
    *rows() {
      const all = [...rows()];
      for (const [column, { name, type, unit }] of fields.entries()) {
        if (type !== 'number') continue;
        const values = all
          .flatMap((cells) => (typeof cells[column] === 'number' ? [cells[column]] : []))
          .toSorted((a, b) => a - b);
        const spread = spreadOf(values);
        if (spread === null) continue;
        yield [name, unit, values.length, ...spread];
      }
    },
  };
}

/** Mean, standard deviation, least, median and greatest of values in rising order. */
function spreadOf(values: readonly number[]) {
  const [least, greatest] = [values[0], values.at(-1)];
  if (least === undefined || greatest === undefined) return null;
  const count = values.length;
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const upper = values[Math.floor(count / 2)] ?? greatest;
  const lower = values[Math.floor((count - 1) / 2)] ?? least;
  const deviation = count > 1 ? Math.sqrt(squares / (count - 1)) : null;
  return [mean, deviation, least, (lower + upper) / 2, greatest] as const;
}
