/** How warm a ferment is kept in its week: band, minutes, watch and what they come to. */
export { tallyWarmth, type WarmthTally } from './tally-warmth.ts';
export { warmthAlarmTexts } from './warmth-alarms.ts';
export { usualWarmthBand, type WarmthBand, warmthBandSchema } from './warmth-band.ts';
export { gatherSpans, type WarmthSpan, warmthSpanSchema } from './warmth-span.ts';
export {
  createWarmthWatch,
  warmthNowSchema,
} from './warmth-watch.ts';
