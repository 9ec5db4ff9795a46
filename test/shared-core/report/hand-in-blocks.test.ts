import { describe, expect, test } from 'vitest';
import type { RunStudy } from '#shared-core';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import { plainReport } from './support/plain-report.ts';

const plain = plainReport();
const full: RunStudy = {
  ...plain,
  rows: plain.rows.map((row) => ({ ...row, vapourAbv: { value: 90, low: 88, high: 92 } })),
};
const bare: RunStudy = {
  ...plain,
  plateau: null,
  plates: null,
  product: null,
  simple: null,
  books: { ...plain.books, cuts: [], residue: null, balance: null, ferment: null },
  inputs: [],
};

const headings = (studies: readonly RunStudy[]) =>
  reportOf(studies).blocks.flatMap((block) =>
    block.kind === 'heading' && block.level === 2 ? [block.text] : [],
  );
const listUnder = (studies: readonly RunStudy[], heading: string) => {
  const { blocks } = reportOf(studies);
  const at = blocks.findIndex((block) => block.kind === 'heading' && block.text === heading);
  const list = blocks[at + 1];
  return list?.kind === 'list' ? list.items : [];
};

describe('a report to hand in', () => {
  test('has names, aim and apparatus before its results, and discussion, cautions, method and sources behind', () => {
    expect(reportOf([full]).blocks[0]).toMatchObject({
      text: expect.stringMatching(/^Names _+ {2}Date _+$/),
    });
    const found = headings([full]);
    expect(found.slice(0, 2)).toEqual(['Aim', 'Apparatus']);
    expect(found.slice(-4)).toEqual([
      'Discussion',
      'Cautions',
      'Method and uncertainties',
      'Sources',
    ]);
  });

  test('says once that a rig was not described', () => {
    expect(
      listUnder([bare], 'Apparatus')
        .join(' ')
        .match(/not described/g),
    ).toHaveLength(1);
  });

  test.each([[[full]], [[full, bare]]])(
    'numbers its figures and tables as they stand',
    (studies) => {
      for (const [kind, name] of [
        ['figure', 'Figure'],
        ['table', 'Table'],
      ] as const) {
        const captions = reportOf(studies).blocks.flatMap((block) =>
          block.kind === kind ? [block.caption] : [],
        );
        expect(captions.length).toBeGreaterThan(3);
        expect(captions.map((caption) => /^(\w+ \d+)\. \S/.exec(caption)?.[1])).toEqual(
          captions.map((_, index) => `${name} ${index + 1}`),
        );
      }
    },
  );

  test('says of the rig what was described, or that it was not', () => {
    const { settings } = full;
    const description = '500 mL flask, 20 cm of glass beads';
    const rig = { ...settings.rig, description, plates: 3 };
    const described = { ...full, settings: { ...settings, rig } };
    expect(listUnder([described], 'Apparatus')[0]).toMatch(
      /500 mL flask, 20 cm of glass beads; fractional, 3 plates; .*thermometer/,
    );
    expect(listUnder([full], 'Apparatus')[0]).toMatch(/the rig was not described: name flask/);
  });

  test('asks to discuss only what its data can answer', () => {
    expect(listUnder([full], 'Discussion').join(' ')).toMatch(
      /How far is the plateau.*balance of ethanol close within.*Which reading.*stages/,
    );
    const left = listUnder([bare], 'Discussion').join(' ');
    expect(left).toMatch(/Why did the head show no plateau\?.*can’t be closed/);
    expect(left).not.toMatch(/Which reading|stages/);
  });
});
