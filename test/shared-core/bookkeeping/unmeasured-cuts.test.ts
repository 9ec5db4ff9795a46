import { describe, expect, test } from 'vitest';
import { defaultRunSettings, type MarkBody, studyRun } from '#shared-core';
import { balanceEthanol } from '../../../shared-core/exercises/balance-question.ts';
import { ethanolFigure } from '../../../shared-core/figures/ethanol-figure.ts';
import { bookTables } from '../../../shared-core/report/book-tables.ts';
import { fromFermentTable } from '../../../shared-core/report/from-ferment-blocks.ts';
import { runBlocks } from '../../../shared-core/report/report-of-run.ts';
import { pearOrigin } from '../../support/pear-origin.ts';

const liquid = (name: string, volumeMl: number, abv: number | null): readonly MarkBody[] => [
  { type: 'liquid-volume', liquid: name, volumeMl, temperatureC: 20 },
  ...(abv === null ? [] : [{ type: 'liquid-label', liquid: name, alcoholByVolume: abv } as const]),
];
const changed: MarkBody = { type: 'receiver-changed', volumeMl: null };

/** 350 mL of 9 % vol from a ferment; a first receiver, a main one and the residue. */
function studyWith(first: readonly MarkBody[]) {
  const marks = [changed, ...first, ...liquid('cut-2', 28, 90), ...liquid('residue', 320, 1)];
  return studyRun({
    runId: 'a',
    name: 'Pear',
    startedAtIso: '',
    rehearsal: false,
    settings: {
      ...defaultRunSettings,
      charge: { volumeMl: 350, strengthAbv: 9, standardUncertaintyAbv: 0.2 },
      ferment: pearOrigin,
    },
    appVersion: '0',
    modelVersion: '1',
    inputs: marks.map((mark, index) => ({
      kind: 'mark',
      timeS: 600 + index,
      markId: index + 1,
      mark,
    })),
    endS: 3000,
  });
}
type Study = ReturnType<typeof studyWith>;

/** What is said of the recovery and the balance, wherever it is said. */
const saidOf = (study: Study) => {
  const [, balance] = bookTables(study.books);
  const cells = (name: string) => balance?.rows.find((row) => row[0] === name)?.slice(1);
  const texts = runBlocks(study).flatMap((block) =>
    block.kind === 'list' ? block.items : block.kind === 'paragraph' ? [block.text] : [],
  );
  const has = (words: string) => texts.some((text) => text.includes(words));
  return {
    unmeasured: study.books.unmeasuredCuts,
    closes: cells('Closes within k = 2'),
    recovery: cells('Recovery')?.every((cell) => cell.endsWith(' or more')),
    simple: study.simple !== null,
    rest: /(Missing|Not measured) /.exec(ethanolFigure(study.books)?.altText ?? '')?.[1],
    whole: has('All cuts together: '),
    part: has('Of the cuts only 2 was measured: '),
    doubt: has('What cut 1 held is not known.'),
    stages: has('No stages are counted from the main cut: cut 1 was taken away before it'),
    overall: fromFermentTable(study.books.fromFerment!).rows.at(-1)?.[2]?.endsWith(' or more'),
    yields: texts.some((text) => /^From sugar to product: .* or more\.$/.test(text)),
    missingAsked: balanceEthanol(study)?.question.includes('How many grams are missing?'),
  };
};

describe('a receiver that nobody measured is not one that stayed empty', () => {
  test.each([
    ['neither its amount nor its strength', []],
    ['only its amount', liquid('cut-1', 6, null)],
    ['only its strength', liquid('cut-1', 6, 80).slice(1)],
    ['more than was charged, by a slip of the pen', liquid('cut-1', 600, 80)],
  ])('so recovery and yields are least ones, and no balance is judged: %s', (_, first) => {
    expect(saidOf(studyWith(first))).toEqual({
      unmeasured: [1],
      closes: ['cannot be judged', 'cannot be judged'],
      recovery: true,
      simple: false,
      rest: 'Not measured',
      whole: false,
      part: true,
      doubt: true,
      stages: true,
      overall: true,
      yields: true,
      missingAsked: false,
    });
  });

  test.each([
    ['measured', liquid('cut-1', 3, 80)],
    ['empty, whatever its strength', liquid('cut-1', 0, null)],
  ])('but one that is known is counted: %s', (_, first) => {
    expect(saidOf(studyWith(first))).toMatchObject({
      unmeasured: [],
      closes: ['yes', expect.stringMatching(/yes|no/)],
      recovery: false,
      simple: true,
      whole: true,
      part: false,
      doubt: false,
      stages: false,
      overall: false,
      yields: false,
      missingAsked: true,
    });
  });
});
