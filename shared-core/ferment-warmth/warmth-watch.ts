import { z } from 'zod';
import {
  isSo,
  type LastingCondition,
  lastingCondition,
  type WarmthAlarm,
  warmthAlarms,
} from './warmth-alarms.ts';
import type { WarmthBand } from './warmth-band.ts';
import type { WarmthSpan } from './warmth-span.ts';

/** What is so with a ferment that is kept warm, at one moment. */
export const warmthNowSchema = z.strictObject({
  /** Mean of the last minute heard; null before the first. */
  temperatureC: z.number().nullable(),
  heardAtIso: z.iso.datetime().nullable(),
  /** How fast it moved over the last twenty minutes heard [K/h]; null before there are some. */
  ratePerH: z.number().nullable(),
  /** The worst first; of two about the same, the worse alone. */
  standing: z.array(z.strictObject({ alarm: z.enum(warmthAlarms), sinceIso: z.iso.datetime() })),
});

export type WarmthNow = z.infer<typeof warmthNowSchema>;

/** Follows how warm a ferment is, minute by minute; it may be given what was recorded before, and then goes on. */
export interface WarmthWatch {
  /** A minute that is over. One that begins before the last is left aside: a clock was put back. */
  see(minute: WarmthSpan): void;
  /** Time passes, heard or not [ms since 1970]. */
  advanceTo(wallMs: number): void;
  now(): WarmthNow;
}

const minuteMs = 60_000;
const hourMs = 60 * minuteMs;
/** How fast it moves is told of the last minutes, and needs so many of them [ms]. */
const rateOverMs = 20 * minuteMs;
const leastRateSpanMs = 15 * minuteMs;
/** Which alarms say less than another that stands. */
const impliedBy: Partial<Record<WarmthAlarm, WarmthAlarm>> = { hot: 'too-hot' };

/**
 * A watch over a ferment from a moment on.
 *
 * @param band the set-point and the ends between which nothing is said [°C]
 * @param sinceMs when the watch began [ms since 1970]: silence counts from here
 *
 * Delays and deadband after IEC 62682; their values are this project's. `rate = (mean_now − mean_then)/(t_now − t_then)`.
 * Source: standard for the form, common practice for the values.
 * @example
 * const watch = createWarmthWatch({ lowC: 25, aimC: 30, highC: 34 }, 0);
 * watch.advanceTo(11 * 60_000);
 * watch.now().standing[0]?.alarm // => "unheard"
 */
export function createWarmthWatch(band: WarmthBand, sinceMs: number): WarmthWatch {
  const conditions = new Map<WarmthAlarm, LastingCondition>(
    warmthAlarms.map((alarm) => [alarm, lastingCondition(alarm)]),
  );
  let lately: WarmthSpan[] = [];
  let heardMs = sinceMs;
  let nowMs = sinceMs;

  const judge = (alarm: WarmthAlarm, wallMs: number, temperatureC: number): void => {
    const condition = conditions.get(alarm);
    if (condition === undefined || alarm === 'unheard') return;
    condition.at(wallMs, isSo(alarm, temperatureC, band, condition.sinceMs() !== null));
  };

  /** Nothing came between what was heard last and this moment. */
  const keepSilent = (untilMs: number): void => {
    conditions.get('unheard')?.at(heardMs, true);
    conditions.get('unheard')?.at(untilMs, true);
  };

  return {
    see: (minute) => {
      const beganMs = Date.parse(minute.atIso);
      const endsMs = beganMs + minuteMs * minute.minutes;
      if (endsMs <= heardMs) return;
      if (beganMs > heardMs + minuteMs) keepSilent(beganMs);
      conditions.get('unheard')?.at(endsMs, false);
      lately = [...lately, minute].filter(
        ({ atIso }) => endsMs - Date.parse(atIso) <= rateOverMs + minuteMs,
      );
      for (const alarm of warmthAlarms) judge(alarm, beganMs, minute.meanC);
      for (const alarm of warmthAlarms) judge(alarm, endsMs, minute.meanC);
      heardMs = endsMs;
      nowMs = Math.max(nowMs, endsMs);
    },
    advanceTo: (wallMs) => {
      if (wallMs <= nowMs) return;
      nowMs = wallMs;
      if (wallMs - heardMs > minuteMs) keepSilent(wallMs);
    },
    now: () => ({
      temperatureC: lately.at(-1)?.meanC ?? null,
      heardAtIso: lately.length === 0 ? null : new Date(heardMs).toISOString(),
      ratePerH: rateOf(lately),
      standing: standingOf(conditions),
    }),
  };
}

function standingOf(conditions: ReadonlyMap<WarmthAlarm, LastingCondition>): WarmthNow['standing'] {
  const stands = (alarm: WarmthAlarm): number | null => conditions.get(alarm)?.sinceMs() ?? null;
  return warmthAlarms.flatMap((alarm) => {
    const sinceMs = stands(alarm);
    const worse = impliedBy[alarm];
    if (sinceMs === null || (worse !== undefined && stands(worse) !== null)) return [];
    return [{ alarm, sinceIso: new Date(sinceMs).toISOString() }];
  });
}

function rateOf(minutes: readonly WarmthSpan[]): number | null {
  const [first] = minutes;
  const last = minutes.at(-1);
  if (first === undefined || last === undefined) return null;
  const spanMs = Date.parse(last.atIso) - Date.parse(first.atIso);
  return spanMs < leastRateSpanMs ? null : ((last.meanC - first.meanC) * hourMs) / spanMs;
}
