/** How warm a ferment is kept in its week: band, minutes, watch and what they come to. */
export { tallyWarmth } from './tally-warmth.ts';
export { warmthAlarmTexts } from './warmth-alarms.ts';
export { usualWarmthBand, warmthBandSchema } from './warmth-band.ts';
export { gatherSpans, warmthSpanSchema } from './warmth-span.ts';
export {
  createWarmthWatch,
  warmthNowSchema,
} from './warmth-watch.ts';
