import { expect, test } from 'vitest';
import {
  amount,
  byColumns,
  type Table,
  tableCsv,
  tableSheet,
  wallMs,
  words,
} from '../../../../main/export/pack/table.ts';

interface Row {
  readonly name: string;
  readonly massG: number | null;
}

const columns = [
  words<Row>('name', 'What it is', ({ name }) => name),
  amount<Row>('mass_g', 'g', 'Its mass', ({ massG }) => massG, 1),
  amount<Row>('mass_exact_g', 'g', 'Its mass, as weighed', ({ massG }) => massG),
];

const table = (rows: readonly Row[], rest: Partial<Table> = {}): Table => ({
  name: 'liquids',
  title: 'Liquids',
  ...byColumns(columns, () => rows),
  ...rest,
});
const rows = [
  { name: 'residue, cold', massG: 219.46 },
  { name: 'spirit', massG: null },
];

test('a table is its columns: what each is called and is, and its cells row by row', () => {
  const { fields, rows: all } = table(rows);
  expect(fields).toEqual([
    { name: 'name', type: 'string', unit: null, description: 'What it is' },
    { name: 'mass_g', type: 'number', unit: 'g', description: 'Its mass', decimals: 1 },
    { name: 'mass_exact_g', type: 'number', unit: 'g', description: 'Its mass, as weighed' },
  ]);
  expect([...all()]).toEqual([
    ['residue, cold', 219.46, 219.46],
    ['spirit', null, null],
  ]);
});

test('as CSV it has its titles and rows, numbers to their decimals, in either dialect', () => {
  expect([...tableCsv(table(rows), 'csv')].join('')).toBe(
    'name,mass_g,mass_exact_g\r\n"residue, cold",219.5,219.46\r\nspirit,,\r\n',
  );
  expect([...tableCsv(table(rows), 'csv-semicolon')].join('')).toBe(
    'name;mass_g;mass_exact_g\r\nresidue, cold;219,5;219,46\r\nspirit;;\r\n',
  );
});

test('sentences take the decimal sign of the table, other words stay as they are', () => {
  const of = (isSentence: boolean) =>
    [
      ...tableCsv(
        {
          name: 'a',
          title: 'A',
          fields: [
            {
              name: 'said',
              type: 'string',
              unit: null,
              description: '',
              ...(isSentence && { isSentence }),
            },
          ],
          rows: () => [['78.5 °C']],
        },
        'csv-semicolon',
      ),
    ].join('');
  expect([of(true), of(false)]).toEqual(['said\r\n78,5 °C\r\n', 'said\r\n78.5 °C\r\n']);
});

test('moments are written as the clock on the wall shows them, whatever zone they are told in', () => {
  const began = Date.UTC(2026, 2, 18, 9, 15, 30);
  expect([
    wallMs('2026-03-18T09:15:30.000+01:00'),
    wallMs('2026-03-18T09:15:30-03:30'),
    wallMs('2026-03-18T09:15:30Z'),
  ]).toEqual([began, began, began]);
  const moments: Table = {
    name: 'a',
    title: 'A',
    fields: [{ name: 'began', type: 'datetime', unit: null, description: '' }],
    rows: () => [[began], [null]],
  };
  expect([...tableCsv(moments, 'csv')].join('')).toBe('began\r\n2026-03-18 09:15:30\r\n\r\n');
});

test('a long table comes in pieces of five hundred rows', () => {
  const many = Array.from({ length: 1001 }, (_, index) => ({ name: `${index}`, massG: index }));
  const pieces = [...tableCsv(table(many), 'csv')];
  expect(pieces.map((piece) => piece.split('\r\n').length - 1)).toEqual([501, 500, 1]);
  expect([...tableCsv(table([]), 'csv')]).toEqual(['name,mass_g,mass_exact_g\r\n']);
});

test('a sheet of a workbook is the same table, rounded alike, as often as it is gone through', () => {
  const sheet = tableSheet(table(rows), 'Liquids');
  expect(sheet).toMatchObject({
    name: 'Liquids',
    columns: [
      { title: 'name', type: 'text' },
      { title: 'mass_g', type: 'number', decimals: 1 },
      { title: 'mass_exact_g', type: 'number' },
    ],
  });
  expect(sheet).not.toHaveProperty('chart');
  const all = [
    ['residue, cold', 219.5, 219.46],
    ['spirit', null, null],
  ];
  expect([[...sheet.rows], [...sheet.rows]]).toEqual([all, all]);
  const moment: Table = {
    name: 'a',
    title: 'A',
    fields: [{ name: 'began', type: 'datetime', unit: null, description: '' }],
    rows: () => [],
  };
  expect(tableSheet(moment, 'A').columns).toEqual([{ title: 'began', type: 'date-time' }]);
});
