/**
 * Finds words of the window that are not said in its language: every text for people goes through `say`, `worded` or `<Say>`,
 * so that a catalogue can hold it. With a language, lists the sentences that it lacks instead.
 *
 * Usage: npx tsx scripts/check-words.ts [de]
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { catalogues, languages } from '../shared-core/wording/index.ts';
import { codeIn } from './checks/files-in.ts';
import { isEntryPoint } from './checks/is-entry-point.ts';
import { type SaidSentence, saidSentences } from './checks/said-sentences.ts';
import { unsaidWords } from './checks/unsaid-words.ts';

const root = path.join(import.meta.dirname, '..');
/** Here the functions are made that say what they are given. */
const madeIn = 'shared-core/wording/';
/** Not for people, or the same in every language, for the reason beside it. */
const leftAlone: Readonly<Record<string, string>> = {
  'renderer/service/': 'for whoever mends the program; told within a sentence that is said',
  'renderer/vite.config.ts': 'read by the builder',
};

const textOf = (file: string): string => readFileSync(path.join(root, file), 'utf8');

/** Every sentence that the program says, where it stands. */
export function everySaidSentence(): readonly SaidSentence[] {
  return codeIn(root, ['renderer', 'shared-core', 'main'])
    .filter((file) => !file.startsWith(madeIn))
    .flatMap((file) => saidSentences(file, textOf(file)));
}

/** One line each: `file:line: the words`. */
export function wordsUnsaid(): readonly string[] {
  return codeIn(root, ['renderer'])
    .filter((file) => !Object.keys(leftAlone).some((start) => file.startsWith(start)))
    .flatMap((file) =>
      unsaidWords(file, textOf(file)).map(({ line, words }) => `${file}:${line}: ${words}`),
    );
}

function sentencesLacking(catalogue: Readonly<Record<string, string>>): readonly string[] {
  return everySaidSentence()
    .filter(({ sentence }) => sentence !== null && !Object.hasOwn(catalogue, sentence))
    .map(({ file, line, sentence }) => `${file}:${line}: ${sentence}`);
}

if (isEntryPoint(import.meta.url)) {
  const wanted = languages.find((language) => language === process.argv[2]);
  const found = wanted && wanted !== 'en' ? sentencesLacking(catalogues[wanted]) : wordsUnsaid();
  for (const one of found) console.error(one);
  console.log(
    found.length === 0
      ? 'Every word of the window is said in its language.'
      : wanted
        ? `${found.length} sentences are lacking in ${wanted}: add them in shared-core/wording/languages.`
        : `${found.length} texts are not said in the language of the window: wrap them in say(…).`,
  );
  process.exitCode = found.length === 0 ? 0 : 1;
}
