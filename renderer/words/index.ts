/** What the window says, in words and numbers. */

export { clockWords } from '#shared-core';
export { beyondChargeWords } from './beyond-charge-words.ts';
export { channelNames, type KnownChannel, namesOf } from './channel-names.ts';
export { channelWords } from './channel-words.ts';
export { type DoubtfulFile, doubtfulFileWords } from './doubtful-file-words.ts';
export { liquidWords } from './liquid-mark-words.ts';
export { inMidSentence, locale } from './locale.ts';
export { markSign } from './mark-words.ts';
export { momentIso, momentText } from './moment-text.ts';
export {
  type Decimal,
  mayHaveThousandsMark,
  numberFrom,
  numberWords,
  quantityWords,
  rangeWords,
  thousandsWords,
} from './number-words.ts';
export { probeScaleWords } from './probe-scale-words.ts';
export { problemWords } from './problem-words.ts';
export { hasRemarks, RunRemarks } from './run-remarks.tsx';
export { Say } from './say-parts.tsx';
export { shortened } from './shortened.ts';
export { signs, traceSigns } from './signs.ts';
export {
  dateWords,
  durationWords,
  lastedWords,
  monthWords,
  timeOfDayWords,
  untilWords,
} from './time-words.ts';
export { troubleWords } from './trouble-words.ts';
export { unreadableWords } from './unreadable-words.ts';
export { useWords } from './use-words.ts';
