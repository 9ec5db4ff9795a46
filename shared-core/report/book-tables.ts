import type { Balance, BookedCut, BookedLiquid, RunBooks } from '../bookkeeping/index.ts';
import { clockWords, intervalWords, measuredWords, worded } from '../wording/index.ts';
import type { DocumentTable } from './document.ts';
import { fromFermentTable } from './from-ferment-blocks.ts';
import { leastWords } from './least-words.ts';

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
 * bookTables(booksOfRun({ settings: defaultRunSettings, inputs: [], verdicts: { estimates: [], events: [] }, endS: 0 })).length // => 0
 */
export function bookTables(books: RunBooks): readonly DocumentTable[] {
  const shown: BooksToShow = { books };
  return [
    cutsTable(shown),
    balanceTable(shown),
    recoveryBudgetTable(shown),
    books.fromFerment === null ? null : fromFermentTable(books.fromFerment),
  ].filter((table) => table !== null);
}

/** Cuts, residue and hold-up as booked; null without any. */
function cutsTable({ books }: BooksToShow): DocumentTable | null {
  if (books.cuts.length === 0 && books.residue === null && books.holdUp === null) return null;
  const sources = {
    measured: worded('measured'),
    'head-temperature': worded('head temp.'),
    unknown: '–',
  } as const;
  return {
    kind: 'table',
    caption: worded('Liquids (±: k = 2; strength at 20 °C: 95 % interval)'),
    columns: [
      column(worded('Liquid'), 1.3),
      column(worded('From'), 1.2, 'end'),
      column(worded('To'), 1.2, 'end'),
      column(worded('Volume at 20 °C'), 2.5, 'end'),
      column(worded('Mass'), 2.5, 'end'),
      column(worded('Strength'), 3, 'end'),
      column(worded('Ethanol'), 2.5, 'end'),
      column(worded('Strength from'), 2.1),
    ],
    rows: [
      ...books.cuts.map(({ number, fromS, toS, strengthFrom, ...cut }) => [
        worded('Cut {number}', { number }),
        clockWords(fromS),
        clockWords(toS),
        ...(cut.booked === null ? asReadCells(cut) : liquidCells(cut.booked)),
        sources[strengthFrom],
      ]),
      ...[books.residue, books.holdUp].flatMap((liquid) =>
        liquid === null ? [] : [[liquid.name, '–', '–', ...liquidCells(liquid), sources.measured]],
      ),
    ],
  };
}

/** What was read of a cut that can't be booked: it is no less measured for that. */
function asReadCells({
  amount,
  strengthAbv,
}: Pick<BookedCut, 'amount' | 'strengthAbv'>): readonly string[] {
  return [
    ...amountCells(amount),
    strengthAbv === null ? '–' : intervalWords(strengthAbv, '% vol'),
    '–',
  ];
}

function amountCells(amount: BookedCut['amount']): readonly [string, string] {
  if (amount === null) return [worded('not measured'), '–'];
  if (amount.by === 'mass') return ['–', measuredWords(amount.massG, 'g')];
  return [worded('{figure} as read', { figure: measuredWords(amount.volumeMl, 'mL') }), '–'];
}

function liquidCells(booked: BookedLiquid): readonly string[] {
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
    [worded('Charged'), ({ inG }) => measuredWords(inG, 'g')],
    [worded('In the cuts'), ({ cutsG }) => measuredWords(cutsG, 'g')],
    [
      worded('Residue'),
      ({ residueG }) => (residueG === null ? worded('not measured') : measuredWords(residueG, 'g')),
    ],
    [
      worded('Hold-up'),
      ({ holdUpG }) => (holdUpG === null ? worded('not measured') : measuredWords(holdUpG, 'g')),
    ],
    [worded('Missing'), ({ missingG }) => (missingG === null ? '–' : measuredWords(missingG, 'g'))],
    [
      worded('Recovery'),
      ({ recoveryPercent }) =>
        leastWords(measuredWords(recoveryPercent, '%'), books.unmeasuredCuts.length === 0),
    ],
    [
      worded('Closure'),
      ({ closurePercent }) => (closurePercent === null ? '–' : measuredWords(closurePercent, '%')),
    ],
    [
      worded('Closes within k = 2'),
      ({ closes }) =>
        closes === null ? worded('cannot be judged') : closes ? worded('yes') : worded('no'),
    ],
  ];
  return {
    kind: 'table',
    caption: worded('Balance (±: k = 2)'),
    columns: [
      column('', 3),
      column(worded('All liquid'), 3, 'end'),
      column(worded('Ethanol'), 3, 'end'),
    ],
    rows: rows.map(([name, words]) => [name, words(total), words(ethanol)]),
  };
}

/** What the uncertainty of the ethanol recovery is made of; null without booked cuts. */
function recoveryBudgetTable({ books }: BooksToShow): DocumentTable | null {
  if (books.balance === null) return null;
  const { lines } = books.balance.ethanol.recoveryPercent.budget;
  return {
    kind: 'table',
    caption: worded('Where the uncertainty of the ethanol recovery comes from'),
    columns: [
      column(worded('Quantity'), 3),
      column(worded('u of the quantity / g'), 2.4, 'end'),
      column(worded('u of the recovery / %'), 2.4, 'end'),
      column(worded('Share'), 1.2, 'end'),
    ],
    rows: lines.map(({ name, inputStandardUncertainty, standardUncertainty, share }) => [
      name,
      inputStandardUncertainty.toPrecision(2),
      standardUncertainty.toPrecision(2),
      `${(100 * share).toFixed(0)} %`,
    ]),
  };
}
