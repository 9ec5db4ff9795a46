import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { helpPagesIn } from '../../../renderer/help/help-topic.ts';
import { pagesIn } from '../../../renderer/help/pages-in.ts';
import { safetyLooks } from '../../../renderer/prepare/safety-checks.ts';
import { clockWords } from '../../../renderer/words/index.ts';
import { catalogues } from '../../../shared-core/wording/languages/catalogues.ts';

const help = path.join(import.meta.dirname, '../../../renderer/help');
const pagesOn = (folder: string) =>
  readdirSync(path.join(help, folder))
    .filter((file) => file.endsWith('.md'))
    .sort();

/** What a translation leaves as it is, in the order of the alphabet: it may stand elsewhere in a sentence. */
const all = (text: string, pattern: RegExp) => (text.match(pattern) ?? []).sort();
const kept = (text: string) => ({
  places: all(text, /\{\{\w+\}\}/g),
  code: all(text, /`[^`\n]+`/g),
  commands: all(text, /```[\s\S]*?```/g),
  links: all(text, /\]\([^)]*\)/g),
});
/** Of which parts a page is made, in their order. */
const made = (text: string) =>
  text
    .trim()
    .split(/\n{2,}/)
    .map((block) => ({
      heading: /^#+/.exec(block)?.[0] ?? null,
      // Lines of a paragraph are broken anywhere; steps and rows of tables are not.
      entries: all(block, /^(\d+\.|\|)/gm).length,
      cells: all(block, /(?<=\|)[^|\n]+(?=\|)/g).length,
      strong: all(block, /\*\*[^*]+\*\*/g).length,
    }));

const others = Object.entries(catalogues);

describe.each(others)('the help in %s', (language, catalogue) => {
  const pages = helpPagesIn(language as keyof typeof pagesIn);
  const texts = Object.values(pagesIn[language as keyof typeof pagesIn]).join('\n');

  test('has every page', () => {
    expect(pagesOn(language)).toEqual(pagesOn('.'));
    expect(pages.map(({ topic }) => topic)).toEqual(helpPagesIn('en').map(({ topic }) => topic));
    const english = helpPagesIn('en');
    expect(pages.filter(({ title }, index) => title === english[index]?.title)).toEqual([]);
  });

  test.each(helpPagesIn('en').map(({ topic }) => topic))(
    'tells in “%s” what the English page tells, with the same numbers, commands and links',
    (topic) => {
      const text = pagesIn[language as keyof typeof pagesIn][topic];
      expect(kept(text)).toEqual(kept(pagesIn.en[topic]));
      expect(made(text)).toEqual(made(pagesIn.en[topic]));
      expect(text.startsWith('# ')).toBe(true);
    },
  );

  test('names buttons and headings as the window does in that language', () => {
    const known = Object.values(catalogue).join('\n');
    const named = [...texts.matchAll(/(?<!\w)_([^_\n]+)_(?!\w)/g)].map(([, name = '']) => name);
    expect(named.length).toBeGreaterThan(10);
    expect(named.filter((name) => !known.includes(name))).toEqual([]);
  });
});

test('the German help counts the looks, and says times and keys, as the German window does', () => {
  expect(safetyLooks).toHaveLength(7);
  const texts = Object.values(pagesIn.de).join('\n');
  expect(texts).toContain('Die sieben Kontrollen unter _Vor dem Erhitzen_');
  expect(texts).toContain(`**Gesichert bis ${clockWords(750)}.**`);
  const keys = /\*\*Tasten in „Beobachten“:\*\*(.*)/.exec(texts)?.[1] ?? '';
  const names = [...keys.matchAll(/`[a-z]` (?:ein )?([^,;]+)/g)].map(([, name = '']) => name);
  expect(names.length).toBeGreaterThan(5);
  const known = Object.values(catalogues.de ?? {});
  expect(names.filter((name) => !known.includes(name))).toEqual([]);
});
