import type { Balance, BookedLiquid, RunBooks } from '../bookkeeping/index.ts';
import { clockWords, intervalWords, measuredWords } from '../wording/index.ts';
import type { DocumentTable } from './document.ts';

/** What the tables are made from: a study, or the books of one. */
interface BooksToShow {
  readonly books: RunBooks;
}

const column = (title: string, width: number, align: 'start' | 'end' = 'start') => ({
  title,
  width,
  align,
});

/**
 * The books of a run as tables, the same in the report and in the window: liquids, both balances, and where the
 * uncertainty of the ethanol recovery comes from. Tables without anything to say are left out.
 *
 * @param books from `booksOfRun`
 * @returns tables in words with units; ± is expanded with k = 2
 *
 * Source: JCGM 100:2008, 7.2 (reporting).
 * @example
 * bookTables(booksOfRun({ settings: defaultRunSettings, inputs: [], verdicts: { estimates: [] }, endS: 0 })).length // => 0
 */
export function bookTables(books: RunBooks): readonly DocumentTable[] {
  const shown: BooksToShow = { books };
  return [cutsTable(shown), balanceTable(shown), recoveryBudgetTable(shown)].filter(
    (table) => table !== null,
  );
}

/** Cuts, residue and hold-up as booked; null without any. */
function cutsTable({ books }: BooksToShow): DocumentTable | null {
  if (books.cuts.length === 0 && books.residue === null && books.holdUp === null) return null;
  const sources = {
    measured: 'measured',
    'head-temperature': 'head temp.',
    unknown: '–',
  } as const;
  return {
    kind: 'table',
    caption: 'Liquids (±: k = 2; strength at 20 °C: 95 % interval)',
    columns: [
      column('Liquid', 1.3),
      column('From', 1.2, 'end'),
      column('To', 1.2, 'end'),
      column('Volume at 20 °C', 2.5, 'end'),
      column('Mass', 2.5, 'end'),
      column('Strength', 3, 'end'),
      column('Ethanol', 2.5, 'end'),
      column('Strength from', 2.1),
    ],
    rows: [
      ...books.cuts.map(({ number, fromS, toS, booked, strengthFrom }) => [
        `Cut ${number}`,
        clockWords(fromS),
        clockWords(toS),
        ...liquidCells(booked),
        sources[strengthFrom],
      ]),
      ...[books.residue, books.holdUp].flatMap((liquid) =>
        liquid === null ? [] : [[liquid.name, '–', '–', ...liquidCells(liquid), sources.measured]],
      ),
    ],
  };
}

function liquidCells(booked: BookedLiquid | null): readonly string[] {
  if (booked === null) return ['not measured', '–', '–', '–'];
  return [
    measuredWords(booked.volumeMl, 'mL'),
    measuredWords(booked.massG, 'g'),
    intervalWords(booked.strengthAbv, '% vol'),
    measuredWords(booked.ethanolG, 'g'),
  ];
}

/** Both balances side by side; null without booked cuts. */
function balanceTable({ books }: BooksToShow): DocumentTable | null {
  if (books.balance === null) return null;
  const { total, ethanol } = books.balance;
  const rows: readonly (readonly [string, (balance: Balance) => string])[] = [
    ['Charged', ({ inG }) => measuredWords(inG, 'g')],
    ['In the cuts', ({ cutsG }) => measuredWords(cutsG, 'g')],
    [
      'Residue',
      ({ residueG }) => (residueG === null ? 'not measured' : measuredWords(residueG, 'g')),
    ],
    ['Hold-up', ({ holdUpG }) => (holdUpG === null ? 'not measured' : measuredWords(holdUpG, 'g'))],
    ['Missing', ({ missingG }) => (missingG === null ? '–' : measuredWords(missingG, 'g'))],
    ['Recovery', ({ recoveryPercent }) => measuredWords(recoveryPercent, '%')],
    [
      'Closure',
      ({ closurePercent }) => (closurePercent === null ? '–' : measuredWords(closurePercent, '%')),
    ],
    [
      'Closes within k = 2',
      ({ closes }) => (closes === null ? 'cannot be judged' : closes ? 'yes' : 'no'),
    ],
  ];
  return {
    kind: 'table',
    caption: 'Balance (±: k = 2)',
    columns: [column('', 3), column('All liquid', 3, 'end'), column('Ethanol', 3, 'end')],
    rows: rows.map(([name, words]) => [name, words(total), words(ethanol)]),
  };
}

/** What the uncertainty of the ethanol recovery is made of; null without booked cuts. */
function recoveryBudgetTable({ books }: BooksToShow): DocumentTable | null {
  if (books.balance === null) return null;
  const { lines } = books.balance.ethanol.recoveryPercent.budget;
  return {
    kind: 'table',
    caption: 'Where the uncertainty of the ethanol recovery comes from',
    columns: [
      column('Quantity', 3),
      column('u of the quantity / g', 2.4, 'end'),
      column('u of the recovery / %', 2.4, 'end'),
      column('Share', 1.2, 'end'),
    ],
    rows: lines.map(({ name, inputStandardUncertainty, standardUncertainty, share }) => [
      name,
      inputStandardUncertainty.toPrecision(2),
      standardUncertainty.toPrecision(2),
      `${(100 * share).toFixed(0)} %`,
    ]),
  };
}
