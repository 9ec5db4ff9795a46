/** Sentences in the language of whoever reads them, and the numbers, intervals and units they hold. */

export { compiledMessage } from './format-message.ts';
export { type Language, language, languages, setLanguage } from './language.ts';
export {
  clockWords,
  decimalsFor,
  intervalWords,
  measuredWords,
  numberWords,
} from './measured-words.ts';
export { type Message, type Values, type Wording, wordingSchema } from './message.ts';
export { learnWording, wordingOf } from './message-memory.ts';
export { inDecimals, keepUnits, saidWords } from './said-words.ts';
export { say, told, translationOf, worded } from './say.ts';
