import {
  assertNever,
  type distillingAdvice,
  type FermentRead,
  type FermentVerdict,
  say,
  told,
} from '#shared-core';
import { type Decimal, locale, numberWords, quantityWords } from '../words/index.ts';

const wordsOfStates: Readonly<Record<FermentVerdict['state'], string>> = {
  'not-started': say('Not started'),
  working: say('At work'),
  slow: say('Slow'),
  stuck: say('Stuck?'),
  finished: say('Finished'),
};

/** Whether it stands still and nothing was told that tells its end: that may be its end as well as not. */
export function isWithoutEnd({
  state,
  expectedEndGravity,
}: Pick<FermentVerdict, 'state' | 'expectedEndGravity'>): boolean {
  return state === 'stuck' && expectedEndGravity === null;
}

/** Where a ferment stands, in a word or two. */
export function stateWords(
  verdict: Pick<FermentVerdict, 'state' | 'expectedEndGravity' | 'strengthAbv'>,
): string {
  // Nobody has read anything: it may have been at work for days.
  if (verdict.strengthAbv === null) return say('Not known yet');
  return isWithoutEnd(verdict) ? say('Stands still') : wordsOfStates[verdict.state];
}

export function treatmentWords(treatment: FermentRead['treatments'][number]): string {
  switch (treatment) {
    case 'degassed':
      return say('Degassed: shaken or stirred until no more gas came');
    case 'settled':
      return say('Settled: left to stand until clear');
    case 'strained':
      return say('Strained: poured off its sediment');
    default:
      return assertNever(treatment);
  }
}

/** What is still to do before a ferment goes into the still. */
export function conditionWords(
  condition: ReturnType<typeof distillingAdvice>['unmet'][number],
): string {
  switch (condition) {
    case 'ended':
      return say('It is not judged finished: sugar that is left foams, scorches and is lost.');
    case 'degassed':
      return say('Degas it: shake or stir until no more gas comes, and enter that.');
    case 'settled':
      return say('Let it settle until it is clear, and enter that.');
    case 'strained':
      return say('Strain it off its sediment, which scorches and froths, and enter that.');
    default:
      return assertNever(condition);
  }
}

/** Intervals wider than this say nothing a week can be planned by [h]. */
const widestTellingH = 14 * 24;

/** When it ends, or ended, as a date with its interval. */
export function finishWords(
  { state, finishH }: Pick<FermentVerdict, 'state' | 'finishH'>,
  beganAtIso: string,
): string {
  if (state === 'stuck') return say('no date: it stands still');
  if (finishH === null || finishH.high - finishH.low > widestTellingH)
    return say('too early to tell');
  const day = (timeH: number) => dayWords(new Date(Date.parse(beganAtIso) + timeH * 3_600_000));
  const [low, value, high] = [day(finishH.low), day(finishH.value), day(finishH.high)];
  return low === high
    ? say('about {value}', { value })
    : say('about {value}, from {low} to {high}', { value, low, high });
}

function dayWords(date: Date): string {
  return date.toLocaleDateString(locale(), { weekday: 'short', day: 'numeric', month: 'short' });
}

/** One line of the log: everything that was read at a moment. */
export function readWords(read: FermentRead, decimal: Decimal): string {
  const quantity = (value: number, decimals: number, unit: string) =>
    quantityWords(value, decimals, unit, decimal);
  const { gravity, massG, temperatureC, bubblesPerMin, ph, refractometerPercent } = read;
  const parts = [
    gravity &&
      say('gravity {gravity} at {temperature}', {
        gravity: numberWords(gravity.indicated, 4, decimal).replace(/0$/, ''),
        temperature: quantity(gravity.temperatureC, 0, '°C'),
      }),
    massG === null ? null : quantity(massG, 1, 'g'),
    temperatureC === null
      ? null
      : say('ferment at {temperature}', { temperature: quantity(temperatureC, 1, '°C') }),
    bubblesPerMin === null
      ? null
      : say('{bubblesPerMin} bubbles a minute', {
          bubblesPerMin: numberWords(bubblesPerMin, bubblesPerMin < 10 ? 1 : 0, decimal),
        }),
    ph === null ? null : `pH ${numberWords(ph, 1, decimal)}`,
    refractometerPercent === null
      ? null
      : say('refractometer {value}', { value: quantity(refractometerPercent, 1, '%') }),
    ...read.treatments.map(told),
    read.note === '' ? null : `“${read.note}”`,
  ];
  return parts.filter((part) => part !== null).join(' · ');
}
