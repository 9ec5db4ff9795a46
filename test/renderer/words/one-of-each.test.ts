import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { counted, defaultRunSettings } from '#shared-core';
import { setUpWords } from '../../../renderer/prepare/set-up-words.ts';
import { codeIn } from '../../../scripts/checks/files-in.ts';

const root = path.join(import.meta.dirname, '../../..');
/** What a number that may be one is put before, in a text of the window, the report or the monitor. */
const many =
  /\$?\{[^{}]*\}\s(?:plates|receivers|cuts|runs|marks|readings|pages|probes|ports|ferments|entries|lines|volumes|measurements|points|prompts|changes|files)\b(?!=)/g;
/** Never one, for the reason beside it. */
const atLeastTwo: readonly string[] = [
  'renderer/compare/choose-runs.tsx', // the most that may be laid over each other
  'shared-core/report/report-of.ts', // one run has a title of its own
  'shared-core/figures/overlay-figure.ts', // several runs over each other
  'shared-core/exercises/column-questions.ts', // told with a decimal
  'shared-core/report/report-of-ferment.ts', // the same
  'shared-core/figures/ferment-course-figure.ts', // several ferments over each other
  'shared-core/report/hand-in-blocks.ts', // this run and others
];

/** Their keys are the English sentences, which are looked at where they are said. */
const translations = 'shared-core/wording/languages/';

function plainPlurals(file: string): readonly string[] {
  return readFileSync(path.join(root, file), 'utf8')
    .split('\n')
    .filter(
      (line) =>
        !/^\s*(?:\*|\/\/|\/\*)/.test(line) &&
        !line.includes('=== 1') &&
        !line.includes(', plural,'),
    )
    .flatMap((line) => (line.match(many) ?? []).map((words) => `${file}: ${words}`));
}

test('no text says “1 plates” or the like: what may be one is counted in the form that goes with it', () => {
  const files = codeIn(root, ['renderer', 'shared-core', 'main']).filter(
    (file) => !file.startsWith(translations),
  );
  const found = files.flatMap(plainPlurals);
  expect(found.filter((one) => !atLeastTwo.some((file) => one.startsWith(file)))).toEqual([]);
  expect(atLeastTwo.filter((file) => !found.some((one) => one.startsWith(file)))).toEqual([]);
});

test('one and many, also as they were typed', () => {
  expect([
    counted(1, 'plate'),
    counted('1', 'plate'),
    counted(2.5, 'plate'),
    counted(0, 'run'),
  ]).toEqual(['1 plate', '1 plate', '2.5 plates', '0 runs']);
  const { name, charge, leastStrengthAbv, rig } = { ...defaultRunSettings };
  const kept = { name, charge, leastStrengthAbv, rig: { ...rig, plates: 1 } };
  expect(setUpWords({ ...kept, source: null, correction: null } as never, '.')).toContain(
    ' · 1 plate · ',
  );
});
