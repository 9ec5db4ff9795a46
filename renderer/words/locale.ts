import { language } from '#shared-core';

/** Whose way of writing dates and times: that of the language chosen, the system's own in English. */
export function locale(): string | undefined {
  return language() === 'en' ? undefined : language();
}

/** Words that began a line, within a sentence: English writes its nouns small there. */
export function inMidSentence(words: string): string {
  return language() === 'en' ? words.slice(0, 1).toLowerCase() + words.slice(1) : words;
}
