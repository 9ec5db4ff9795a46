/** How warm a ferment is kept in its week: the watch over it, what it calls for, and its days. */
export { useKeptWarm } from './use-kept-warm.ts';
export { useWarmthReport } from './use-warmth-report.ts';
export { WarmthNote } from './warmth-note.tsx';
export { WarmthSection } from './warmth-section.tsx';
export { warmthAlarmWords, warmthNowWords } from './warmth-words.ts';
