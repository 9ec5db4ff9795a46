/** The sentences of the window in other languages, by the English ones. */
import type { Language } from '../language.ts';
import { german } from './de/index.ts';

/** English needs none: its sentences stand in the code. */
export const catalogues: Readonly<
  Record<Exclude<Language, 'en'>, Readonly<Record<string, string>>>
> = {
  de: german,
};
