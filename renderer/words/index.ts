export { alarmNames } from './alarm-words.ts';
export { liquidMarkWords, liquidWords } from './liquid-mark-words.ts';
export { markSign, markWords } from './mark-words.ts';
export {
  countWords,
  type Decimal,
  decimalsFor,
  numberFrom,
  numberWords,
  quantityWords,
  rangeWords,
} from './number-words.ts';
export { type ProbeScaleWords, probeScaleWords } from './probe-scale-words.ts';
export { problemWords } from './problem-words.ts';
export { saidWords } from './said-words.ts';
export { shortened } from './shortened.ts';
export { signs, traceSigns } from './signs.ts';
export { clockWords, dateWords, durationWords, untilWords } from './time-words.ts';
export { unreadableWords } from './unreadable-words.ts';
