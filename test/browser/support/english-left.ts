import type { Page } from 'playwright-core';
import { catalogues } from '../../../shared-core/wording/languages/catalogues.ts';

const german = catalogues.de ?? {};

/** The words of a sentence, without its places, choices and marked-up parts. */
function wordsOf(sentence: string): readonly string[] {
  const plain = sentence.replaceAll(/\{\w+, \w+,|\{\w+\}|<\/?\w+>/g, ' ');
  return (plain.match(/\p{L}[\p{L}’']*/gu) ?? []).map((word) => word.toLowerCase());
}

const germanWords = new Set(Object.values(german).flatMap(wordsOf));
/** Words that stand in English sentences and in no German one. The catalogue is its own dictionary: a thousand words and more. */
const englishWords = new Set(
  Object.keys(german)
    .flatMap(wordsOf)
    .filter((word) => !germanWords.has(word)),
);

/** A number as English writes it; a date or a version has more points than one. */
const decimalPoint = /(?<![\d.])\d+\.\d+(?![\d.])/g;

/** The German of a sentence in the code, its places filled: what a person looks for in the window. */
export function inGerman(sentence: string, values: Readonly<Record<string, string>> = {}): string {
  const said = german[sentence];
  if (said === undefined) throw new Error(`No German for “${sentence}”.`);
  return said.replaceAll(/\{(\w+)\}/g, (_, name: string) => values[name] ?? '');
}

/** Its abbreviation reads like an English word. */
const thursday = 'Do.,';

/** All that is written in the page or told to a screen reader, a text each. What devices and files say stands in `code` and `pre`. */
function textsInPage(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const texts: string[] = [document.title];
    const isWords = (element: Element | null) =>
      element?.closest('script, style, code, pre, textarea, [lang]:not([lang=de])') === null;
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      if (isWords(node.parentElement)) texts.push(node.textContent ?? '');
    }
    for (const name of ['aria-label', 'title', 'placeholder', 'alt', 'aria-valuetext']) {
      for (const element of document.querySelectorAll(`[${name}]`)) {
        if (isWords(element)) texts.push(element.getAttribute(name) ?? '');
      }
    }
    return texts;
  });
}

/**
 * The texts of a page in German that have English words or decimal points left in them, each with those.
 *
 * @param given what the test itself wrote: names, paths, notes
 */
export async function englishLeft(
  page: Page,
  given: readonly string[] = [],
): Promise<readonly string[]> {
  const texts = await textsInPage(page);
  return [...new Set(texts)].flatMap((text) => {
    const ours = [...given, thursday].reduce((rest, one) => rest.replaceAll(one, ' '), text);
    const english = [...new Set(wordsOf(ours).filter((word) => englishWords.has(word)))];
    const left = [...english, ...(ours.match(decimalPoint) ?? [])];
    return left.length === 0 ? [] : [`${text.trim()} (${left.join(', ')})`];
  });
}

/** Opens everything that is folded up, and what is folded up within. */
export async function unfoldAll(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
}
