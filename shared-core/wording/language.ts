/** The languages of the window, by their tags (BCP 47). English is the one the sentences in the code are written in. */
export const languages = ['en', 'de'] as const;
export type Language = (typeof languages)[number];

/** Ambient, as a locale is: a window sets it before anything else is loaded, every other process keeps English. */
let chosen: Language = 'en';

/**
 * Chooses the language of this process; what has been said before stays as it was said.
 *
 * @param language one of {@link languages}
 *
 * Source: this project's rule.
 * @example
 * setLanguage('en');
 * language() // => "en"
 */
export function setLanguage(language: Language): void {
  chosen = language;
}

/**
 * The language of this process.
 *
 * Source: this project's rule.
 * @example
 * language() // => "en"
 */
export function language(): Language {
  return chosen;
}
