import { type KeptWarm, say, told, warmthAlarmTexts } from '#shared-core';
import {
  channelWords,
  type Decimal,
  dateWords,
  durationWords,
  quantityWords,
  timeOfDayWords,
} from '../words/index.ts';
import type { WarmthTally } from './warmth-days.ts';

type WarmthAlarm = KeptWarm['now']['standing'][number]['alarm'];

const celsius = (temperatureC: number, decimal: Decimal): string =>
  quantityWords(temperatureC, 1, '°C', decimal);

/** Slower than this a ferment is not said to warm or cool [K/h]. */
const tellableRate = 0.3;

/** How warm it is, and where that goes: `30.4 °C at 10:15, steady.` */
export function warmthNowWords({ now }: KeptWarm, decimal: Decimal): string {
  const { temperatureC, heardAtIso, ratePerH } = now;
  if (temperatureC === null || heardAtIso === null) return say('Nothing has been heard of it yet.');
  const heard = {
    temperature: celsius(temperatureC, decimal),
    time: timeOfDayWords(heardAtIso),
  };
  if (ratePerH === null) return say('{temperature} at {time}.', heard);
  if (Math.abs(ratePerH) < tellableRate) return say('{temperature} at {time}, steady.', heard);
  const rate = quantityWords(Math.abs(ratePerH), 1, 'K', decimal);
  return ratePerH > 0
    ? say('{temperature} at {time}, warming by {rate} an hour.', { ...heard, rate })
    : say('{temperature} at {time}, cooling by {rate} an hour.', { ...heard, rate });
}

/** What an alarm says: what is so and since when, then what to do. */
export function warmthAlarmWords(kept: KeptWarm, alarm: WarmthAlarm, decimal: Decimal) {
  const { title, consequence, act } = warmthAlarmTexts[alarm];
  const since = kept.now.standing.find((one) => one.alarm === alarm)?.sinceIso ?? '';
  const sentences = [
    told(consequence),
    ...(alarm === 'unheard' ? [] : [warmthNowWords(kept, decimal)]),
    ...warmerWords(kept, alarm),
  ];
  return {
    title: say('{title}: {name}, since {since}.', {
      title: told(title),
      name: kept.name,
      since: dateWords(since),
    }),
    because: sentences.join(' '),
    act: told(act),
  };
}

/** A warmer that stays on or off shows by where the temperature goes on to. */
function warmerWords({ now }: KeptWarm, alarm: WarmthAlarm): readonly string[] {
  const rate = now.ratePerH ?? 0;
  if (alarm !== 'unheard' && alarm !== 'cold' && rate > tellableRate) {
    return [say('It still warms up: the warmer may be stuck on.')];
  }
  return alarm === 'cold' && rate < -tellableRate
    ? [say('It still cools: the warmer may be off.')]
    : [];
}

/** By what and between which ends it is kept: `By “ferment”, set to 30.0 °C, from 25.0 to 34.0 °C`. */
export function keepingWords({ channel, band }: KeptWarm['keeping'], decimal: Decimal): string {
  const { lowC, aimC, highC } = band;
  return say('By the channel “{channel}”, set-point {aim}, called below {low} and above {high}.', {
    channel: channelWords(channel),
    aim: celsius(aimC, decimal),
    low: celsius(lowC, decimal),
    high: celsius(highC, decimal),
  });
}

/** A day in one line: `26.9 to 31.2 °C, mean 30.1 °C; 1 h 30 min below the band, coldest at 05:10`. */
export function dayWords(tally: WarmthTally, decimal: Decimal): string {
  const { lowC, meanC, highC, belowH, aboveH, heardH } = tally;
  const hours = (timeH: number) => durationWords(3600 * timeH);
  const parts = [
    say('{low} to {high}, mean {mean}', {
      low: celsius(lowC, decimal),
      high: celsius(highC, decimal),
      mean: celsius(meanC, decimal),
    }),
    ...(belowH > 0
      ? [
          say('{hours} below the band, coldest at {coldestAt}', {
            hours: hours(belowH),
            coldestAt: timeOfDayWords(tally.coldestAtIso),
          }),
        ]
      : []),
    ...(aboveH > 0
      ? [
          say('{hours} above it, hottest at {hottestAt}', {
            hours: hours(aboveH),
            hottestAt: timeOfDayWords(tally.hottestAtIso),
          }),
        ]
      : []),
    say('heard for {hours}', { hours: hours(heardH) }),
  ];
  return `${parts.join('; ')}.`;
}
