/**
 * Finds numbers with a unit that stand in the texts of window, report, worksheets and help without being computed and
 * without a source beside them. A number that is computed cannot disagree with what it is computed from.
 *
 * Usage: npx tsx scripts/check-numbers.ts
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { bareNumbersInCode, bareNumbersInPage } from './checks/bare-numbers.ts';
import { filesIn } from './checks/files-in.ts';
import { isEntryPoint } from './checks/is-entry-point.ts';

const root = path.join(import.meta.dirname, '..');
const folders = ['renderer', 'shared-core', 'main/export'];
/** Translations hold the numbers of their English sentences, which are looked at where they are said. */
const translations = 'shared-core/wording/languages/';

/** One line each: `file:line: the number`. */
export function numbersWithoutSource(): readonly string[] {
  return filesIn(root, folders)
    .filter((file) => /\.tsx?$|^renderer\/help\/.*\.md$/.test(file))
    .filter((file) => !file.startsWith(translations))
    .flatMap((file) => {
      const text = readFileSync(path.join(root, file), 'utf8');
      const found = file.endsWith('.md') ? bareNumbersInPage(text) : bareNumbersInCode(file, text);
      return found.map(({ line, words }) => `${file}:${line}: ${words}`);
    });
}

if (isEntryPoint(import.meta.url)) {
  const found = numbersWithoutSource();
  for (const one of found) console.error(one);
  console.log(
    found.length === 0
      ? 'Every number in a text is computed or has its source beside it.'
      : `${found.length} numbers in texts: compute them, or name the source in a comment beside them.`,
  );
  process.exitCode = found.length === 0 ? 0 : 1;
}
