/** Numbers, moments, intervals and units as sentences for people hold them. */

export { clockWords } from '../run/index.ts';
export {
  decimalsFor,
  intervalWords,
  measuredWords,
  numberWords,
} from './measured-words.ts';
export { inDecimals, keepUnits, saidWords } from './said-words.ts';
