import {
  assertNever,
  type DistillingCondition,
  type FermentRead,
  type FermentState,
  type FermentTreatment,
  type FermentVerdict,
} from '#shared-core';
import { type Decimal, numberWords, quantityWords } from '../words/index.ts';

export const stateWords: Readonly<Record<FermentState, string>> = {
  'not-started': 'Not started',
  working: 'At work',
  slow: 'Slow',
  stuck: 'Stuck?',
  finished: 'Finished',
};

export function treatmentWords(treatment: FermentTreatment): string {
  switch (treatment) {
    case 'degassed':
      return 'Degassed: shaken or stirred until no more gas came';
    case 'settled':
      return 'Settled: left to stand until clear';
    case 'strained':
      return 'Strained: poured off its sediment';
    default:
      return assertNever(treatment);
  }
}

/** What is still to do before a ferment goes into the still. */
export function conditionWords(condition: DistillingCondition): string {
  switch (condition) {
    case 'ended':
      return 'It is not judged finished: sugar that is left foams, scorches and is lost.';
    case 'degassed':
      return 'Degas it: shake or stir until no more gas comes, and enter that.';
    case 'settled':
      return 'Let it settle until it is clear, and enter that.';
    case 'strained':
      return 'Strain it off its sediment, which scorches and froths, and enter that.';
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
  if (state === 'stuck') return 'no date: it stands still';
  if (finishH === null || finishH.high - finishH.low > widestTellingH) return 'too early to tell';
  const day = (timeH: number) => dayWords(new Date(Date.parse(beganAtIso) + timeH * 3_600_000));
  const [low, value, high] = [day(finishH.low), day(finishH.value), day(finishH.high)];
  return low === high ? `about ${value}` : `about ${value}, from ${low} to ${high}`;
}

function dayWords(date: Date): string {
  return date.toLocaleDateString(undefined, { weekday: 'short', day: 'numeric', month: 'short' });
}

/** One line of the log: everything that was read at a moment. */
export function readWords(read: FermentRead, decimal: Decimal): string {
  const quantity = (value: number, decimals: number, unit: string) =>
    quantityWords(value, decimals, unit, decimal);
  const { gravity, massG, temperatureC, bubblesPerMin, ph, refractometerPercent } = read;
  const parts = [
    gravity &&
      `gravity ${numberWords(gravity.indicated, 4, decimal).replace(/0$/, '')} at ${quantity(gravity.temperatureC, 0, '°C')}`,
    massG === null ? null : quantity(massG, 1, 'g'),
    temperatureC === null ? null : `ferment at ${quantity(temperatureC, 1, '°C')}`,
    bubblesPerMin === null
      ? null
      : `${numberWords(bubblesPerMin, bubblesPerMin < 10 ? 1 : 0, decimal)} bubbles a minute`,
    ph === null ? null : `pH ${numberWords(ph, 1, decimal)}`,
    refractometerPercent === null
      ? null
      : `refractometer ${quantity(refractometerPercent, 1, '%')}`,
    ...read.treatments,
    read.note === '' ? null : `“${read.note}”`,
  ];
  return parts.filter((part) => part !== null).join(' · ');
}
