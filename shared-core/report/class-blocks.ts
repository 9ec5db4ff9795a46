import type { RunStudy } from '../study/index.ts';
import { numberWords } from '../wording/index.ts';
import type { Block } from './document.ts';

interface Result {
  readonly title: string;
  readonly decimals: number;
  readonly of: (study: RunStudy) => number | null;
}

const results: readonly Result[] = [
  { title: 'Plateau / °C', decimals: 1, of: ({ plateau }) => plateau?.mean.value ?? null },
  { title: 'Cuts / % vol', decimals: 1, of: ({ product }) => product?.strengthAbv.value ?? null },
  {
    title: 'Recovered / %',
    decimals: 0,
    // With a cut that was not measured it is a least one, which no mean or spread can take.
    of: ({ books }) =>
      books.unmeasuredCuts.length > 0
        ? null
        : (books.balance?.ethanol.recoveryPercent.value ?? null),
  },
  { title: 'Stages', decimals: 1, of: ({ plates }) => plates?.plates.stepped.value ?? null },
];

/** The results of a class: their spread, then one row a run, which may go on overleaf. */
export function classBlocks(studies: readonly RunStudy[]): readonly Block[] {
  const words = (value: number | null, decimals: number) =>
    value === null ? '–' : numberWords(value, decimals);
  return [
    { kind: 'heading', level: 1, text: 'The class' },
    {
      kind: 'table',
      caption: 'Spread over all runs',
      columns: [
        { title: '', align: 'start', width: 4 },
        ...results.map(({ title }) => ({ title, align: 'end', width: 2.2 }) as const),
      ],
      rows: spreadRows(studies),
    },
    {
      kind: 'table',
      caption: 'Results of all runs; uncertainties stand with each run below',
      columns: [
        { title: 'Run', align: 'start', width: 4 },
        ...results.map(({ title }) => ({ title, align: 'end', width: 2.2 }) as const),
        { title: 'Main fraction', align: 'end', width: 2 },
      ],
      rows: studies.map((study, index) => [
        `${index + 1}  ${study.name}`,
        ...results.map(({ of, decimals }) => words(of(study), decimals)),
        study.mainFraction ?? 'not known',
      ]),
    },
  ];
}

function spreadRows(studies: readonly RunStudy[]): readonly (readonly string[])[] {
  const columns = results.map(({ of, decimals }) => ({
    decimals,
    values: studies.flatMap((study) => of(study) ?? []).toSorted((a, b) => a - b),
  }));
  const row = (
    name: string,
    of: (values: readonly number[]) => number | undefined,
    moreDecimals = 0,
  ) => [
    name,
    ...columns.map(({ values, decimals }) => {
      const value = of(values);
      return value === undefined ? '–' : numberWords(value, decimals + moreDecimals);
    }),
  ];
  const deviationOf = (values: readonly number[]) => {
    const mean = meanOf(values);
    if (mean === undefined || values.length < 2) return undefined;
    const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    return Math.sqrt(squares / (values.length - 1));
  };
  return [
    ['Runs', ...columns.map(({ values }) => String(values.length))],
    row('Mean', meanOf),
    // A spread below the last digit of the values is not none.
    row('Standard deviation', deviationOf, 1),
    row('Least', (values) => values[0]),
    row('Greatest', (values) => values.at(-1)),
  ];
}

const meanOf = (values: readonly number[]) =>
  values.length === 0 ? undefined : values.reduce((sum, value) => sum + value, 0) / values.length;
