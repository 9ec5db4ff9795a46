import { type KeptWarm, type WarmthAlarm, type WarmthTally, warmthAlarmTexts } from '#shared-core';
import {
  channelWords,
  type Decimal,
  dateWords,
  durationWords,
  quantityWords,
  timeOfDayWords,
} from '../words/index.ts';

const celsius = (temperatureC: number, decimal: Decimal): string =>
  quantityWords(temperatureC, 1, '°C', decimal);

/** Slower than this a ferment is not said to warm or cool [K/h]. */
const tellableRate = 0.3;

/** How warm it is, and where that goes: `30.4 °C at 10:15, steady`. */
export function warmthNowWords({ now }: KeptWarm, decimal: Decimal): string {
  const { temperatureC, heardAtIso, ratePerH } = now;
  if (temperatureC === null || heardAtIso === null) return 'Nothing has been heard of it yet.';
  const moves =
    ratePerH === null
      ? ''
      : Math.abs(ratePerH) < tellableRate
        ? ', steady'
        : `, ${ratePerH > 0 ? 'warming' : 'cooling'} by ${quantityWords(Math.abs(ratePerH), 1, 'K', decimal)} an hour`;
  return `${celsius(temperatureC, decimal)} at ${timeOfDayWords(heardAtIso)}${moves}.`;
}

/** What an alarm says: what is so and since when, then what to do. */
export function warmthAlarmWords(kept: KeptWarm, alarm: WarmthAlarm, decimal: Decimal) {
  const { title, consequence, act } = warmthAlarmTexts[alarm];
  const since = kept.now.standing.find((one) => one.alarm === alarm)?.sinceIso ?? '';
  const is = alarm === 'unheard' ? '' : ` It is ${warmthNowWords(kept, decimal)}`;
  return {
    title: `${title}: ${kept.name}, since ${dateWords(since)}.`,
    because: `${consequence}${is}${warmerWords(kept, alarm)}`,
    act,
  };
}

/** A warmer that stays on or off shows by where the temperature goes on to. */
function warmerWords({ now }: KeptWarm, alarm: WarmthAlarm): string {
  const rate = now.ratePerH ?? 0;
  if (alarm !== 'unheard' && alarm !== 'cold' && rate > tellableRate) {
    return ' It still warms up: the warmer may be stuck on.';
  }
  return alarm === 'cold' && rate < -tellableRate ? ' It still cools: the warmer may be off.' : '';
}

/** By what and between which ends it is kept: `By “ferment”, set to 30.0 °C, from 25.0 to 34.0 °C`. */
export function keepingWords({ channel, band }: KeptWarm['keeping'], decimal: Decimal): string {
  const { lowC, aimC, highC } = band;
  return `By the channel “${channelWords(channel)}”, set-point ${celsius(aimC, decimal)}, called below ${celsius(lowC, decimal)} and above ${celsius(highC, decimal)}.`;
}

/** A day in one line: `26.9 to 31.2 °C, mean 30.1 °C; 1 h 30 min below the band, coldest at 05:10`. */
export function dayWords(tally: WarmthTally, decimal: Decimal): string {
  const { lowC, meanC, highC, belowH, aboveH, heardH } = tally;
  const hours = (timeH: number) => durationWords(3600 * timeH);
  const parts = [
    `${celsius(lowC, decimal)} to ${celsius(highC, decimal)}, mean ${celsius(meanC, decimal)}`,
    ...(belowH > 0
      ? [`${hours(belowH)} below the band, coldest at ${timeOfDayWords(tally.coldestAtIso)}`]
      : []),
    ...(aboveH > 0
      ? [`${hours(aboveH)} above it, hottest at ${timeOfDayWords(tally.hottestAtIso)}`]
      : []),
    `heard for ${hours(heardH)}`,
  ];
  return `${parts.join('; ')}.`;
}
