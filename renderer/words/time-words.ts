import { type Estimate, say } from '#shared-core';
import { locale } from './locale.ts';

/** A duration as people say it: `40 s`, `12 min`, `1 h 5 min`. */
export function durationWords(durationS: number): string {
  const wholeS = Math.max(0, Math.round(durationS));
  if (wholeS < 90) return `${wholeS} s`;
  const minutes = Math.round(wholeS / 60);
  if (minutes < 60) return `${minutes} min`;
  const rest = minutes % 60;
  return rest === 0 ? `${Math.floor(minutes / 60)} h` : `${Math.floor(minutes / 60)} h ${rest} min`;
}

/** A duration that is not known to the second, with its interval in whole minutes, wide enough: `25 min (23 min – 28 min)`. */
export function lastedWords({ value, low, high }: Estimate): string {
  const wholeS = (minutes: number) => durationWords(60 * minutes);
  const [from, to] = [wholeS(Math.floor(low / 60)), wholeS(Math.ceil(high / 60))];
  return `${durationWords(value)} (${from} – ${to})`;
}

/** How long until something, as a range: `in 4–7 min`. Both ends past: `any moment`. */
export function untilWords(interval: { readonly low: number; readonly high: number }): string {
  const { low, high } = interval;
  if (high <= 0) return say('any moment now');
  if (high < 90)
    return say('within {seconds} s', { seconds: Math.max(10, Math.ceil(high / 10) * 10) });
  const lowMinutes = Math.max(0, Math.floor(low / 60));
  const highMinutes = Math.ceil(high / 60);
  return lowMinutes === 0
    ? say('within {highMinutes} min', { highMinutes })
    : say('in {lowMinutes}–{highMinutes} min', { lowMinutes, highMinutes });
}

/** Day and time of a recorded run in the person's own format. */
export function dateWords(iso: string): string {
  if (iso === '') return say('time of the run not known');
  const date = new Date(iso);
  if (Number.isNaN(date.getTime())) return iso;
  return date.toLocaleString(locale(), { dateStyle: 'medium', timeStyle: 'short' });
}

/** The month of a recorded run by its whole name, as somebody types it who looks for a run; empty where the time is not known. */
export function monthWords(iso: string): string {
  const date = new Date(iso);
  return Number.isNaN(date.getTime()) ? '' : date.toLocaleString(locale(), { month: 'long' });
}

/** Time of day in the person's own format: `10:42`. */
export function timeOfDayWords(iso: string): string {
  const date = new Date(iso);
  if (Number.isNaN(date.getTime())) return iso;
  return date.toLocaleTimeString(locale(), { timeStyle: 'short' });
}
