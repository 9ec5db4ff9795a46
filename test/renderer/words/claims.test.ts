import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { codeIn } from '../../../scripts/checks/files-in.ts';
import { textsOf } from '../../../scripts/checks/texts.ts';

const root = path.join(import.meta.dirname, '..', '..', '..');

/** Everything in quotes and between tags: what a person may come to read. */
const everyText = codeIn(root, ['shared-core', 'renderer', 'main']).flatMap((file) =>
  textsOf(file, readFileSync(path.join(root, file), 'utf8')).map(({ words }) => words),
);
/** Each once: a catalogue of translations holds the English sentences again. */
const texts = [...new Set(everyText)];
const having = (words: RegExp) =>
  texts.filter((text) => !text.startsWith('./') && words.test(text));

test('nothing is ever called safe', () => {
  expect(having(/\b(safe|safely|harmless|drinkable|no danger)\b/i)).toEqual([
    expect.stringMatching(/Nothing that comes out of this rig becomes drinkable/),
  ]);
});

test('nor is anything called so in German, or pure', () => {
  const german =
    /(?<!\p{L})(gefahrlos|ungefährlich|harmlos|unbedenklich|trinkbar|rein(e[mnrs]?)?)(?!\p{L})/iu;
  expect(having(german)).toEqual([expect.stringMatching(/Nichts, .* wird trinkbar/)]);
});

test('nothing but a substance in a sentence of physics is called pure', () => {
  expect(having(/\bpure\b(?! ethanol)/i)).toEqual([]);
  expect(having(/\bpur(er|est|ity|ified)\b(?!-against-recovery)/i)).toEqual([]);
});

test('no fraction is told to hold what harms', () => {
  expect(having(/\b(most|more|less) (volatile|harmful|poisonous)\b/i)).toEqual([]);
});

test('nobody is sent to a hot head with their hands', () => {
  expect(
    having(/mend the probe|check that the bulb|hold (the probe|it) still|push the bulb/i),
  ).toEqual([]);
});
