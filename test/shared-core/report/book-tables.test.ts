import { expect, test } from 'vitest';
import { booksOfRun, defaultRunSettings } from '#shared-core';
import type { BookedCut, RunBooks } from '../../../shared-core/bookkeeping/books-of-run.ts';
import { bookTables } from '../../../shared-core/report/book-tables.ts';

/** As it stands on paper, with the spaces that do not break as `~`. */
const plain = (rows: readonly (readonly string[])[]) =>
  rows.map((row) => row.map((cell) => cell.replaceAll('\u00a0', '~')));
const about = (value: number, standardUncertainty: number) => ({
  value,
  standardUncertainty,
  budget: { lines: [], combinedStandardUncertainty: standardUncertainty },
});

const bare = booksOfRun({
  settings: defaultRunSettings,
  inputs: [],
  verdicts: { estimates: [], events: [] },
  endS: 0,
});
const liquid = (name: string, volumeMl: number): NonNullable<RunBooks['residue']> => ({
  ...bare.charge,
  name,
  volumeMl: about(volumeMl, 0.5),
  massG: about(0.8 * volumeMl, 0.6),
  strengthAbv: { value: 90, low: 88.14, high: 93.02 },
  ethanolG: about(0.7 * volumeMl, 0.7),
});
const cut = (
  number: number,
  strengthFrom: BookedCut['strengthFrom'],
  booked: BookedCut['booked'],
): BookedCut => ({
  number,
  fromS: 600 * number,
  toS: 600 * number + 65,
  amount: null,
  strength: null,
  strengthAbv: booked?.strengthAbv ?? null,
  strengthFrom,
  booked,
});
const balance = {
  inG: about(30, 0.6),
  cutsG: about(24, 0.3),
  residueG: about(5, 0.2),
  holdUpG: about(0.5, 0.1),
  missingG: about(0.5, 0.7),
  closurePercent: about(98.3, 2.2),
  closes: true,
  recoveryPercent: about(80, 1.9),
};
const books: RunBooks = {
  ...bare,
  cuts: [
    cut(1, 'measured', liquid('Cut 1', 10)),
    cut(2, 'head-temperature', liquid('Cut 2', 20)),
    cut(3, 'unknown', null),
  ],
  residue: liquid('Residue', 200),
  holdUp: liquid('Hold-up', 5),
  balance: {
    total: {
      ...balance,
      residueG: null,
      holdUpG: null,
      missingG: null,
      closurePercent: null,
      closes: null,
    },
    ethanol: {
      ...balance,
      recoveryPercent: {
        ...about(80, 1.9),
        budget: {
          combinedStandardUncertainty: 1.9,
          lines: [
            {
              name: 'charge',
              distribution: 'normal',
              inputStandardUncertainty: 0.6,
              sensitivity: -2.67,
              reason: '',
              standardUncertainty: 1.6,
              share: 0.714,
            },
          ],
        },
      },
    },
  },
};

test('what was read of a cut that can’t be booked stands in its row', () => {
  const half = (amount: BookedCut['amount']) => {
    const cuts = [{ ...cut(3, 'unknown', null), amount }];
    return plain(bookTables({ ...books, cuts })[0]?.rows ?? [])[0]?.slice(3, 5);
  };
  const reading = (value: number) => ({ value, standardUncertainty: 0.5 });
  expect([
    half({ by: 'volume', volumeMl: reading(6), temperatureC: reading(24) }),
    half({ by: 'mass', massG: reading(5) }),
    half(null),
  ]).toEqual([
    ['(6.0~±~1.0)~mL as read', '–'],
    ['–', '(5.0~±~1.0)~g'],
    ['not measured', '–'],
  ]);
});

test('every liquid has its row with its times, amounts, interval and where its strength is from', () => {
  const [liquids] = bookTables(books);
  // ± is twice the standard uncertainty: 0.5 mL, 0.6 g and 0.7 g.
  expect(plain(liquids?.rows ?? [])).toEqual([
    [
      'Cut 1',
      '0:10:00',
      '0:11:05',
      '(10.0~±~1.0)~mL',
      '(8.0~±~1.2)~g',
      '88.1–93.0~% vol',
      '(7.0~±~1.4)~g',
      'measured',
    ],
    [
      'Cut 2',
      '0:20:00',
      '0:21:05',
      '(20.0~±~1.0)~mL',
      '(16.0~±~1.2)~g',
      '88.1–93.0~% vol',
      '(14.0~±~1.4)~g',
      'head temp.',
    ],
    ['Cut 3', '0:30:00', '0:31:05', 'not measured', '–', '–', '–', '–'],
    [
      'Residue',
      '–',
      '–',
      '(200.0~±~1.0)~mL',
      '(160.0~±~1.2)~g',
      '88.1–93.0~% vol',
      '(140.0~±~1.4)~g',
      'measured',
    ],
    [
      'Hold-up',
      '–',
      '–',
      '(5.0~±~1.0)~mL',
      '(4.0~±~1.2)~g',
      '88.1–93.0~% vol',
      '(3.5~±~1.4)~g',
      'measured',
    ],
  ]);
  expect(liquids?.columns.map(({ title, align }) => `${title}: ${align}`)).toEqual([
    'Liquid: start',
    'From: end',
    'To: end',
    'Volume at 20 °C: end',
    'Mass: end',
    'Strength: end',
    'Ethanol: end',
    'Strength from: start',
  ]);
});

test('both balances stand side by side, with what was not measured and what cannot be judged', () => {
  const [, both] = bookTables(books);
  expect(both?.columns.map(({ title }) => title)).toEqual(['', 'All liquid', 'Ethanol']);
  expect(plain(both?.rows ?? [])).toEqual([
    ['Charged', '(30.0~±~1.2)~g', '(30.0~±~1.2)~g'],
    ['In the cuts', '(24.00~±~0.60)~g', '(24.00~±~0.60)~g'],
    ['Residue', 'not measured', '(5.00~±~0.40)~g'],
    ['Hold-up', 'not measured', '(0.50~±~0.20)~g'],
    ['Missing', '–', '(0.5~±~1.4)~g'],
    ['Recovery', '(80.0~±~3.8)~%', '(80.0~±~3.8)~%'],
    ['Closure', '–', '(98.3~±~4.4)~%'],
    ['Closes within k = 2', 'cannot be judged', 'yes'],
  ]);
});

test('a balance that does not close says no', () => {
  const open = books.balance && { ...books.balance, ethanol: { ...balance, closes: false } };
  const [, both] = bookTables({ ...books, balance: open });
  expect(both?.rows.at(-1)).toEqual(['Closes within k = 2', 'cannot be judged', 'no']);
});

test('the uncertainty of the recovery is told line by line, to two figures and its share in per cent', () => {
  const [, , budget] = bookTables(books);
  expect(budget?.caption).toBe('Where the uncertainty of the ethanol recovery comes from');
  expect(budget?.columns.map(({ title }) => title)).toEqual([
    'Quantity',
    'u of the quantity / g',
    'u of the recovery / %',
    'Share',
  ]);
  expect(budget?.rows).toEqual([['charge', '0.60', '1.6', '71 %']]);
});

test('tables without anything to say are left out', () => {
  const captions = (of: RunBooks) => bookTables(of).map(({ caption }) => caption);
  expect(captions(bare)).toEqual([]);
  const liquidsOnly = ['Liquids (±: k = 2; strength at 20 °C: 95 % interval)'];
  expect(captions({ ...bare, residue: books.residue })).toEqual(liquidsOnly);
  expect(captions({ ...bare, holdUp: books.holdUp })).toEqual(liquidsOnly);
  expect(captions({ ...bare, cuts: books.cuts })).toEqual(liquidsOnly);
});
