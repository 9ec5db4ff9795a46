/**
 * Finds words of the window that are not said in its language: every text for people goes through `say`, `worded` or `<Say>`,
 * so that a catalogue can hold it.
 *
 * Usage: npx tsx scripts/check-words.ts
 */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { isEntryPoint } from './checks/is-entry-point.ts';
import { unsaidWords } from './checks/unsaid-words.ts';

const root = path.join(import.meta.dirname, '..');
const folders = ['renderer'];
/** Rooms whose words are not said yet. */
export const notYetSaid: readonly string[] = [
  'renderer/books/',
  'renderer/by-volume/',
  'renderer/compare/',
  'renderer/help/',
  'renderer/look-back/',
  'renderer/prepare/',
  'renderer/take-in/',
];
/** Not for people, or the same in every language, for the reason beside it. */
const leftAlone: Readonly<Record<string, string>> = {
  'renderer/service/': 'for whoever mends the program; told within a sentence that is said',
  'renderer/vite.config.ts': 'read by the builder',
};

/** One line each: `file:line: the words`. */
export function wordsUnsaid(): readonly string[] {
  return folders
    .flatMap((folder) =>
      readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' }).map((file) =>
        path.posix.join(folder, file.replaceAll(path.sep, '/')),
      ),
    )
    .filter((file) => /\.tsx?$/.test(file))
    .filter(
      (file) => ![...notYetSaid, ...Object.keys(leftAlone)].some((start) => file.startsWith(start)),
    )
    .sort()
    .flatMap((file) =>
      unsaidWords(file, readFileSync(path.join(root, file), 'utf8')).map(
        ({ line, words }) => `${file}:${line}: ${words}`,
      ),
    );
}

if (isEntryPoint(import.meta.url)) {
  const found = wordsUnsaid();
  for (const one of found) console.error(one);
  console.log(
    found.length === 0
      ? 'Every word of the window is said in its language.'
      : `${found.length} texts are not said in the language of the window: wrap them in say(…).`,
  );
  process.exitCode = found.length === 0 ? 0 : 1;
}
