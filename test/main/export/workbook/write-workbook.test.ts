import path from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import type { Sheet, SheetCell } from '../../../../main/export/workbook/workbook.ts';
import { writeWorkbook } from '../../../../main/export/workbook/write-workbook.ts';
import { columnLetters } from '../../../../main/export/workbook/xml.ts';

const createdMs = Date.UTC(2026, 2, 20, 8, 30, 15);
const wide = Array.from(
  { length: 26 },
  (_, index) => ({ title: `c${index}`, type: 'number' }) as const,
);
const noon = Date.UTC(2026, 2, 18, 12);

const cells: readonly (readonly SheetCell[])[] = [
  ['pear', 78.25, 1.23456, noon],
  ['=1+1', null, Number.NaN, noon + 1500],
  ['<&>"', -5, 2, ''],
];
const first: Sheet = {
  name: 'Head & pot',
  columns: [
    { title: 'what', type: 'text' },
    { title: 'head_degC', type: 'number' },
    { title: 'rate, to two places', type: 'number', decimals: 2 },
    { title: 'at', type: 'date-time' },
  ],
  rows: cells,
  chart: {
    title: 'A <run>',
    xTitle: 'Time',
    xColumn: 3,
    yAxes: [
      { title: 'Head', columns: [1] },
      { title: 'Rate', columns: [2, 1] },
    ],
  },
};
const second: Sheet = {
  name: "Pupils' own",
  columns: [...wide, { title: 'last', type: 'number' }],
  rows: [],
};
const third: Sheet = {
  ...second,
  rows: [wide.map((_, index) => index)],
  chart: { title: 'One', xTitle: 'X', xColumn: 0, yAxes: [{ title: 'Y', columns: [26, 1, 2, 3] }] },
};

async function written(...sheets: readonly Sheet[]): Promise<Readonly<Record<string, string>>> {
  const pieces: Uint8Array[] = [];
  for await (const piece of writeWorkbook({ title: 'Pear & co.', createdMs, sheets })) {
    pieces.push(piece);
  }
  return Object.fromEntries(
    Object.entries(unzipSync(Buffer.concat(pieces))).map(([name, bytes]) => [
      name,
      strFromU8(bytes),
    ]),
  );
}

const attributes = (tag: string) =>
  Object.fromEntries(
    [...tag.matchAll(/([\w:]+)="([^"]*)"/g)].map(([, name, text]) => [name, text]),
  );
const tags = (xml: string, name: string) =>
  [...xml.matchAll(new RegExp(`<${name}(?=[ />])[^>]*>`, 'g'))].map(([tag]) => attributes(tag));

/** The cells of a sheet by their place: kind, format and what they hold. */
const cellsOf = (xml: string) =>
  Object.fromEntries(
    [...xml.matchAll(/<c ([^>]*)>(.*?)<\/c>/g)].map(([, own = '', inner = '']) => {
      const { r, t = 'n', s = '0' } = attributes(own);
      return [r, [t, s, inner.replace(/<[^>]+>/g, '')].join(' ')];
    }),
  );

test('all that a part points to is there, and every part has a type that its readers know', async () => {
  const parts = await written(first, second, third);
  const [types = ''] = [parts['[Content_Types].xml']];
  const typed = tags(types, 'Override').map(({ PartName }) => PartName?.slice(1));
  expect(tags(types, 'Default').map(({ Extension }) => Extension)).toEqual(['rels', 'xml']);
  expect(typed.filter((name) => parts[name ?? ''] === undefined)).toEqual([]);
  const untyped = Object.keys(parts).filter(
    (name) => !typed.includes(name) && !name.endsWith('.rels') && name !== '[Content_Types].xml',
  );
  expect(untyped).toEqual([]);
  const kinds = tags(types, 'Override').map(({ PartName, ContentType }) => [
    PartName,
    ContentType?.split('.').at(-1),
  ]);
  expect(Object.fromEntries(kinds)).toMatchObject({
    '/xl/workbook.xml': 'main+xml',
    '/xl/styles.xml': 'styles+xml',
    '/docProps/core.xml': 'core-properties+xml',
    '/xl/worksheets/sheet2.xml': 'worksheet+xml',
    '/xl/drawings/drawing3.xml': 'drawing+xml',
    '/xl/charts/chart3.xml': 'chart+xml',
  });
  const links = Object.entries(parts).filter(([name]) => name.endsWith('.rels'));
  expect(links.map(([name]) => name).sort()).toEqual([
    '_rels/.rels',
    'xl/_rels/workbook.xml.rels',
    'xl/drawings/_rels/drawing1.xml.rels',
    'xl/drawings/_rels/drawing3.xml.rels',
    'xl/worksheets/_rels/sheet1.xml.rels',
    'xl/worksheets/_rels/sheet3.xml.rels',
  ]);
  for (const [name, xml] of links) {
    const from = path.posix.join(path.posix.dirname(name), '..');
    const each = tags(xml, 'Relationship');
    expect(each.map(({ Id }) => Id)).toEqual(each.map((_, index) => `rId${index + 1}`));
    for (const { Target = '', Type = '' } of each) {
      expect(parts, name).toHaveProperty([path.posix.join(from, Target)]);
      expect(Type).toMatch(
        /^http:\/\/schemas\.openxmlformats\.org\/\w+\/2006\/relationships\/[\w/-]+$/,
      );
    }
  }
  for (const xml of Object.values(parts))
    expect(xml).toMatch(/^<\?xml version="1\.0" encoding="UTF-8"/);
});

test('the workbook names its sheets in their order, and itself with title and time', async () => {
  const parts = await written(first, second);
  expect(tags(parts['xl/workbook.xml'] ?? '', 'sheet')).toEqual([
    { name: 'Head &amp; pot', sheetId: '1', 'r:id': 'rId1' },
    { name: "Pupils' own", sheetId: '2', 'r:id': 'rId2' },
  ]);
  const core = (parts['docProps/core.xml'] ?? '').replace(/<[^>]+>/g, '|');
  expect(core).toContain('Pear &amp; co.');
  expect(core).toContain('2026-03-20T08:30:15Z');
});

test('each cell is what its column says, words that look like formulas stay words, and nothing is nothing', async () => {
  const parts = await written(first, second);
  // 2026-03-18 is day 46099 of a spreadsheet; noon is half of it, and 1.5 s are 1.5/86400 of a day.
  expect(cellsOf(parts['xl/worksheets/sheet1.xml'] ?? '')).toEqual({
    A1: 'inlineStr 1 what',
    B1: 'inlineStr 1 head_degC',
    C1: 'inlineStr 1 rate, to two places',
    D1: 'inlineStr 1 at',
    A2: 'inlineStr 0 pear',
    B2: 'n 0 78.25',
    C2: 'n 6 1.23456',
    D2: 'n 2 46099.5',
    A3: 'inlineStr 3 =1+1',
    D3: 'n 2 46099.50001736111',
    A4: 'inlineStr 0 &lt;&amp;&gt;&quot;',
    B4: 'n 0 -5',
    C4: 'n 6 2',
  });
  const other = cellsOf(parts['xl/worksheets/sheet2.xml'] ?? '');
  expect([Object.keys(other).length, other.Z1, other.AA1]).toEqual([
    27,
    'inlineStr 1 c25',
    'inlineStr 1 last',
  ]);
});

test('a format of so many decimals shows that many, and four at most', async () => {
  const columns = [0, 1, 2, 3, 4, 9].map(
    (decimals) => ({ title: 'x', type: 'number', decimals }) as const,
  );
  const parts = await written({ name: 'A', columns, rows: [[1, 1, 1, 1, 1, 1]] });
  const styles = parts['xl/styles.xml'] ?? '';
  const formats = new Map(
    tags(styles, 'numFmt').map(({ numFmtId, formatCode }) => [numFmtId, formatCode]),
  );
  const [, cellXfs = ''] = /<cellXfs[^>]*>(.*?)<\/cellXfs>/.exec(styles) ?? [];
  const shown = tags(cellXfs, 'xf').map(({ numFmtId = '' }) => formats.get(numFmtId) ?? numFmtId);
  const used = tags((parts['xl/worksheets/sheet1.xml'] ?? '').split('<row r="2">')[1] ?? '', 'c');
  expect(used.map(({ s }) => shown[Number(s)])).toEqual([
    '0',
    '0.0',
    '0.00',
    '0.000',
    '0.0000',
    '0.0000',
  ]);
  expect([shown[0], shown[2], shown[3]]).toEqual(['0', 'yyyy\\-mm\\-dd\\ hh:mm:ss', '49']);
  expect(tags(cellXfs, 'xf')).toHaveLength(Number(tags(styles, 'cellXfs')[0]?.count));
  expect(tags(styles, 'numFmt')).toHaveLength(Number(tags(styles, 'numFmts')[0]?.count));
  // Titles are bold on a shade; text that must stay text is marked as such.
  expect(tags(cellXfs, 'xf')[1]).toMatchObject({ fontId: '1', fillId: '2' });
  expect(tags(cellXfs, 'xf')[3]).toMatchObject({ quotePrefix: '1' });
});

test('columns are as wide as their titles and what they hold, and the titles stay in sight', async () => {
  const parts = await written(first);
  const xml = parts['xl/worksheets/sheet1.xml'] ?? '';
  expect(tags(xml, 'col').map(({ min, max, width }) => [min, max, width])).toEqual([
    ['1', '1', '18'],
    ['2', '2', '11'],
    ['3', '3', '21'],
    ['4', '4', '20'],
  ]);
  expect(tags(xml, 'pane')).toEqual([
    { ySplit: '1', topLeftCell: 'A2', activePane: 'bottomLeft', state: 'frozen' },
  ]);
});

test('a chart draws its columns over all rows, each line with its name, colour and dash', async () => {
  const parts = await written(first, third);
  const chart = parts['xl/charts/chart1.xml'] ?? '';
  const ranges = [...chart.matchAll(/<c:f>([^<]*)<\/c:f>/g)].map(([, range]) => range);
  const name = "'Head &amp; pot'!";
  expect(ranges).toEqual([
    `${name}$B$1`,
    `${name}$D$2:$D$4`,
    `${name}$B$2:$B$4`,
    `${name}$C$1`,
    `${name}$D$2:$D$4`,
    `${name}$C$2:$C$4`,
    `${name}$B$1`,
    `${name}$D$2:$D$4`,
    `${name}$B$2:$B$4`,
  ]);
  const names = [...chart.matchAll(/<c:v>([^<]*)<\/c:v>/g)].map(([, text]) => text);
  expect(names).toEqual(['head_degC', 'rate, to two places', 'head_degC']);
  expect(tags(chart, 'c:idx').map(({ val }) => val)).toEqual(['0', '1', '2']);
  expect(tags(chart, 'a:prstDash').map(({ val }) => val)).toEqual(['solid', 'dash', 'sysDot']);
  expect(new Set(tags(chart, 'a:srgbClr').map(({ val }) => val)).size).toBe(3);
  const other = parts['xl/charts/chart2.xml'] ?? '';
  expect(other).toContain("'Pupils'' own'!$AA$2:$AA$2");
  // The fourth line begins the looks anew.
  expect(tags(other, 'a:prstDash').map(({ val }) => val)).toEqual([
    'solid',
    'dash',
    'sysDot',
    'solid',
  ]);
});

test('the axes of a chart cross each other in pairs, and one of the two along the bottom is hidden', async () => {
  const parts = await written(first, third);
  const axes = (number: number) =>
    [...(parts[`xl/charts/chart${number}.xml`] ?? '').matchAll(/<c:valAx>(.*?)<\/c:valAx>/g)].map(
      ([, xml = '']) => {
        const of = (name: string) => tags(xml, name)[0]?.val;
        return [
          'c:axId',
          'c:delete',
          'c:axPos',
          'c:crossAx',
          'c:crosses',
          'c:tickLblPos',
          'c:orientation',
        ]
          .map(of)
          .join(' ');
      },
    );
  expect([axes(1), axes(2)]).toEqual([
    [
      '1 0 b 2 min low minMax',
      '2 0 l 1 min low minMax',
      '3 1 b 4 min low minMax',
      '4 0 r 3 max high minMax',
    ],
    ['1 0 b 2 min low minMax', '2 0 l 1 min low minMax'],
  ]);
  const lines = (parts['xl/charts/chart1.xml'] ?? '').match(/<c:majorGridlines\/>/g);
  expect(lines).toHaveLength(1);
});

test('a chart lies beside the columns of its sheet', async () => {
  const parts = await written(first, second);
  const drawing = parts['xl/drawings/drawing1.xml'] ?? '';
  const places = [...drawing.matchAll(/<xdr:(col|row)>(\d+)</g)].map(
    ([, what, at]) => `${what} ${at}`,
  );
  expect(places).toEqual(['col 5', 'row 1', 'col 15', 'row 24']);
  expect(tags(drawing, 'xdr:cNvPr')[0]?.name).toBe('A &lt;run&gt;');
  expect(tags(parts['xl/worksheets/sheet1.xml'] ?? '', 'drawing')).toEqual([{ 'r:id': 'rId1' }]);
  expect(parts['xl/worksheets/sheet2.xml']).not.toContain('<drawing');
});

test('columns are counted in letters as spreadsheets count them', () => {
  expect([0, 25, 26, 51, 52, 701, 702].map(columnLetters)).toEqual([
    'A',
    'Z',
    'AA',
    'AZ',
    'BA',
    'ZZ',
    'AAA',
  ]);
});
