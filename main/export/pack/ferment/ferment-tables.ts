import type { FermentStudy } from '#shared-core';
import { amount, byColumns, type Column, type Table, wallMs, words } from '../table.ts';

const hourMs = 3_600_000;
/** What stands in every table of several ferments. */
interface OfFerment {
  readonly study: FermentStudy;
}

const runId: Column<OfFerment> = words('run_id', 'Which ferment', ({ study }) => study.runId);
const timeH = <Row extends { readonly timeH: number }>(): Column<Row> =>
  amount('time_h', 'h', 'Since the ferment was begun', (row) => row.timeH, 3);
const timeLocal = <Row extends OfFerment & { readonly timeH: number }>(): Column<Row> => ({
  name: 'time_local',
  type: 'datetime',
  unit: null,
  description: 'The same by the computer’s clock, with the offset of `began` in the table of runs',
  value: (row) => wallMs(row.study.startedAtIso) + hourMs * row.timeH,
});
const yesNo = (is: boolean) => (is ? 'yes' : 'no');

/** A value with the ends of its interval in columns beside it. */
function interval<Row>(
  name: string,
  unit: string,
  description: string,
  of: (row: Row) => { low: number; value: number; high: number } | null,
  decimals: number,
): readonly Column<Row>[] {
  return [
    amount(name, unit, `${description}, best value`, (row) => of(row)?.value, decimals),
    amount(`${name}_low`, unit, 'Low end of its 90 % interval', (row) => of(row)?.low, decimals),
    amount(`${name}_high`, unit, 'High end of its 90 % interval', (row) => of(row)?.high, decimals),
  ];
}

const each = (studies: readonly FermentStudy[]) => studies.map((study) => ({ study }));

/** One row a ferment: what the `run_id` of every other table leads to. */
export function fermentsTable(studies: readonly FermentStudy[]): Table {
  const columns: readonly Column<OfFerment>[] = [
    { ...runId, description: 'Which ferment; the same in every table' },
    words('name', 'As the person named it', ({ study }) => study.name),
    words(
      'began',
      'When it was begun, ISO 8601 with the offset of the computer’s zone',
      ({ study }) => study.startedAtIso,
    ),
    amount('volume_mL', 'mL', 'Volume of the ferment', ({ study }) => study.kept.stated.volumeMl),
    words('went_in', 'What went in, as typed', ({ study }) => study.kept.stated.wentIn),
    amount(
      'sugar_low_g',
      'g',
      'Sugar as hexose, low end of what was stated',
      ({ study }) => study.kept.stated.sugarG?.low,
      1,
    ),
    amount('sugar_high_g', 'g', 'High end', ({ study }) => study.kept.stated.sugarG?.high, 1),
    words(
      'state',
      'not-started, working, slow, stuck or finished, at the last reading',
      ({ study }) => study.verdict.state,
    ),
    {
      ...words('because', 'Why, in words', ({ study }: OfFerment) => study.verdict.because),
      isSentence: true,
    },
    ...interval<OfFerment>(
      'strength_abv',
      '%{vol}',
      'Strength by the log',
      ({ study }) => study.verdict.strengthAbv,
      2,
    ),
    ...interval<OfFerment>(
      'original_gravity',
      '1',
      'Gravity 20/20 before anything fermented',
      ({ study }) => study.verdict.originalGravity,
      4,
    ),
    ...interval<OfFerment>(
      'end_gravity',
      '1',
      'Gravity 20/20 expected at its end',
      ({ study }) => study.verdict.expectedEndGravity,
      4,
    ),
    ...interval<OfFerment>(
      'finish_h',
      'h',
      'When it ends or ended, since it was begun',
      ({ study }) => study.verdict.finishH,
      0,
    ),
    ...interval<OfFerment>(
      'done_percent',
      '%',
      'Of what can ferment has fermented',
      ({ study }) => study.verdict.donePercent,
      0,
    ),
    words('ready', 'yes where it was judged ready for the still, else no', ({ study }) =>
      yesNo(study.advice.isGo),
    ),
  ];
  return {
    name: 'runs',
    title: 'Ferments',
    primaryKey: ['run_id'],
    ...byColumns(columns, () => each(studies)),
  };
}

type EntryOf = OfFerment & {
  readonly timeH: number;
  readonly entry: FermentStudy['kept']['entries'][number];
  readonly gravityAt20C: number | null;
};

/** Everything that was written down, one entry a row, those that were withdrawn among them. */
export function logTable(studies: readonly FermentStudy[]): Table {
  const treatment = (name: EntryOf['entry']['read']['treatments'][number], description: string) =>
    words<EntryOf>(name, description, ({ entry }) => yesNo(entry.read.treatments.includes(name)));
  const columns: readonly Column<EntryOf>[] = [
    runId,
    {
      name: 'entry_id',
      type: 'integer',
      unit: null,
      description: 'Counts up within the ferment',
      value: ({ entry }) => entry.entryId,
    },
    timeH(),
    timeLocal(),
    amount(
      'gravity_read',
      '1',
      'Gravity as the hydrometer showed it',
      ({ entry }) => entry.read.gravity?.indicated,
      4,
    ),
    amount(
      'jar_degC',
      'Cel',
      'Temperature in its jar',
      ({ entry }) => entry.read.gravity?.temperatureC,
      1,
    ),
    amount('gravity', '1', 'Gravity 20/20, brought to 20 °C', (row) => row.gravityAt20C, 4),
    amount('mass_g', 'g', 'Vessel and ferment', ({ entry }) => entry.read.massG, 2),
    amount(
      'ferment_degC',
      'Cel',
      'Temperature of the ferment, read by hand',
      ({ entry }) => entry.read.temperatureC,
      2,
    ),
    amount(
      'bubbles_per_min',
      '/min',
      'Bubbles through the air lock',
      ({ entry }) => entry.read.bubblesPerMin,
      1,
    ),
    amount('ph', '[pH]', 'pH', ({ entry }) => entry.read.ph, 2),
    amount(
      'refractometer_percent',
      '%',
      'Sugar scale of a refractometer, which alcohol falsifies',
      ({ entry }) => entry.read.refractometerPercent,
      1,
    ),
    treatment('degassed', 'yes where the gas was shaken or stirred out before'),
    treatment('settled', 'yes where it had settled before'),
    treatment('strained', 'yes where it was strained before'),
    words('stands', 'no for an entry that was withdrawn later, else yes', ({ entry }) =>
      yesNo(entry.withdrawnAtIso === null),
    ),
  ];
  return {
    name: 'readings',
    title: 'What was read',
    primaryKey: ['run_id', 'entry_id'],
    ...byColumns(columns, () =>
      studies.flatMap((study) => {
        const gravities = new Map(study.moments.map((one) => [one.entryId, one.gravityAt20C]));
        return study.kept.entries.map((entry) => ({
          study,
          entry,
          timeH: hoursAt(study, entry.read.atIso),
          gravityAt20C: gravities.get(entry.entryId) ?? null,
        }));
      }),
    ),
  };
}

function hoursAt({ startedAtIso }: FermentStudy, atIso: string): number {
  return (Date.parse(atIso) - Date.parse(startedAtIso)) / hourMs;
}

/** What the readings up to each moment say. */
export function judgedTable(studies: readonly FermentStudy[], name = 'judged'): Table {
  type Judged = OfFerment & FermentStudy['course'][number];
  const columns: readonly Column<Judged>[] = [
    runId,
    timeH(),
    timeLocal(),
    words('state', 'not-started, working, slow, stuck or finished', ({ state }) => state),
    ...interval<Judged>(
      'strength_abv',
      '%{vol}',
      'Strength by the readings so far',
      (row) => row.strengthAbv,
      2,
    ),
    ...interval<Judged>(
      'gravity',
      '1',
      'Gravity 20/20 by the readings so far',
      (row) => row.gravity,
      4,
    ),
    ...interval<Judged>(
      'done_percent',
      '%',
      'Of what can ferment has fermented',
      (row) => row.donePercent,
      0,
    ),
  ];
  return {
    name,
    title: 'Judged after each reading',
    ...byColumns(columns, () =>
      studies.flatMap((study) => study.course.map((judged) => ({ study, ...judged }))),
    ),
  };
}

type SpanOf = OfFerment & {
  readonly timeH: number;
  readonly span: FermentStudy['stretches'][number];
};

const spanColumns: readonly Column<SpanOf>[] = [
  runId,
  timeH(),
  timeLocal(),
  amount('low_degC', 'Cel', 'Lowest reading', ({ span }) => span.lowC, 3),
  amount('mean_degC', 'Cel', 'Mean of the readings', ({ span }) => span.meanC, 3),
  amount('high_degC', 'Cel', 'Highest reading', ({ span }) => span.highC, 3),
];

function spansOf(
  studies: readonly FermentStudy[],
  of: (study: FermentStudy) => FermentStudy['stretches'],
): readonly SpanOf[] {
  return studies.flatMap((study) =>
    of(study).map((span) => ({ study, span, timeH: hoursAt(study, span.atIso) })),
  );
}

/** How warm it was, minute by minute as recorded. */
export function minutesTable(studies: readonly FermentStudy[]): Table {
  return {
    name: 'minutes',
    title: 'Warmth, minute by minute',
    ...byColumns(spanColumns, () => spansOf(studies, ({ warmth }) => warmth.minutes)),
  };
}

/** The same in stretches of ten minutes: for charts. */
export function stretchesTable(studies: readonly FermentStudy[]): Table {
  return {
    name: 'warmth',
    title: 'Warmth in stretches of ten minutes',
    ...byColumns(spanColumns, () => spansOf(studies, ({ stretches }) => stretches)),
  };
}

/** Each day of a ferment, counted from its beginning. */
export function daysTable(studies: readonly FermentStudy[]): Table {
  type DayOf = OfFerment & FermentStudy['days'][number];
  const columns: readonly Column<DayOf>[] = [
    runId,
    {
      name: 'day',
      type: 'integer',
      unit: null,
      description: 'Counts from 1, a day and a night each since the ferment was begun',
      value: ({ day }) => day,
    },
    amount('low_degC', 'Cel', 'Lowest reading', ({ tally }) => tally.lowC, 2),
    amount('mean_degC', 'Cel', 'Mean', ({ tally }) => tally.meanC, 2),
    amount('high_degC', 'Cel', 'Highest reading', ({ tally }) => tally.highC, 2),
    amount('heard_h', 'h', 'Hours in which the probe was heard', ({ tally }) => tally.heardH, 2),
    amount('below_h', 'h', 'Of them below the band', ({ tally }) => tally.belowH, 2),
    amount('above_h', 'h', 'Of them above the band', ({ tally }) => tally.aboveH, 2),
    amount('band_low_degC', 'Cel', 'Lower end of the band', ({ study }) => study.band.lowC, 1),
    amount('band_high_degC', 'Cel', 'Upper end of the band', ({ study }) => study.band.highC, 1),
  ];
  return {
    name: 'days',
    title: 'Warmth, day by day',
    primaryKey: ['run_id', 'day'],
    ...byColumns(columns, () =>
      studies.flatMap((study) => study.days.map((day) => ({ study, ...day }))),
    ),
  };
}

/** What became of the sugar, one number a row. */
export function fermentResultsTable(studies: readonly FermentStudy[]): Table {
  type Result = OfFerment & {
    readonly quantity: string;
    readonly value: number;
    readonly standardUncertainty: number;
    readonly unit: string;
  };
  const columns: readonly Column<Result>[] = [
    runId,
    words('quantity', 'What the number is', ({ quantity }) => quantity),
    amount<Result>('value', null, 'Best value, in the unit beside it', ({ value }) => value, 4),
    amount<Result>(
      'standard_uncertainty',
      null,
      'k = 1, in the unit beside it',
      ({ standardUncertainty }) => standardUncertainty,
      4,
    ),
    words('unit', 'UCUM code', ({ unit }) => unit),
  ];
  return {
    name: 'results',
    title: 'What became of the sugar',
    ...byColumns(columns, () =>
      studies.flatMap((study) => {
        const { balance } = study;
        if (balance === null) return [];
        const rows = [
          ['sugar at the beginning', balance.sugarG, 'g'],
          ['sugar that fermented', balance.turnedG, 'g'],
          ['ethanol at most', balance.mostEthanolG, 'g'],
          ['ethanol by the log', balance.ethanolG, 'g'],
          ['carbon dioxide with it', balance.carbonDioxideG, 'g'],
          ['yield of the fermentation', balance.yieldPercent, '%'],
        ] as const;
        return rows.map(([quantity, { value, standardUncertainty }, unit]) => ({
          study,
          quantity,
          value,
          standardUncertainty,
          unit,
        }));
      }),
    ),
  };
}
