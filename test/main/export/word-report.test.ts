import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type PrintedDocument, studyRun } from '#shared-core';
import { writeWord } from '../../../main/export/word/write-word.ts';
import { markingSheetOf, worksheetOf } from '../../../shared-core/report/distillation-sheets.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import { pearRun } from '../../shared-core/report/support/pear-run.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'word-'));
afterAll(() => rmSync(folder, { recursive: true }));

const createdMs = Date.UTC(2026, 2, 20, 8, 30);
const study = studyRun(pearRun().run);
const documents: readonly (readonly [string, PrintedDocument])[] = [
  ['report', reportOf([study])],
  ['worksheet', worksheetOf(study, 'undergraduate')],
  ['marking sheet', markingSheetOf(study, 'school')],
];

const nameOf = (title: string, ending: string) =>
  path.join(folder, `${title.replace(' ', '-')}.${ending}`);

/** All of them opened in LibreOffice Writer and kept as flat XML: it takes long to start. */
beforeAll(async () => {
  for (const [title, printed] of documents) {
    writeFileSync(nameOf(title, 'docx'), await writeWord(printed, createdMs));
  }
  execFileSync(
    'soffice',
    [
      '--headless',
      `-env:UserInstallation=file://${path.join(folder, 'profile')}`,
      ...['--convert-to', 'fodt', '--outdir', folder],
      ...documents.map(([title]) => nameOf(title, 'docx')),
    ],
    { stdio: 'pipe', timeout: 170_000 },
  );
});

const unescaped = (text: string) =>
  text
    .replace(/<text:s\b[^>]*\/>/g, ' ')
    .replace(/<[^>]+>/g, '')
    .replace(/&quot;/g, '"')
    .replace(/&apos;/g, "'")
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&amp;/g, '&');
const plain = (text: string) => text.replace(/[\s\u00a0]+/g, '');

/** Every word of a document, in pieces as they stand on its pages. */
function wordsOf({ title, subtitle, blocks }: PrintedDocument): readonly string[] {
  const inBlocks = blocks.flatMap((block): readonly string[] => {
    switch (block.kind) {
      case 'table':
        return [
          block.caption,
          ...block.columns.map((column) => column.title),
          ...block.rows.flat(),
        ];
      case 'list':
        return block.items;
      case 'figure':
        return [block.caption, block.drawing.altText];
      case 'question':
        return [block.title];
      case 'answer-lines':
      case 'page-break':
        return [];
      default:
        return [block.text];
    }
  });
  return [title, subtitle, ...inBlocks];
}

test.each(documents)(
  'a word processor finds every word, table, figure and heading of the %s',
  (title, printed) => {
    const xml = readFileSync(nameOf(title, 'fodt'), 'utf8');
    const text = plain(unescaped(xml));
    const count = (pattern: RegExp) => xml.match(pattern)?.length ?? 0;
    const ofKind = (kind: string) => printed.blocks.filter((block) => block.kind === kind).length;
    expect({
      missing: wordsOf(printed).filter((words) => !text.includes(plain(words))),
      tables: count(/<table:table /g),
      figures: count(/<draw:image/g),
      headings: count(/<text:h /g),
    }).toEqual({
      missing: [],
      tables: ofKind('table'),
      figures: ofKind('figure'),
      headings: ofKind('heading') + ofKind('question'),
    });
  },
);

test('the same document gives the same bytes, whenever it is written', async () => {
  const printed = worksheetOf(study, 'undergraduate');
  const first = await writeWord(printed, createdMs);
  expect(Buffer.from(await writeWord(printed, createdMs)).equals(Buffer.from(first))).toBe(true);
});
