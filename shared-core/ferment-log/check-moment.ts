import { fail, type Result, succeed } from '../result/index.ts';
import { worded } from '../wording/index.ts';

/** Clocks of a bench and a computer differ by as much and nobody minds [ms]. */
const differsMs = 3 * 60_000;
const hourMs = 3_600_000;
/** No ferment is kept under watch for longer [h]: the year is a slip of the pen. */
const longestH = 24 * 200;

/** The moments that a new one must fit to. */
export interface KnownMoments {
  readonly nowMs: number;
  /** When the ferment began; null for the beginning itself. */
  readonly beganAtIso: string | null;
  /** When anything was last kept by the computer's clock; null where nothing was. */
  readonly lastKeptIso: string | null;
}

/**
 * Whether a moment can be one of a ferment's, or in plain words why not: it has not come yet, lies before the beginning or too far
 * back, or the computer's own clock has gone back since the last entry.
 *
 * @param atIso the moment, ISO 8601
 * @param known the computer's clock [ms since 1970] and the moments known so far
 *
 * Source: this project's rule; no standard.
 * @example
 * const known = { nowMs: Date.parse('2026-05-02T08:00:00Z'), beganAtIso: '2026-05-01T08:00:00Z', lastKeptIso: null };
 * checkMoment('2026-05-02T07:00:00Z', known).ok // => true
 * checkMoment('2026-05-02T13:00:00Z', known) // => { "ok": false, "error": "That moment is 5 hours ahead of the computer's clock. Put right whichever is wrong" }
 */
export function checkMoment(
  atIso: string,
  { nowMs, beganAtIso, lastKeptIso }: KnownMoments,
): Result<void, string> {
  const atMs = Date.parse(atIso);
  if (Number.isNaN(atMs)) return fail(worded('That is no day and time'));
  if (lastKeptIso !== null && nowMs < Date.parse(lastKeptIso) - differsMs) {
    return fail(
      worded(
        "The computer's clock stands {time} before the last entry was kept. Put the clock right first",
        { time: spanWords(Date.parse(lastKeptIso) - nowMs) },
      ),
    );
  }
  if (atMs > nowMs + differsMs) {
    return fail(
      worded("That moment is {time} ahead of the computer's clock. Put right whichever is wrong", {
        time: spanWords(atMs - nowMs),
      }),
    );
  }
  if (beganAtIso !== null && atMs < Date.parse(beganAtIso) - differsMs) {
    return fail(
      worded('That moment is {time} before the ferment was begun. Look at the day and the time', {
        time: spanWords(Date.parse(beganAtIso) - atMs),
      }),
    );
  }
  if (atMs < nowMs - longestH * hourMs) {
    return fail(
      worded('That moment is {time} ago. Look at the year', { time: spanWords(nowMs - atMs) }),
    );
  }
  return succeed(undefined);
}

function spanWords(ms: number): string {
  const hours = ms / hourMs;
  if (hours < 1)
    return worded('{count, plural, one {# minute} other {# minutes}}', {
      count: Math.max(1, Math.round(60 * hours)),
    });
  return hours < 48
    ? worded('{count, plural, one {# hour} other {# hours}}', { count: Math.round(hours) })
    : worded('{count, plural, one {# day} other {# days}}', { count: Math.round(hours / 24) });
}
