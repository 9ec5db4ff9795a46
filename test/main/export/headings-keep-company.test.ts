import { expect, test } from 'vitest';
import { type Block, type Drawing, type PrintedDocument, studyRun } from '#shared-core';
import { printDocument } from '../../../main/export/print/print-document.ts';
import {
  keyOf,
  markingSheetOf,
  worksheetOf,
} from '../../../shared-core/report/distillation-sheets.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import { carefulRun } from '../../shared-core/exercises/support/varied-runs.ts';
import { pearRun } from '../../shared-core/report/support/pear-run.ts';

/** What stands on the pages in its order, by the structure that screen readers go through. */
async function printedParts(document: PrintedDocument): Promise<readonly [string, string][]> {
  const text = Buffer.from(await printDocument(document, 0)).toString('latin1');
  return [...text.matchAll(/\/S \/(\w+)\n[^>]*?\/Pg (\d+) 0 R/g)].map(([, kind, page]) => [
    kind ?? '',
    page ?? '',
  ]);
}

/** Headings, and captions of tables, that stand on another page than what they stand over. */
async function leftAlone(document: PrintedDocument): Promise<readonly string[]> {
  const parts = await printedParts(document);
  expect(parts.length).toBeGreaterThan(3);
  return parts.flatMap(([kind, page], at) => {
    const [next, nextPage] = parts[at + 1] ?? ['nothing', ''];
    const isHead = /^H\d$/.test(kind) || (kind === 'Caption' && next === 'TH');
    return isHead && nextPage !== page ? [`${kind} before ${next} at ${at}`] : [];
  });
}

const { run } = pearRun();
const studies = [
  studyRun(run),
  studyRun(
    carefulRun(
      {
        rig: 'simpleHead',
        volumeMl: 250,
        abv: 11,
        pressureKPa: 99.4,
        limitAbv: 60,
        easedW: 60,
        lateS: 60,
      },
      6,
    ),
  ),
];

test.each(['school', 'undergraduate'] as const)(
  'no heading of a report, a worksheet or a key for %s is left alone at the foot of a page',
  async (level) => {
    const documents = [
      reportOf(studies),
      ...studies.flatMap((study) => [
        reportOf([study]),
        worksheetOf(study, level),
        markingSheetOf(study, level),
        keyOf(study),
      ]),
    ];
    expect((await Promise.all(documents.map(leftAlone))).flat()).toEqual([]);
  },
);

const drawing: Drawing = {
  widthPt: 400,
  heightPt: 220,
  altText: 'A square',
  shapes: [],
};
const columns = [{ title: 'A', align: 'start', width: 1 }] as const;
const under: readonly (readonly [string, readonly Block[]])[] = [
  ['a figure', [{ kind: 'figure', drawing, caption: 'A figure.' }]],
  [
    'a short table',
    [{ kind: 'table', caption: 'Table 1', columns, rows: Array(7).fill(['row']) as string[][] }],
  ],
  [
    'another heading and a list',
    [
      { kind: 'heading', level: 2, text: 'Second' },
      { kind: 'list', ordered: false, items: ['a word or two '.repeat(60), 'another'] },
    ],
  ],
  [
    'a question',
    [
      { kind: 'question', number: 1, title: 'Why?', marks: 2 },
      { kind: 'paragraph', text: 'Say why.' },
    ],
  ],
];

test.each(under)('wherever it falls, a heading stands on the page of %s', async (_, blocks) => {
  for (let lines = 20; lines < 48; lines += 1) {
    const filler = Array.from(
      { length: lines },
      (): Block => ({ kind: 'paragraph', text: 'Line' }),
    );
    const heading: Block = { kind: 'heading', level: 1, text: 'First' };
    const document = {
      title: 'T',
      subtitle: 'S',
      footer: '',
      blocks: [...filler, heading, ...blocks],
    };
    expect([lines, await leftAlone(document)]).toEqual([lines, []]);
  }
});
