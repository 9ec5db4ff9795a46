import { readUnit, type WireUnit } from '../frame/index.ts';
import { type Channel, channelSchema } from '../run/index.ts';

/** What clock times of two parts are: minutes and seconds, or hours and minutes. */
export type TwoPartClock = 'mm:ss' | 'h:mm';

/** What a column's title says it holds. */
export type ColumnRole =
  /** `perS`: seconds in one of its units; null when the title names none. */
  | { readonly kind: 'time'; readonly perS: number | null; readonly twoParts?: TwoPartClock }
  | { readonly kind: 'date' }
  | { readonly kind: 'channel'; readonly channel: Channel; readonly unit: WireUnit | null }
  /** A temperature that the title doesn't place. */
  | { readonly kind: 'temperature'; readonly name: string; readonly unit: WireUnit | null }
  | { readonly kind: 'quality'; readonly of: string }
  | { readonly kind: 'marks' }
  /** What somebody wrote beside the readings. */
  | { readonly kind: 'notes' }
  /** Anything else: kept as a channel of its own if it holds numbers. */
  | { readonly kind: 'other'; readonly name: string; readonly unit: WireUnit | null };

const secondsByUnit: Readonly<Record<string, number>> = {
  ms: 0.001,
  s: 1,
  sec: 1,
  secs: 1,
  second: 1,
  seconds: 1,
  sekunden: 1,
  min: 60,
  mins: 60,
  minute: 60,
  minutes: 60,
  minuten: 60,
  h: 3600,
  hr: 3600,
  hrs: 3600,
  hour: 3600,
  hours: 3600,
  stunden: 3600,
  d: 86_400,
  day: 86_400,
  days: 86_400,
  tage: 86_400,
};

/** Titles as this program writes them: the channel's own name and the unit. */
const ownTitle = /^([a-z][a-z0-9-]{0,31})_(degC|g|mL|kPa|1)$/;

/** Words in titles, in English and the languages of common loggers' menus; first match wins. */
const channelWords: readonly (readonly [RegExp, Channel])[] = [
  [/\b(condenser|cooling|coolant|water out(let)?|kühler|kuehler|condenseur)\b/, 'condenser-outlet'],
  [
    /\bt?(pot|boiler|sump|flask|kettle|bottoms?|sumpf|(?:siede)?kolben|blasen?|ballon)(?:temp(?:erature?|\.)?)?\b/,
    'pot',
  ],
  [/\b(room|ambient|air temp(erature)?|raum|umgebung)\b/, 'room'],
  [/\b(ferment(er|or|ation)?|must|vat|gärung)\b/, 'ferment'],
  [
    /\b(receiver|distillate?|collected|balance|mass|weight|volumen?|vorlage|masse|destillat(?:menge|volumen)?)\b/,
    'receiver',
  ],
  [/\b(pressure|barometer|baro|luftdruck|druck|pression)\b/, 'air-pressure'],
  [/\bt?(head|vapou?rs?|dampf|kopf|top|tête|cabeza)(?:temp(?:erature?|\.)?)?\b/, 'head'],
];
/** Separators in titles such as "Date/Time" count as spaces, "and" as nothing. */
const timeWords =
  /^((local |log |sample |elapsed |run |utc )?time( stamp| elapsed| of day| utc)?|timestamp|elapsed|t|(lauf|mess|versuchs)?zeit(stempel|punkt)?|uhrzeit|temps|heure|horodatage|tiempo|hora|(date ?|datum |fecha )(time|zeit|uhrzeit|heure|hora)|seconds?|secs?|minutes?|hours?|clock|when|wann)$/;
/** How a clock is written, at the end of a title: `Time (mm:ss)`. */
const clockFormat =
  /\s*[([{]?\s*\b(?:(h{1,2}:mm)(:ss)?|(m{1,3}:ss))(?:[.,:][0sf]+)?\s*[)\]}]?\s*$/i;

const noteWords =
  /^(remarks?|notes?|comments?|observations?|annotations?|bemerkung(en)?|anmerkung(en)?|notiz(en)?|kommentare?|beobachtung(en)?|remarques?|commentaires?|observaciones)$/;

const temperatureWords =
  /temperatur|temp(?:\d|\b)|\b(t\d*|thermometer|probe|sensor|celsius|fühler|sonde|kanal|channel|ch)\d*\b/;

/**
 * What a column holds, from the words and the unit in its title.
 *
 * @example
 * columnRole('time_s') // => { "kind": "time", "perS": 1 }
 * columnRole('Elapsed time (min)') // => { "kind": "time", "perS": 60 }
 * columnRole('Elapsed (mm:ss)') // => { "kind": "time", "perS": null, "twoParts": "mm:ss" }
 * columnRole('Kopftemperatur') // => { "kind": "channel", "channel": "head", "unit": null }
 * columnRole('Head temperature [°F]') // => { "kind": "channel", "channel": "head", "unit": "°F" }
 */
export function columnRole(title: string): ColumnRole {
  const own = ownTitle.exec(title.trim());
  if (own?.[1] !== undefined) {
    return { kind: 'channel', channel: own[1], unit: readUnit(own[2] ?? '') ?? null };
  }
  const clock = clockFormat.exec(title);
  if (clock !== null) return clockRole(title.slice(0, clock.index), clock);
  const { words, unitText } = splitTitle(title);
  if (words === 'date' || words === 'datum') return { kind: 'date' };
  const quality = /^(.+) quality$/.exec(words);
  if (quality?.[1] !== undefined) return { kind: 'quality', of: channelName(quality[1]) };
  if (words === 'marks') return { kind: 'marks' };
  if (noteWords.test(words)) return { kind: 'notes' };
  const perS = secondsByUnit[unitText] ?? secondsByUnit[words] ?? null;
  const unit = readUnit(unitText) ?? null;
  if (timeWords.test(words.replaceAll(/\s*[/&+]\s*|\s(?:and|und|et|y)\s/g, ' ')) && unit === null) {
    return { kind: 'time', perS };
  }
  const isWarm = unit === '°C' || unit === '°F' || unit === 'K';
  const isTemperature = isWarm || temperatureWords.test(words) || readUnit(words) === '°C';
  const known = channelWords.find(
    // A receiver is weighed or measured: how warm the distillate is says something else.
    ([pattern, channel]) => pattern.test(words) && !(channel === 'receiver' && isTemperature),
  );
  if (known !== undefined) return { kind: 'channel', channel: known[1], unit };
  if (isTemperature) {
    return { kind: 'temperature', name: channelName(words), unit };
  }
  return { kind: 'other', name: channelName(words), unit };
}

/** What a title that is nothing but a unit of time says, as in a table of "s" and "°C"; null for any other. */
export function bareTimeUnit(title: string): Extract<ColumnRole, { kind: 'time' }> | null {
  const unit = title
    .trim()
    .toLowerCase()
    .replaceAll(/^[([{]|[)\]}]$/g, '');
  const perS = Object.hasOwn(secondsByUnit, unit) ? secondsByUnit[unit] : undefined;
  return perS === undefined ? null : { kind: 'time', perS };
}

/** A clock without its three parts leaves open what two of them would mean. */
function clockRole(rest: string, [, hours, seconds, minutes]: RegExpExecArray): ColumnRole {
  const words = splitTitle(rest).words;
  if (words === 'date' || words === 'datum') return { kind: 'date' };
  if (minutes !== undefined) return { kind: 'time', perS: null, twoParts: 'mm:ss' };
  const isShort = hours !== undefined && seconds === undefined;
  return isShort ? { kind: 'time', perS: null, twoParts: 'h:mm' } : { kind: 'time', perS: null };
}

/** Whether a text is how a clock is written, such as `hh:mm:ss`, as in a row of units. */
export function isClockFormat(text: string): boolean {
  return clockFormat.exec(text)?.index === 0;
}

/** Words in lower case without their unit, which stands in brackets, after a slash or underscore. */
function splitTitle(title: string): { readonly words: string; readonly unitText: string } {
  const plain = title.trim().toLowerCase().normalize('NFC');
  const bracket = /^(.*?)\s*[([{]\s*([^)\]}]*)\s*[)\]}]\s*$/.exec(plain);
  const suffix = /^(.+?)\s*[_/,]\s*(°?[a-zµ]+)$/.exec(plain);
  const spaced = /^(.+?)\s+(°[cf]|degc|degf|[cfk]|ms|s|min|h)$/.exec(plain);
  const found = [bracket, suffix, spaced].find((match) => match !== null && isUnit(match[2] ?? ''));
  const words = (found?.[1] ?? plain).replace(/[_\s-]+/g, ' ').trim();
  return { words, unitText: found?.[2]?.trim() ?? '' };
}

function isUnit(text: string): boolean {
  const unit = text.trim();
  return unit !== '' && (Object.hasOwn(secondsByUnit, unit) || readUnit(unit) !== undefined);
}

function channelName(words: string): string {
  const slug = words
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[^a-z]+|-+$/g, '')
    .slice(0, 32);
  return channelSchema.safeParse(slug).success ? slug : 'column';
}
