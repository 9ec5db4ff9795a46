import { assertNever, say } from '#shared-core';
import { locale } from '../words/index.ts';

/** A stretch of time [s], from the same beginning as whatever it is compared with. */
export interface Stretch {
  readonly low: number;
  readonly high: number;
}

/** Such a stretch, and the moment it was reckoned at [s]. */
export interface Expectation extends Stretch {
  readonly madeS: number;
}

/** When something is expected, as far as it helps somebody who plans a lesson; times of the clock [ms]. */
export type ExpectedTime =
  | { readonly kind: 'window'; readonly lowMs: number; readonly highMs: number }
  /** The range is too wide to plan by; before its beginning it need not be reckoned with. */
  | { readonly kind: 'too-early'; readonly notBeforeMs: number }
  /** The same, and it has begun, or is about to: when to look next is all that can be planned. */
  | { readonly kind: 'from-now-on' }
  | { readonly kind: 'overdue' };

const minuteS = 60;
/** What a teacher can plan by, no source: no wider than most of a lesson, nor than what is left until its middle. */
const widestS = 40 * minuteS;
/** So narrow, it helps however near it is. */
const narrowS = 10 * minuteS;
/** Ends of wide ranges are told to so many minutes: what begins within them may be now. */
const wideStepS = 5 * minuteS;
/** Narrow enough to be counted down before a class. */
const countedDownS = 5 * minuteS;

/** Whether a range ahead of the moment it was reckoned at [s] is of use to somebody with a timetable. */
export function isOfUse({ low, high }: Stretch): boolean {
  const fromS = Math.max(0, low);
  const widthS = high - fromS;
  return widthS <= widestS && (widthS <= narrowS || widthS <= (fromS + high) / 2);
}

/** Whether a range ahead of now [s] may be counted down for all to see. */
export function isCountable({ low, high }: Stretch): boolean {
  return high > 0 && high - low <= countedDownS;
}

/** Snapshots are late by seconds, not by this long [ms]. */
const clockSetMs = 60_000;

/**
 * When a run began by the clock as it stands now [ms]: as recorded, unless the clock was set since by a minute or more, as one that was wrong and
 * found a time server. Run time does not follow the clock, but people read what is expected from it.
 */
export function startByClock(recordedMs: number, timeS: number, nowMs: number): number {
  const byClockMs = nowMs - 1000 * timeS;
  if (!(Math.abs(byClockMs - recordedMs) >= clockSetMs)) return recordedMs;
  // Of one moment from snapshot to snapshot.
  return Math.round(byClockMs / clockSetMs) * clockSetMs;
}

/**
 * A range of run time [s] on the clock, seen from now. Whether it is of use is asked of it as it was reckoned: one that has been told is not
 * withheld for having come nearer.
 */
export function expectedTime(range: Expectation, runStartMs: number, nowMs: number): ExpectedTime {
  const { low, high, madeS } = range;
  const lowMs = runStartMs + 1000 * low;
  const highMs = runStartMs + 1000 * high;
  if (highMs <= nowMs) return { kind: 'overdue' };
  const isNear = isOfUse({ low: (lowMs - nowMs) / 1000, high: (highMs - nowMs) / 1000 });
  if (isNear || isOfUse({ low: low - madeS, high: high - madeS })) {
    return { kind: 'window', lowMs: Math.max(lowMs, nowMs), highMs };
  }
  return lowMs - nowMs < 1000 * wideStepS
    ? { kind: 'from-now-on' }
    : { kind: 'too-early', notBeforeMs: lowMs };
}

/** `about 10:25 – 10:40`, or why there is no such range. */
export function expectedTimeWords(expected: ExpectedTime): string {
  switch (expected.kind) {
    case 'window':
      return say('about {times}', { times: clockRangeWords(expected) });
    case 'too-early':
    case 'from-now-on':
      return say('too early to tell');
    case 'overdue':
      return say('any moment now');
    default:
      return assertNever(expected);
  }
}

/** Ends rounded outwards, to five minutes where the range is wide: more would promise too much. */
function clockRangeWords({ lowMs, highMs }: { lowMs: number; highMs: number }): string {
  const stepMs = 1000 * (highMs - lowMs >= 1000 * narrowS ? wideStepS : minuteS);
  const from = Math.floor(lowMs / stepMs) * stepMs;
  const to = Math.ceil(highMs / stepMs) * stepMs;
  return new Intl.DateTimeFormat(locale(), { timeStyle: 'short' }).formatRange(from, to);
}
