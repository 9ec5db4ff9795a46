/** What the window says, in words and numbers. */

export { beyondChargeWords } from './beyond-charge-words.ts';
export { channelWords } from './channel-words.ts';
export { liquidMarkWords, liquidWords } from './liquid-mark-words.ts';
export { markSign, markWords } from './mark-words.ts';
export {
  countWords,
  type Decimal,
  decimalsFor,
  mayHaveThousandsMark,
  numberFrom,
  numberWords,
  quantityWords,
  rangeWords,
  thousandsWords,
} from './number-words.ts';
export { type ProbeScaleWords, probeScaleWords } from './probe-scale-words.ts';
export { problemWords } from './problem-words.ts';
export { shortened } from './shortened.ts';
export { signs, traceSigns } from './signs.ts';
export { clockWords, dateWords, durationWords, timeOfDayWords, untilWords } from './time-words.ts';
export { troubleWords } from './trouble-words.ts';
export { unreadableWords } from './unreadable-words.ts';
export { useWords } from './use-words.ts';
