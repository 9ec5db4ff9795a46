import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { untilOutOfPatience } from '../../app/end-patience.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** What is said and done over time, for a run that its disk has taken after so long [s]. */
async function ending(savedAfterS: number): Promise<readonly string[]> {
  const told: string[] = [];
  let nowS = 0;
  void untilOutOfPatience({
    mostMs: 4000,
    mostSavingMs: 60_000,
    isSaving: () => nowS < savedAfterS,
    onSaving: () => told.push(`waits at ${nowS} s`),
  }).then(() => told.push(`ends at ${nowS} s`));
  for (; nowS <= 120; nowS += 1) await vi.advanceTimersByTimeAsync(1000);
  return told;
}

test('what hangs is left behind soon, and a run that is not on the disk yet is waited for, for a minute', async () => {
  expect([await ending(0), await ending(20), await ending(1000)]).toEqual([
    ['ends at 3 s'],
    ['waits at 3 s', 'ends at 24 s'],
    ['waits at 3 s', 'ends at 63 s'],
  ]);
});
