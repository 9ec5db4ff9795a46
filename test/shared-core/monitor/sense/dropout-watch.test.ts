import { expect, test } from 'vitest';
import { createDropoutWatch } from '../../../../shared-core/monitor/sense/dropout-watch.ts';
import type { ProbeFault } from '../../../../shared-core/monitor/sense/probe-fault.ts';

/** The spell after each second, where a probe has these faults in turn, each for so many seconds. */
function spellAfter(...stretches: readonly (readonly [number, ProbeFault | null])[]) {
  const watch = createDropoutWatch();
  let timeS = 0;
  for (const [seconds, fault] of stretches)
    for (let second = 0; second < seconds; second += 1) {
      timeS += 1;
      watch.second(timeS, fault);
    }
  return watch.dropouts();
}

test('a dropout is counted once however long it lasts, and the spell has begun with its first', () => {
  expect([
    spellAfter([10, null]),
    spellAfter([10, null], [30, 'lost']),
    spellAfter([10, null], [5, 'lost'], [5, 'silent'], [5, 'open-circuit']),
    spellAfter([10, null], [5, 'lost'], [20, null], [5, 'silent']),
  ]).toEqual([
    { count: 0, sinceS: 0 },
    { count: 1, sinceS: 11 },
    { count: 1, sinceS: 11 },
    { count: 2, sinceS: 11 },
  ]);
});

test('the spell is over after five minutes without a dropout, and the next one begins another', () => {
  expect([
    spellAfter([10, null], [5, 'lost'], [299, null]),
    spellAfter([10, null], [5, 'lost'], [300, null]),
    spellAfter([10, null], [5, 'lost'], [300, null], [1, 'lost']),
    spellAfter([10, null], [400, 'lost'], [299, null], [1, 'lost']),
  ]).toEqual([
    { count: 1, sinceS: 11 },
    { count: 0, sinceS: 0 },
    { count: 1, sinceS: 316 },
    { count: 2, sinceS: 11 },
  ]);
});

test('readings that cannot be right are no dropout', () => {
  expect(spellAfter([10, 'frozen'], [10, 'spikes'], [10, 'hotter-than-pot'])).toEqual({
    count: 0,
    sinceS: 0,
  });
});
