import { chargeDoubtMl, type Quantity, type RunStudy } from '#shared-core';
import type { Table, TableField } from './table.ts';

const words = (name: string, description: string): TableField => ({
  name,
  type: 'string',
  unit: null,
  description,
});

const amount = (name: string, unit: string, description: string): TableField => ({
  name,
  type: 'number',
  unit,
  description,
  decimals: 4,
});

/** Cuts of all runs as booked. */
export function cutsTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'cuts',
    title: 'Cuts',
    fields: [
      words('run_id', 'Which run'),
      { name: 'cut', type: 'integer', unit: null, description: 'Receivers in their order, from 1' },
      amount('from_s', 's', 'When the receiver was put under'),
      amount('to_s', 's', 'When it was taken away'),
      amount('volume_mL', 'mL', 'Volume at 20 °C'),
      amount('volume_u_mL', 'mL', 'Its standard uncertainty (k = 1)'),
      amount('mass_g', 'g', 'Mass'),
      amount('mass_u_g', 'g', 'Its standard uncertainty (k = 1)'),
      amount('strength_abv', '%{vol}', 'Strength at 20 °C by OIML R 22'),
      amount('strength_abv_low', '%{vol}', 'Low end of its 95 % interval'),
      amount('strength_abv_high', '%{vol}', 'High end of its 95 % interval'),
      amount('ethanol_g', 'g', 'Ethanol in the cut'),
      amount('ethanol_u_g', 'g', 'Its standard uncertainty (k = 1)'),
      words('strength_from', 'measured, head-temperature or unknown'),
    ],
    *rows() {
      for (const { runId, books } of studies) {
        for (const { number, fromS, toS, booked, strengthAbv, strengthFrom } of books.cuts) {
          const strength = [strengthAbv?.value, strengthAbv?.low, strengthAbv?.high];
          yield [
            ...[runId, number, fromS, toS],
            ...both(booked?.volumeMl),
            ...both(booked?.massG),
            ...strength.map((value) => value ?? null),
            ...both(booked?.ethanolG),
            strengthFrom,
          ];
        }
      }
    },
  };
}

/** One number a row about every run: settings, plateau, balance, plates. */
export function resultsTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'results',
    title: 'Results',
    fields: [
      words('run_id', 'Which run'),
      words('quantity', 'What the number is'),
      {
        name: 'value',
        type: 'number',
        unit: null,
        description: 'Best value, in the unit beside it',
        decimals: 6,
      },
      {
        name: 'standard_uncertainty',
        type: 'number',
        unit: null,
        description: 'k = 1; empty where none is known',
        decimals: 6,
      },
      words('unit', 'UCUM code'),
    ],
    *rows() {
      for (const study of studies) {
        for (const row of resultsOf(study)) yield [study.runId, ...row];
      }
    },
  };
}

function both(quantity: Quantity): readonly [number, number];
function both(quantity: Quantity | undefined): readonly [number | null, number | null];
function both(quantity: Quantity | undefined): readonly [number | null, number | null] {
  return [quantity?.value ?? null, quantity?.standardUncertainty ?? null];
}

type ResultRow = readonly [
  quantity: string,
  value: number,
  uncertainty: number | null,
  unit: string,
];

function* resultsOf(study: RunStudy): Generator<ResultRow> {
  const { settings, plateau, books, plates, product, simple, endS } = study;
  const isWhole = books.unmeasuredCuts.length === 0;
  yield ['duration', endS, null, 's'];
  yield ['charge volume', settings.charge.volumeMl, chargeDoubtMl(settings.charge), 'mL'];
  yield [
    'charge strength',
    settings.charge.strengthAbv,
    settings.charge.standardUncertaintyAbv,
    '%{vol}',
  ];
  yield [
    'air pressure',
    settings.pressure.pressureKPa,
    settings.pressure.standardUncertaintyKPa,
    'kPa',
  ];
  if (plateau !== null) {
    yield ['plateau temperature', ...both(plateau.mean), 'Cel'];
    yield ['plateau at 101.325 kPa', ...both(plateau.standard), 'Cel'];
    yield ['plateau above azeotrope', ...both(plateau.aboveAzeotropeK), 'K'];
    yield ['plateau drift', ...both(plateau.statistics.driftKPerH), 'K/h'];
    yield ['plateau scatter', plateau.statistics.standardDeviationK, null, 'K'];
    yield ['plateau begins', plateau.statistics.span.fromS, null, 's'];
    yield ['plateau ends', plateau.statistics.span.toS, null, 's'];
  }
  if (!isWhole) yield ['cuts that were not measured', books.unmeasuredCuts.length, null, '1'];
  if (product !== null) {
    const { strengthAbv, strengthUncertaintyAbv } = product;
    yield ['strength of all cuts', strengthAbv.value, strengthUncertaintyAbv, '%{vol}'];
    yield ['volume of all cuts', ...both(product.volumeMl), 'mL'];
  }
  if (books.balance !== null) {
    yield* balanceRows('total', books.balance.total);
    yield* balanceRows('ethanol', books.balance.ethanol);
  }
  if (books.ferment !== null) {
    yield ['fermentation yield', ...both(books.ferment.fermentationPercent), '%'];
    if (isWhole) yield ['overall yield from sugar', ...both(books.ferment.overallPercent), '%'];
  }
  if (books.fromFerment !== null) {
    const { sugarG, mostG, byLogG, fermentPercent } = books.fromFerment;
    if (sugarG !== null) yield ['sugar of the charge', ...both(sugarG), 'g'];
    if (mostG !== null) yield ['ethanol at most from the sugar', ...both(mostG), 'g'];
    yield ['ethanol in the ferment by its log', ...both(byLogG), 'g'];
    if (fermentPercent !== null) {
      yield ['fermentation yield by its log', ...both(fermentPercent), '%'];
    }
  }
  const { stepped, fenske } = plates?.plates ?? { stepped: null, fenske: null };
  if (stepped?.value != null) yield ['apparent stages, stepped', stepped.value, null, '1'];
  if (fenske !== null) yield ['apparent stages, Fenske', fenske, null, '1'];
  if (simple !== null)
    yield ['strength without a column, Rayleigh', simple.strengthAbv, null, '%{vol}'];
}

function* balanceRows(
  substance: string,
  balance: NonNullable<RunStudy['books']['balance']>['ethanol'],
): Generator<ResultRow> {
  const rows: readonly (readonly [string, Quantity | null, string])[] = [
    ['charged', balance.inG, 'g'],
    ['in the cuts', balance.cutsG, 'g'],
    ['in the residue', balance.residueG, 'g'],
    ['hold-up', balance.holdUpG, 'g'],
    ['missing', balance.missingG, 'g'],
    ['recovery', balance.recoveryPercent, '%'],
    ['closure', balance.closurePercent, '%'],
  ];
  for (const [name, quantity, unit] of rows) {
    if (quantity !== null) yield [`${substance}: ${name}`, ...both(quantity), unit];
  }
}
