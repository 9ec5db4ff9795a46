import { parse } from '@formatjs/icu-messageformat-parser';
import { expect, test } from 'vitest';
import { everySaidSentence } from '../../../scripts/check-words.ts';
import { catalogues } from '../../../shared-core/wording/languages/catalogues.ts';

const said = everySaidSentence();
const sentences = new Set(said.map(({ sentence }) => sentence));
const languages = Object.entries(catalogues);

/** Names of places and marked-up parts, however often each stands there. */
function placesOf(sentence: string): readonly string[] {
  const names = new Set<string>();
  const visit = (parts: ReturnType<typeof parse>): void => {
    for (const part of parts) {
      if ('value' in part && part.type !== 0) names.add(part.value);
      if ('options' in part) for (const { value } of Object.values(part.options)) visit(value);
      if ('children' in part) visit(part.children);
    }
  };
  visit(parse(sentence));
  return [...names].sort();
}

/** What goes on from another text begins with a space or with its own comma, in each language. */
const outerSpace = (text: string) => [/^[\s,;]/.test(text), /\s$/.test(text)];

test('every sentence is said as a literal, so that it can be found', () => {
  expect(said.filter(({ sentence }) => sentence === null)).toEqual([]);
});

test.each(languages)(
  '%s lacks no sentence that is said, and holds none that is not',
  (_, catalogue) => {
    const keys = Object.keys(catalogue);
    expect({
      missing: [...sentences].filter((sentence) => !keys.includes(String(sentence))),
      unused: keys.filter((key) => !sentences.has(key)),
    }).toEqual({ missing: [], unused: [] });
  },
);

test.each(languages)(
  '%s fills the same places as the English sentences, and keeps what is around them',
  (_, catalogue) => {
    const differing = Object.entries(catalogue).filter(
      ([sentence, translation]) =>
        placesOf(sentence).join() !== placesOf(translation).join() ||
        outerSpace(sentence).join('|') !== outerSpace(translation).join('|'),
    );
    expect(differing).toEqual([]);
  },
);

test.each(languages)('%s tells the numbers that the English sentences tell', (_, catalogue) => {
  const numbersIn = (text: string) =>
    (text.replaceAll(/(\d)[  .,](?=\d)/g, '$1').match(/\d+/g) ?? []).sort().join(' ');
  const differing = Object.entries(catalogue).filter(
    ([sentence, translation]) => numbersIn(sentence) !== numbersIn(translation),
  );
  expect(differing).toEqual([]);
});
