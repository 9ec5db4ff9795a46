import { strFromU8, unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import type { Block, Drawing } from '#shared-core';
import { writeWord } from '../../../../main/export/word/write-word.ts';

const createdMs = Date.UTC(2026, 2, 20, 8, 30);
const drawing: Drawing = { widthPt: 100, heightPt: 50, altText: 'A square', shapes: [] };
/** A picture of one grey dot. */
const dot = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==',
  'base64',
);

async function written(...blocks: readonly Block[]) {
  const printed = { title: 'Pear', subtitle: 'A run', footer: 'Lab 7', blocks };
  const rendered: Drawing[] = [];
  const bytes = await writeWord(printed, createdMs, async (one) => {
    rendered.push(one);
    return dot;
  });
  const parts = Object.fromEntries(
    Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]),
  );
  const body = parts['word/document.xml'] ?? '';
  return { parts, body, rendered, paragraphs: paragraphsOf(body) };
}

const textOf = (xml: string) =>
  [...xml.matchAll(/<w:t(?: [^>]*)?>([^<]*)/g)].map(([, text]) => text).join('');

/** Each paragraph: its style, what it says, and whether it stays with the next. */
const paragraphsOf = (xml: string) =>
  [...xml.matchAll(/<w:p>(.*?)<\/w:p>/g)].map(([, inner = '']) =>
    [
      /<w:pStyle w:val="([^"]*)"/.exec(inner)?.[1] ?? '-',
      /<w:keepNext\/>/.test(inner) ? 'keep' : '-',
      textOf(inner),
    ].join(' '),
  );
/** Behind title and subtitle. */
const afterTitle = (paragraphs: readonly string[]) => paragraphs.slice(2);

test('title, subtitle and foot stand on it, and it is dated by whoever asks', async () => {
  const { parts, paragraphs } = await written();
  expect(paragraphs).toEqual(['Title - Pear', '- - A run']);
  const foot =
    Object.entries(parts).find(([name]) => /word\/footer\d*\.xml$/.test(name))?.[1] ?? '';
  expect(textOf(foot)).toContain('Lab 7');
  expect(foot).toMatch(/<w:jc w:val="center"\/>/);
  expect(foot).toMatch(/PAGE/);
  const core = parts['docProps/core.xml'] ?? '';
  expect(core.match(/2026-03-20T08:30:00\.000Z/g)).toHaveLength(2);
  expect(core).toContain('<dc:title>Pear</dc:title>');
  expect(core).toContain('<dc:creator>Still Head Monitor</dc:creator>');
  // A4 with margins of 20 mm.
  const body = parts['word/document.xml'] ?? '';
  expect(body).toMatch(/<w:pgSz w:w="11906" w:h="16838"/);
  expect(body).toMatch(/<w:pgMar w:top="1134" w:right="1134" w:bottom="1134" w:left="1134"/);
});

test('headings, questions, cautions and captions are known by their styles; headings stay with what follows', async () => {
  const { paragraphs, parts } = await written(
    { kind: 'heading', level: 1, text: 'First' },
    { kind: 'heading', level: 2, text: 'Second' },
    { kind: 'question', number: 1, title: 'Why?', marks: 2 },
    { kind: 'paragraph', text: 'Words' },
    { kind: 'caution', text: 'Hot' },
  );
  const [one = '', two = '', three = '', ...others] = afterTitle(paragraphs);
  expect([one, two, others]).toEqual([
    'Heading1 keep First',
    'Heading2 keep Second',
    ['- - Words', 'still-caution - Hot'],
  ]);
  expect(three).toMatch(/^Heading3 keep .*Why\?/);
  const styles = parts['word/styles.xml'] ?? '';
  const level = (style: string) =>
    new RegExp(`w:styleId="${style}".*?<w:outlineLvl w:val="(\\d)"`).exec(styles)?.[1];
  expect(['Heading1', 'Heading2', 'Heading3'].map(level)).toEqual(['0', '1', '2']);
  const caution = /w:styleId="still-caution".*?<\/w:style>/.exec(styles)?.[0] ?? '';
  expect(caution).toMatch(/<w:left w:val="single"/);
});

test('lists are lists: each that is numbered begins at 1', async () => {
  const items = ['one', 'two'];
  const { body } = await written(
    { kind: 'list', ordered: true, items },
    { kind: 'list', ordered: true, items },
    { kind: 'list', ordered: false, items },
  );
  const numbers = [...body.matchAll(/<w:numId w:val="([^"]*)"/g)].map(([, id]) => id);
  expect([numbers.length, new Set(numbers).size]).toEqual([6, 3]);
  expect([numbers[0], numbers[2], numbers[4]]).toEqual([numbers[1], numbers[3], numbers[5]]);
});

const columns = [
  { title: 'What', align: 'start', width: 1 },
  { title: 'How much', align: 'end', width: 1 },
] as const;
const table = (rows: number, titles = true): Block => ({
  kind: 'table',
  caption: 'Table 1',
  columns: titles ? columns : columns.map((column) => ({ ...column, title: '' })),
  rows: Array.from({ length: rows }, (_, row) => [`row ${row}`, `${row} mL`]),
});

test('a table has its caption above it and titles that come again on each page, shaded and bold', async () => {
  const { body, paragraphs } = await written(table(2));
  expect(afterTitle(paragraphs).map((text) => text.replaceAll('\u00a0', ' '))).toEqual([
    'still-caption keep Table 1',
    '- keep What',
    '- keep How much',
    '- keep row 0',
    '- keep 0 mL',
    '- - row 1',
    '- - 1 mL',
    '- - ',
  ]);
  const rows = [...body.matchAll(/<w:tr>(.*?)<\/w:tr>/g)].map(([, xml = '']) => xml);
  const marks = rows.map((xml) =>
    [/<w:tblHeader\/>/, /<w:shd [^>]*w:fill="EEEEEE"/, /<w:b\/>/, /<w:cantSplit\/>/].map((mark) =>
      mark.test(xml),
    ),
  );
  expect(marks).toEqual([
    [true, true, true, true],
    [false, false, false, true],
    [false, false, false, true],
  ]);
  const sides = [...(rows[1] ?? '').matchAll(/<w:jc w:val="(\w+)"/g)].map(([, side]) => side);
  expect(sides).toEqual(['start', 'end']);
  const widths = [...body.matchAll(/<w:gridCol w:w="(\d+)"/g)].map(([, width]) => Number(width));
  expect(widths).toEqual([4819, 4819]);
});

test('a table without titles has none, and one of more than fourteen rows may go on overleaf', async () => {
  const { body } = await written(table(3, false));
  expect(body).not.toMatch(/<w:tblHeader\/>/);
  expect(body.match(/<w:tr>/g)).toHaveLength(3);
  const kept = async (rows: number) =>
    (await written(table(rows))).paragraphs.filter((text) => /keep (row|\d)/.test(text)).length;
  expect([await kept(14), await kept(15)]).toEqual([26, 0]);
});

test('a figure is a picture with its words, its caption under it, as wide as the page at most', async () => {
  const broad = { ...drawing, widthPt: 1000, heightPt: 500 };
  const { body, paragraphs, rendered } = await written(
    { kind: 'figure', drawing, caption: 'Figure 1' },
    { kind: 'figure', drawing: broad, caption: 'Figure 2' },
  );
  expect(rendered).toEqual([drawing, broad]);
  expect(afterTitle(paragraphs)).toEqual([
    '- keep ',
    'still-caption - Figure 1',
    '- keep ',
    'still-caption - Figure 2',
  ]);
  const sizes = [...body.matchAll(/<wp:extent cx="(\d+)" cy="(\d+)"/g)].map(([, width, height]) => [
    Number(width) / 12_700,
    Number(height) / 12_700,
  ]);
  // In points: as it was drawn, and the 481.9 pt between the margins.
  expect(sizes[0]?.map(Math.round)).toEqual([100, 50]);
  expect(sizes[1]?.[0]).toBeCloseTo(481.9, 0);
  expect(sizes[1]?.[1]).toBeCloseTo(240.95, 0);
  expect(body).toMatch(/descr="A square"/);
});

test('lines to write on are lines, and a page ends where it is told to', async () => {
  const { body, paragraphs } = await written(
    { kind: 'answer-lines', count: 3 },
    { kind: 'page-break' },
  );
  expect(afterTitle(paragraphs)).toHaveLength(4);
  const borders = [...body.matchAll(/<w:pBdr>(.*?)<\/w:pBdr>/g)].map(([, xml = '']) =>
    [...xml.matchAll(/<w:(\w+) w:val="single"/g)]
      .map(([, side]) => side)
      .sort()
      .join(' '),
  );
  expect(borders).toEqual(Array(3).fill('between bottom'));
  expect(body.match(/<w:pageBreakBefore\/>/g)).toHaveLength(1);
});
