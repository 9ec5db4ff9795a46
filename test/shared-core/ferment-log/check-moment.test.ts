import { describe, expect, test } from 'vitest';
import { checkMoment, type KnownMoments } from '../../../shared-core/ferment-log/check-moment.ts';

const minuteMs = 60_000;
const hourMs = 60 * minuteMs;
const now = Date.parse('2026-05-02T08:00:00.000Z');
const iso = (ms: number): string => new Date(ms).toISOString();

/** What is said to a moment so long from now; '' where it is taken. */
function refusal(fromNowMs: number, known: Partial<KnownMoments> = {}): string {
  const checked = checkMoment(iso(now + fromNowMs), {
    nowMs: now,
    beganAtIso: null,
    lastKeptIso: null,
    ...known,
  });
  return checked.ok ? '' : checked.error;
}

describe('a moment of a ferment', () => {
  test('may be as far ahead as clocks of a bench differ, three minutes, and no further', () => {
    expect(refusal(3 * minuteMs)).toBe('');
    expect(refusal(3 * minuteMs + 1)).toBe(
      "That moment is 3 minutes ahead of the computer's clock. Put right whichever is wrong",
    );
  });

  test('may be 200 days back, and no further: the year is a slip of the pen', () => {
    expect(refusal(-200 * 24 * hourMs)).toBe('');
    expect(refusal(-200 * 24 * hourMs - 1)).toBe('That moment is 200 days ago. Look at the year');
  });

  test('may be as far before the beginning as clocks differ, and no further', () => {
    const beganAtIso = iso(now - hourMs);
    expect(refusal(-63 * minuteMs, { beganAtIso })).toBe('');
    expect(refusal(-63 * minuteMs - 1, { beganAtIso })).toBe(
      'That moment is 3 minutes before the ferment was begun. Look at the day and the time',
    );
  });

  test('is not taken while the clock stands before the last entry by more than clocks differ', () => {
    expect(refusal(0, { lastKeptIso: iso(now + 3 * minuteMs) })).toBe('');
    expect(refusal(0, { lastKeptIso: iso(now + 3 * minuteMs + 1) })).toBe(
      "The computer's clock stands 3 minutes before the last entry was kept. Put the clock right first",
    );
    expect(refusal(0, { lastKeptIso: iso(now - hourMs) })).toBe('');
  });

  test('is a day and a time', () => {
    const known = { nowMs: now, beganAtIso: null, lastKeptIso: null };
    expect(checkMoment('yesterday', known)).toEqual({
      ok: false,
      error: 'That is no day and time',
    });
  });
});

describe('how far off it is', () => {
  test('is told in minutes below an hour, in hours below two days, then in days', () => {
    const ahead = [59, 60, 89, 90, 48 * 60 - 1, 48 * 60, 59 * 60, 60 * 60];
    const told = ahead.map(
      (minutes) => /is (.*) ahead/.exec(refusal(minutes * minuteMs))?.[1] ?? 'nothing',
    );
    expect(told).toEqual([
      '59 minutes',
      '1 hour',
      '1 hour',
      '2 hours',
      '48 hours',
      '2 days',
      '2 days',
      '3 days',
    ]);
  });
});
