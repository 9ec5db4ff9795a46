/** Numbers, intervals and units as sentences for people hold them. */
export {
  clockWords,
  decimalsFor,
  intervalWords,
  measuredWords,
  numberWords,
} from './measured-words.ts';
export { inDecimals, keepUnits, saidWords } from './said-words.ts';
