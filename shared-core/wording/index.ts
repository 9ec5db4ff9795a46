/** Sentences in the language of whoever reads them, and the numbers, moments, intervals and units they hold. */

export { clockWords } from './clock-words.ts';
export { counted } from './counted.ts';
export { type Language, language, languages, setLanguage } from './language.ts';
export { catalogues } from './languages/index.ts';
export { localDayWords, localTimeWords, offsetWords } from './local-time-words.ts';
export {
  decimalsFor,
  intervalWords,
  measuredWords,
  numberWords,
} from './measured-words.ts';
export { type AsGiven, asGiven, wordingSchema } from './message.ts';
export { learnWording, wordingOf } from './message-memory.ts';
export { inDecimals, keepUnits, saidWords } from './said-words.ts';
export { say, sayParts, told, worded } from './say.ts';
