import { expect, test } from 'vitest';
import { decideReload } from '../../../app/electron/reload-limit.ts';

const minuteMs = 60_000;

/** What is decided for a window that falls over at these minutes. */
function decisions(minutes: readonly number[]): readonly boolean[] {
  let reloadsMs: readonly number[] = [];
  return minutes.map((minute) => {
    const decision = decideReload(reloadsMs, minute * minuteMs);
    reloadsMs = decision.reloadsMs;
    return decision.reload;
  });
}

test('a window is reloaded at most three times in ten minutes', () => {
  expect(decisions([0, 1, 2, 3, 9.99])).toEqual([true, true, true, false, false]);
});

test('reloads older than ten minutes no longer count', () => {
  expect(decisions([0, 1, 2, 10, 10.5, 11])).toEqual([true, true, true, true, false, true]);
});
