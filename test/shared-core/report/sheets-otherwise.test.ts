import { describe, expect, test } from 'vitest';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import {
  groupSheetsOf,
  markingSheetOf,
  worksheetOf,
} from '../../../shared-core/report/distillation-sheets.ts';
import { key, markingSheet, type SheetRun, worksheet } from '../../../shared-core/report/sheets.ts';
import type { RunStudy } from '../../../shared-core/study/study-run.ts';
import { plainByVolume } from '../by-volume/support/plain-by-volume.ts';
import { plainReport } from './support/plain-report.ts';
import { printedBlocks, printedPage } from './support/printed-page.ts';

const run = plainReport();
const figuresOf = (lines: readonly string[]) => lines.filter((line) => line.startsWith('<'));

test('a marking sheet has each question with its answer, the way to it and the solved drawing', () => {
  const lines = printedPage(markingSheetOf(run, 'school'));
  expect(lines[0]).toBe(
    'Marking sheet: Pear-juice ferment / School level · 19 marks · for the teacher',
  );
  const [from, to] = [
    lines.indexOf('1. Read the plateau [3]'),
    lines.indexOf('2. What happened when? [4]'),
  ];
  const [first] = exercisesOf(run, 'school');
  expect(lines.slice(from + 1, to)).toEqual([
    first?.question,
    '- Up to 82.7 °C the vapour here holds at least 80 % vol.',
    '- The heat was taken off at 1:05:00.',
    'Marks: temperature 2, length 1.',
    '! Answer: temperature 78.4~°C (accept ±0.3~°C); length 35~min (accept ±9~min)',
    '1. A ruler laid along the flat part reads 78.4 °C; the record’s mean over it is the same.',
    '2. It lasts from 0:15:00 to 0:50:00.',
    '<>',
  ]);
  expect(lines.slice(1, 5)).toEqual([
    '## Cautions',
    expect.stringMatching(/^! Strength from the head temperature is an estimate/),
    expect.stringMatching(/^! Nobody drinks/),
    '<The run with stages and plateau band.>',
  ]);
  expect(lines.filter((line) => /^_/.test(line))).toEqual([]);
  expect(lines.at(-1)).toMatch(
    /^\(Still Head Monitor 0\.1\.0 · monitor model 1 · equilibrium model/,
  );
});

test('a worksheet draws the curve without the tool’s judgement, and what there is to draw on unsolved', () => {
  const drawings = (blocks: ReturnType<typeof worksheetOf>['blocks']) =>
    blocks.flatMap((block) => (block.kind === 'figure' ? [JSON.stringify(block.drawing)] : []));
  const asked = drawings(worksheetOf(run, 'school').blocks);
  const solved = drawings(markingSheetOf(run, 'school').blocks);
  expect([asked.length, solved.length]).toEqual([2, 2]);
  expect(asked.map((drawing, index) => drawing.length < (solved[index]?.length ?? 0))).toEqual([
    true,
    true,
  ]);
});

test('the sheets of a class begin a page each, with the numbers of each group', () => {
  const other: RunStudy = { ...run, name: 'Second' };
  const document = groupSheetsOf([run, other], 'school');
  const lines = printedPage(document);
  expect(lines[0]).toBe(
    'Worksheets of 2 groups / School level · each group has the numbers of its own run',
  );
  const starts = lines.flatMap((line, index) => (line.startsWith('# Group') ? [index] : []));
  expect(starts.map((at) => lines.slice(at - 1, at + 2))).toEqual([
    [
      lines[0],
      '# Group 1: Pear-juice ferment',
      '19 marks · Name ____________________  Date ____________',
    ],
    ['=====', '# Group 2: Second', '19 marks · Name ____________________  Date ____________'],
  ]);
  const ofOne = printedBlocks(worksheetOf(run, 'school').blocks);
  expect(lines.slice(3, 3 + ofOne.length)).toEqual(ofOne);
  expect(lines.filter((line) => line === '=====')).toHaveLength(1);
});

describe('a sheet on which nothing can be asked', () => {
  const bare: SheetRun = {
    name: 'Bare',
    footer: 'foot',
    cautions: 'worksheet',
    curves: () => [],
    exercises: () => [],
  };
  const told =
    'There is no question at this level: too little of this run was measured to ask for.';

  test('says so, and is no question of its key', () => {
    expect(printedPage(worksheet(bare, 'undergraduate')).slice(-2)).toEqual([told, '(foot)']);
    expect(printedPage(markingSheet(bare, 'undergraduate')).slice(-2)).toEqual([told, '(foot)']);
    expect(printedPage(worksheet(bare, 'undergraduate'))[0]).toMatch(
      /^Worksheet: Bare \/ Undergraduate level · 0 marks · Name/,
    );
    expect(printedPage(key(bare))).toEqual([
      'Key: Bare / For the teacher: answers, what to accept, marks part by part',
      '(foot)',
    ]);
    expect(printedPage(worksheetOf(run, 'school'))).not.toContain(told);
    expect(printedPage(markingSheetOf(run, 'school'))).not.toContain(told);
  });
});

describe('the curve of a sheet', () => {
  const byVolume = plainByVolume([
    [0, 78],
    [20, 80],
    [40, 82],
  ]);
  const captions = (study: RunStudy) => [
    figuresOf(printedPage(worksheetOf(study, 'school')))[0],
    figuresOf(printedPage(markingSheetOf(study, 'school')))[0],
  ];

  test('says where its readings come from', () => {
    expect(captions({ ...run, imported: true })).toEqual([
      '<Head temperature of the run, as imported from another logger.>',
      '<The run with stages and plateau band.>',
    ]);
  });

  test('of a table is one over the volume, of any other run one over time', () => {
    expect(captions({ ...run, byVolume })).toEqual([
      '<Head temperature against the volume of distillate, as the table gives it.>',
      '<The head against the volume of distillate, with what a simple still would show.>',
    ]);
    expect(captions({ ...run, byVolume: { ...byVolume, basis: 'booked' } })[0]).toBe(
      '<Head temperature of the run, as recorded.>',
    );
  });
});
