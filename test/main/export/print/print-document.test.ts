import { inflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import type { Block, Drawing } from '#shared-core';
import { printDocument } from '../../../../main/export/print/print-document.ts';

const margin = 56.6;
const pageWidth = 595.28;

/** A document as it is printed: what screen readers go through, and what each page draws, operator by operator. */
async function printed(...blocks: readonly Block[]) {
  const document = { title: 'Pear', subtitle: 'A run', footer: 'Lab 7', blocks };
  const bytes = Buffer.from(await printDocument(document, 0)).toString('latin1');
  const kinds = [...bytes.matchAll(/\/S \/(\w+)\n/g)].map(([, kind = '']) => kind);
  const pages = [...bytes.matchAll(/stream\n([\s\S]*?)\nendstream/g)].flatMap(([, data = '']) => {
    try {
      const text = inflateSync(Buffer.from(data, 'latin1')).toString('latin1');
      return / Tm\n/.test(text) ? [text] : [];
    } catch {
      return [];
    }
  });
  return { bytes, kinds, pages };
}

/** Behind the title, and before the foot, of the first page. */
const drawn = ([page = '']: readonly string[]) => page;
const numbers = (text: string) => text.trim().split(/\s+/).map(Number);
/** Where texts begin, in the order in which they are drawn. */
const textsAt = (page: string) =>
  [...page.matchAll(/1 0 0 1 (\S+ \S+) Tm/g)].map(([, at = '']) => numbers(at));
const lineWidths = (page: string) =>
  [...page.matchAll(/^(\S+) w$/gm)].map(([, width]) => Number(width));

const figure = (shapes: Drawing['shapes'], caption = 'A figure.'): Block => ({
  kind: 'figure',
  drawing: { widthPt: 400, heightPt: 100, altText: 'A square', shapes },
  caption,
});
const table = (rows: number, titles = true): Block => ({
  kind: 'table',
  caption: 'Table 1',
  columns: [
    { title: titles ? 'What' : '', align: 'start', width: 1 },
    { title: titles ? 'Much' : '', align: 'end', width: 1 },
  ],
  rows: Array.from({ length: rows }, (_, row) => [`row ${row}`, `${row}`]),
});

const counted = (kinds: readonly string[]) => {
  const known = [
    'H1',
    'H2',
    'H3',
    'P',
    'L',
    'LI',
    'LBody',
    'Table',
    'Caption',
    'TR',
    'TH',
    'TD',
    'Figure',
  ];
  return Object.fromEntries(
    known
      .map((kind) => [kind, kinds.filter((each) => each === kind).length] as const)
      .filter(([, count]) => count > 0),
  );
};

test('each piece of a document is to a screen reader what it is', async () => {
  const only = async (block: Block) => {
    const before = counted((await printed()).kinds);
    const after = counted((await printed(block)).kinds);
    return Object.fromEntries(
      Object.entries(after)
        .map(([kind, count]) => [kind, count - (before[kind] ?? 0)] as const)
        .filter(([, count]) => count !== 0),
    );
  };
  expect(counted((await printed()).kinds)).toEqual({ H1: 1, P: 1 });
  expect([
    await only({ kind: 'heading', level: 1, text: 'One' }),
    await only({ kind: 'heading', level: 2, text: 'Two' }),
    await only({ kind: 'question', number: 1, title: 'Why?', marks: 2 }),
    await only({ kind: 'paragraph', text: 'Words' }),
    await only({ kind: 'caution', text: 'Hot' }),
    await only({ kind: 'list', ordered: true, items: ['a', 'b'] }),
    await only(table(2)),
    await only(table(2, false)),
    await only(figure([])),
    await only(figure([], '')),
    await only({ kind: 'answer-lines', count: 3 }),
  ]).toEqual([
    { H1: 1 },
    { H2: 1 },
    { H3: 1 },
    { P: 1 },
    { P: 1 },
    { L: 1, LI: 2, LBody: 2 },
    { Table: 1, Caption: 1, TR: 3, TH: 4, TD: 2 },
    { Table: 1, Caption: 1, TR: 2, TH: 2, TD: 2 },
    { Figure: 1, Caption: 1 },
    { Figure: 1 },
    {},
  ]);
});

test('a figure has its words, and what it is, its title, its language and its version are told', async () => {
  const { bytes } = await printed(figure([]));
  expect(bytes).toMatch(/^%PDF-1\.5/);
  expect(bytes).toContain('/Alt (A square)');
  expect(bytes).toMatch(/\/Lang \(en\)/);
  const [, title] = /\/Title (\d+) 0 R/.exec(bytes) ?? [];
  expect(bytes).toContain(`\n${title} 0 obj\n(Pear)`);
  expect(bytes).toMatch(/\/DisplayDocTitle true/);
  // As wide as it was drawn.
  expect(bytes).toMatch(/\/BBox \[56\.6 \S+ 456\.6 /);
  expect((await printed(table(1))).bytes).toMatch(/\/Scope \/Column/);
});

const text = (anchor: 'start' | 'middle' | 'end', upright = false): Drawing['shapes'][number] => ({
  kind: 'text',
  at: [100, 50],
  text: 'Kopf',
  sizePt: 9,
  colour: '#17152b',
  anchor,
  upright,
});

test('the words of a drawing begin, stand about or end where they are to', async () => {
  const xOf = async (anchor: 'start' | 'middle' | 'end') => {
    const before = textsAt(drawn((await printed(figure([]))).pages));
    const after = textsAt(drawn((await printed(figure([text(anchor)]))).pages));
    expect(after.length).toBe(before.length + 1);
    // Behind title and subtitle.
    return after[2]?.[0] ?? Number.NaN;
  };
  const [start, middle, end] = [await xOf('start'), await xOf('middle'), await xOf('end')];
  expect(start).toBe(100);
  expect(start - middle).toBeGreaterThan(5);
  expect(start - end).toBeCloseTo(2 * (start - middle), 2);
});

test('upright words are turned by a right angle, and others are not', async () => {
  const turns = async (upright: boolean) =>
    (
      drawn((await printed(figure([text('start', upright)]))).pages).match(
        /^0 -1 1 0 \S+ \S+ cm$|^0 1 -1 0 \S+ \S+ cm$/gm,
      ) ?? []
    ).length;
  expect([await turns(false), await turns(true)]).toEqual([0, 1]);
});

test('lines of a drawing are drawn, closed, dashed and filled as they say', async () => {
  const path = (more: object): Drawing['shapes'][number] => ({
    kind: 'path',
    points: [
      [10, 10],
      [20, 10],
      [20, 20],
    ],
    closed: false,
    ...more,
  });
  const stroke = { colour: '#882255', widthPt: 1.25 };
  const drawing = async (...shapes: Drawing['shapes']) =>
    drawn((await printed(figure(shapes))).pages);
  const open = await drawing(path({ stroke }));
  expect(open).toMatch(/10 10 m\n20 10 l\n20 20 l\n/);
  expect(open).toMatch(/^1\.25 w$/m);
  expect(open).not.toMatch(/^h$/m);
  expect(await drawing(path({ stroke, closed: true }))).toMatch(/^h$/m);
  expect(await drawing(path({ stroke: { ...stroke, dash: [4, 2] } }))).toMatch(/\[4 2\] 0 d/);
  const last = (page: string) => /20 20 l\n(?:[\s\S]*?)^(S|f|B)$/m.exec(page)?.[1];
  expect([
    last(open),
    last(await drawing(path({ fill: '#eeeeee' }))),
    last(await drawing(path({ fill: '#eeeeee', stroke }))),
  ]).toEqual(['S', 'f', 'B']);
  expect(await drawing(path({ points: [], stroke }))).not.toMatch(/^1\.25 w$/m);
});

test('a drawing broader than the page is made as narrow as it, and no other is', async () => {
  const scales = async (widthPt: number) => {
    const { pages } = await printed({
      kind: 'figure',
      drawing: { widthPt, heightPt: 10, altText: '', shapes: [] },
      caption: '',
    });
    const matrices = [...drawn(pages).matchAll(/^(\S+) 0 0 (\S+) 0 0 cm$/gm)];
    return matrices.map(([, x]) => Number(x));
  };
  expect(await scales(400)).toEqual([]);
  const [scale = 0] = await scales(1000);
  expect(scale).toBeCloseTo((pageWidth - 2 * margin) / 1000, 4);
});

test('cells of a column that ends at the right do, and titles have the stronger rule under them', async () => {
  const { pages } = await printed(table(2));
  const texts = textsAt(drawn(pages)).slice(3);
  const half = margin + (pageWidth - 2 * margin) / 2;
  // What, Much, row 0, 0, row 1, 1.
  const [what, much, row, nought] = texts.map(([x = 0]) => x);
  expect([what, row]).toEqual([margin + 4, margin + 4]);
  expect(much).toBeGreaterThan(half + 4);
  expect(nought).toBeGreaterThan((much ?? 0) + 10);
  expect(lineWidths(drawn(pages)).filter((width) => width === 0.9 || width === 0.4)).toEqual([
    0.9, 0.4, 0.4,
  ]);
});

test('a table has titles as soon as one of its columns has', async () => {
  const { kinds } = await printed({
    ...table(1),
    columns: [
      { title: '', align: 'start', width: 1 },
      { title: 'Much', align: 'end', width: 1 },
    ],
  } as Block);
  expect(counted(kinds)).toMatchObject({ TR: 2, TH: 3, TD: 1 });
});

test('a long table goes on overleaf with its titles again, which are read out once, and never with its last row alone', async () => {
  const { pages, kinds } = await printed(table(120));
  expect(pages.length).toBeGreaterThan(1);
  const strong = pages.map((page) => lineWidths(page).filter((width) => width === 0.9).length);
  expect(strong).toEqual(pages.map(() => 1));
  expect(counted(kinds)).toMatchObject({ TR: 121, TH: 122, TD: 120 });
  for (let rows = 30; rows < 46; rows += 1) {
    const { pages: some } = await printed(table(rows));
    const last = some.at(-1) ?? '';
    const under = lineWidths(last).filter((width) => width === 0.4).length;
    expect([rows, some.length === 1 || under >= 2]).toEqual([rows, true]);
  }
});

test('lines to write on stand below each other within the page, and go on overleaf', async () => {
  const { pages } = await printed({ kind: 'answer-lines', count: 70 });
  const heights = pages.map((page) =>
    [...page.matchAll(/56\.6 (\S+) m\n538\.68 \1 l/g)].map(([, y]) => Number(y)),
  );
  expect(heights.flat()).toHaveLength(70);
  for (const page of heights) {
    expect(Math.max(...page)).toBeLessThanOrEqual(841.89 - 60);
    const gaps = page.slice(1).map((y, index) => Math.round(y - (page[index] ?? 0)));
    expect(new Set(gaps)).toEqual(new Set([22]));
  }
  expect(heights.slice(0, -1).every((page) => page.length > 25)).toBe(true);
});

test('a page ends where it is told to, unless it has just begun', async () => {
  const pageBreak: Block = { kind: 'page-break' };
  const words: Block = { kind: 'paragraph', text: 'Words' };
  const count = async (...blocks: readonly Block[]) => (await printed(...blocks)).pages.length;
  expect([
    await count(words),
    await count(pageBreak, words),
    await count(pageBreak, pageBreak, words),
  ]).toEqual([1, 2, 2]);
});
