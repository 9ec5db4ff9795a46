import { type Language, languages, parseJson } from '#shared-core';

/** How this person likes the window; kept in the browser's own storage, never in a run. */
export interface Preferences {
  readonly theme: 'system' | 'light' | 'dark' | 'projector';
  readonly decimal: '.' | ',';
  /** What the window is written in; it is read before anything else is, so a new one needs a new window. */
  readonly language: Language;
  readonly sound: boolean;
  /** Single letters make marks in Watch. */
  readonly markKeys: boolean;
  /** The cautions have been read once. */
  readonly welcomed: boolean;
}

export const themes = ['system', 'light', 'dark', 'projector'] as const;

export const defaultPreferences: Preferences = {
  theme: 'system',
  decimal: '.',
  language: 'en',
  sound: true,
  markKeys: true,
  welcomed: false,
};

/** Reads stored preferences field by field: an unknown or damaged field falls back to its default. */
export function preferencesFrom(stored: string | null, localeDecimal: '.' | ','): Preferences {
  const defaults = { ...defaultPreferences, decimal: localeDecimal };
  const found = storedObject(stored) ?? {};
  const theme = themes.find((known) => known === found.theme);
  return {
    theme: theme ?? defaults.theme,
    decimal: found.decimal === '.' || found.decimal === ',' ? found.decimal : defaults.decimal,
    language: languages.find((known) => known === found.language) ?? defaults.language,
    sound: typeof found.sound === 'boolean' ? found.sound : defaults.sound,
    markKeys: typeof found.markKeys === 'boolean' ? found.markKeys : defaults.markKeys,
    welcomed: typeof found.welcomed === 'boolean' ? found.welcomed : defaults.welcomed,
  };
}

/** What is stored, whichever version wrote it; null where it is nothing that can be read. */
export function storedObject(text: string | null): Readonly<Record<string, unknown>> | null {
  const parsed = parseJson(text ?? '{}');
  return typeof parsed === 'object' && parsed !== null ? { ...parsed } : null;
}
