import { expect, test } from 'vitest';
import {
  type Block,
  cautionsAt,
  cautionWords,
  defaultRunSettings,
  type MarkBody,
  proofMeaning,
  studyRun,
} from '#shared-core';
import { markingSheetOf, worksheetOf } from '../../../shared-core/report/distillation-sheets.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';

const run = {
  runId: 'a',
  name: 'Pear',
  startedAtIso: '',
  rehearsal: false,
  settings: defaultRunSettings,
  appVersion: '0',
  modelVersion: '1',
  inputs: [],
  endS: 60,
};
const study = studyRun(run);

/** What stands under their heading. */
function cautionsOf(blocks: readonly Block[]): readonly Block[] {
  const under = blocks.slice(headingAt(blocks) + 1);
  const others = under.findIndex(({ kind }) => kind !== 'caution');
  return others === -1 ? under : under.slice(0, others);
}

const headingAt = (blocks: readonly Block[]) =>
  blocks.findIndex((block) => block.kind === 'heading' && block.text === 'Cautions');

test.each([
  ['report', reportOf([study])],
  ['worksheet', worksheetOf(study, 'school')],
  ['worksheet', markingSheetOf(study, 'undergraduate')],
] as const)('a %s says its cautions of the list, and no others', (place, { blocks }) => {
  expect(cautionsOf(blocks)).toEqual(
    cautionsAt(place).map((caution) => ({ kind: 'caution', text: cautionWords(caution) })),
  );
});

test('cautions are never the last thing printed, where they might have a page to themselves', () => {
  for (const { blocks } of [
    reportOf([study]),
    worksheetOf(study, 'school'),
    markingSheetOf(study, 'school'),
  ]) {
    expect(headingAt(blocks)).toBeGreaterThanOrEqual(0);
    expect(blocks.at(-1)?.kind).not.toBe('caution');
  }
});

const confirmed = cautionsAt('proof').map(({ id }) => id);
const burned: MarkBody = {
  type: 'proof-burned',
  cut: 2,
  volumeMl: 0.8,
  seen: 'burned-away',
  role: 'technician',
  confirmed,
};
const late = (markId: number, mark: MarkBody) =>
  ({ kind: 'mark', timeS: 60, markId, mark }) as const;
const textsOf = (lateMarks: readonly ReturnType<typeof late>[]) =>
  reportOf([studyRun({ ...run, lateMarks })]).blocks;

test('a sample burned as proof stands in the report with what was confirmed before, and what it does not show', () => {
  const blocks = textsOf([late(1, burned)]);
  const at = blocks.findIndex(
    (block) => block.kind === 'heading' && block.text === 'Proof by burning a sample',
  );
  expect(blocks.slice(at + 1, at + 5)).toMatchObject([
    { kind: 'table', rows: [['Cut 2', '0.8 mL', 'burned away', 'technician']] },
    { kind: 'paragraph', text: proofMeaning },
    { kind: 'paragraph' },
    { kind: 'list', items: cautionsAt('proof').map(({ act }) => act) },
  ]);
});

test('one that was withdrawn stands nowhere', () => {
  const withdrawn = late(2, { type: 'mark-withdrawn', withdrawnMarkId: 1 });
  expect(JSON.stringify(textsOf([late(1, burned), withdrawn]))).not.toMatch(/burn.* a sample/);
});
