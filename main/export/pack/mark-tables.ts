import {
  type MarkBody,
  type Quantity,
  type RunInput,
  type RunStudy,
  standingMarks,
  writeMarkCell,
} from '#shared-core';
import type { Table, TableCell, TableField } from './table.ts';

/** A liquid as far as it was measured. */
type Measured = RunStudy['books']['measured'][number];

const words = (name: string, description: string): TableField => ({
  name,
  type: 'string',
  unit: null,
  description,
});
const number = (name: string, unit: string | null, description: string): TableField => ({
  name,
  type: 'number',
  unit,
  description,
});

/** What people did and saw, one row a mark, those that were withdrawn among them. */
export function marksTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'marks',
    title: 'Marks',
    primaryKey: ['run_id', 'mark_id'],
    fields: [
      words('run_id', 'Which run'),
      { name: 'mark_id', type: 'integer', unit: null, description: 'Counts up within the run' },
      number('time_s', 's', 'When it was made, since the run began'),
      words('made', 'during the run, or after it'),
      words('mark', 'What was done or seen'),
      {
        ...words('detail', 'The mark with its numbers, as in the raw tables'),
        isSentence: true,
      },
      words('stands', 'no for a mark that was withdrawn later, else yes'),
    ],
    *rows() {
      for (const { runId, inputs, lateMarks = [] } of studies) {
        const during = marksAmong(inputs);
        const standing = new Set(standingMarks([...inputs, ...lateMarks]));
        for (const [made, marks] of [
          ['during', during],
          ['after', lateMarks],
        ] as const) {
          for (const one of marks) {
            const { markId, timeS, mark } = one;
            const stands = standing.has(one) ? 'yes' : 'no';
            yield [runId, markId, timeS, made, mark.type, writeMarkCell(one), stands];
          }
        }
      }
    },
  };
}

const marksAmong = (inputs: readonly RunInput[]) =>
  inputs.flatMap((input) => (input.kind === 'mark' ? [input] : []));

/** What people measured, one row a reading of an instrument, each with its standard uncertainty. */
export function measurementsTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'measurements',
    title: 'Measurements',
    fields: [
      words('run_id', 'Which run'),
      number('time_s', 's', 'When it was written down; empty for what belongs to no moment'),
      words('of', 'What was measured: charge, cut 1 …, residue, hold-up, air, sugar, drops'),
      words('quantity', 'volume, mass, strength, density, temperature, pressure, count, time'),
      number('value', null, 'As read, in the unit beside it'),
      number(
        'standard_uncertainty',
        null,
        'k = 1, of this reading and its instrument; empty where none is known',
      ),
      words('unit', 'UCUM code'),
      words('instrument', 'How it was measured'),
    ],
    *rows() {
      for (const study of studies) for (const row of measuredIn(study)) yield [study.runId, ...row];
    },
  };
}

type Row = readonly TableCell[];

function* measuredIn({ settings, books, inputs }: RunStudy): Generator<Row> {
  const { pressureKPa, standardUncertaintyKPa, source } = settings.pressure;
  yield [null, 'air', 'pressure', pressureKPa, standardUncertaintyKPa, 'kPa', source];
  for (const { liquid, amount, strength } of books.measured) {
    if (amount !== null) yield* amountRows(liquid, amount);
    if (strength !== null) yield* strengthRows(liquid, strength);
  }
  if (books.sugarG !== null) yield row('sugar', 'mass', books.sugarG, 'g', 'stated');
  for (const { timeS, mark } of standingMarks(inputs)) {
    for (const reading of passing(mark)) yield [timeS, ...reading];
  }
}

/** Readings that no liquid of the books keeps: they tell of a moment. */
function* passing(mark: MarkBody): Generator<Row> {
  if (mark.type === 'pressure-read') {
    yield ['air', 'pressure', mark.pressureKPa, null, 'kPa', 'barometer'];
  }
  if (mark.type === 'drops-counted') {
    yield ['drops', 'count', mark.count, null, '1', 'counted'];
    yield ['drops', 'time', mark.overS, null, 's', 'clock'];
  }
}

const row = (
  of: string,
  quantity: string,
  { value, standardUncertainty }: Quantity,
  unit: string,
  by: string,
): Row => [null, of, quantity, value, standardUncertainty, unit, by];

function* amountRows(of: string, amount: NonNullable<Measured['amount']>): Generator<Row> {
  if (amount.by === 'mass') return yield row(of, 'mass', amount.massG, 'g', 'balance');
  yield row(of, 'volume', amount.volumeMl, 'mL', 'measuring cylinder');
  yield row(of, 'temperature', amount.temperatureC, 'Cel', 'thermometer');
}

function* strengthRows(of: string, strength: NonNullable<Measured['strength']>): Generator<Row> {
  const { by } = strength;
  switch (by) {
    case 'stated':
    case 'label':
      return yield row(of, 'strength', strength.strengthAbv, '%{vol}', by);
    case 'refractometer':
    case 'gas-chromatograph':
      return yield row(
        of,
        'strength',
        withInstrument(strength.strengthAbv, strength),
        '%{vol}',
        by,
      );
    case 'alcoholometer':
      yield row(of, 'strength', withInstrument(strength.indicatedAbv, strength), '%{vol}', by);
      return yield row(of, 'temperature', strength.temperatureC, 'Cel', 'thermometer');
    case 'hydrometer':
      yield row(
        of,
        'density',
        withInstrument(strength.indicatedDensityKgPerM3, strength),
        'kg/m3',
        by,
      );
      return yield row(of, 'temperature', strength.temperatureC, 'Cel', 'thermometer');
    case 'balance':
      yield row(of, 'sample mass', strength.massG, 'g', by);
      yield row(of, 'sample volume', strength.volumeMl, 'mL', by);
      return yield row(of, 'temperature', strength.temperatureC, 'Cel', 'thermometer');
    case 'pycnometer': {
      const { weighings, temperatureUncertaintyK } = strength;
      const doubtG = weighings.weighingUncertaintyG;
      const gram = (what: string, value: number) =>
        row(of, what, { value, standardUncertainty: doubtG }, 'g', by);
      yield gram('pycnometer empty', weighings.emptyG);
      yield gram('pycnometer with water', weighings.withWaterG);
      yield gram('pycnometer with sample', weighings.withSampleG);
      const value = weighings.sampleTemperatureC;
      const standardUncertainty = temperatureUncertaintyK;
      return yield row(of, 'temperature', { value, standardUncertainty }, 'Cel', 'thermometer');
    }
  }
}

/** One number for whoever takes the reading by itself: its own error and the instrument's together. */
function withInstrument(
  { value, standardUncertainty }: Quantity,
  { instrument }: { readonly instrument?: { readonly standardUncertainty: number } | undefined },
): Quantity {
  const itself = instrument?.standardUncertainty ?? 0;
  return { value, standardUncertainty: Math.hypot(standardUncertainty, itself) };
}
