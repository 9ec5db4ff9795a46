import { assertNever, say } from '#shared-core';
import { locale } from '../words/index.ts';
import type { Stretch } from './expected-time.ts';

/** The bell after this moment [ms]: `11:45` in this computer's own time of day; null where no bell was entered. */
export function bellAfter(bell: string, momentMs: number): number | null {
  const found = /^(\d{2}):(\d{2})$/.exec(bell);
  if (found === null) return null;
  const at = new Date(momentMs);
  at.setHours(Number(found[1]), Number(found[2]), 0, 0);
  if (at.getTime() <= momentMs) at.setDate(at.getDate() + 1);
  return at.getTime();
}

export type Fit = 'fits' | 'perhaps' | 'does-not-fit';

/** Whether something that takes this long [s] from a moment is over before the bell, by its range alone. */
export function fitsUntil(bellMs: number, fromMs: number, { low, high }: Stretch): Fit {
  if (fromMs + 1000 * high <= bellMs) return 'fits';
  return fromMs + 1000 * low > bellMs ? 'does-not-fit' : 'perhaps';
}

const afterwards = say('The still is hot for a while after that.');

/** Under way: heat off against the bell. */
export function fitWords(fit: Fit): string {
  switch (fit) {
    case 'fits':
      return say('Heat off is expected before the bell. {afterwards}', { afterwards });
    case 'perhaps':
      return say('Heat off may come after the bell: plan for taking the heat off earlier.');
    case 'does-not-fit':
      return say('Heat off is expected after the bell: take the heat off in time.');
    default:
      return assertNever(fit);
  }
}

/** Before any heat: by when it must be on. */
export function latestStartWords(bellMs: number, nowMs: number, heatOff: Stretch): string {
  const fit = fitsUntil(bellMs, nowMs, heatOff);
  if (fit === 'does-not-fit') {
    return say(
      'Does not fit any more: heat off is expected after the bell. Take a smaller charge, or another lesson.',
    );
  }
  const latestMs = Math.floor((bellMs - 1000 * heatOff.high) / 60_000) * 60_000;
  const latest = new Date(latestMs).toLocaleTimeString(locale(), { timeStyle: 'short' });
  return fit === 'fits'
    ? say('Fits if the heat is on by {latest}. {afterwards}', { latest, afterwards })
    : say('May not fit: for that the heat had to be on by {latest}.', { latest });
}
