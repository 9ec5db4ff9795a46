import { expect, test } from 'vitest';
import { createPressureWatch } from '../../../../shared-core/monitor/sense/pressure-watch.ts';

/** When a barometer is first said to differ from 98.6 kPa, and when no more [s]. */
function turns(shownKPa: (timeS: number) => number | null, standardKPa = 0.1): readonly string[] {
  const watch = createPressureWatch();
  const told: string[] = [];
  let was = false;
  for (let timeS = 1; timeS <= 2000; timeS += 1) {
    watch.second(timeS, shownKPa(timeS), 98.6, standardKPa);
    const difference = watch.difference();
    if ((difference !== null) === was) continue;
    was = difference !== null;
    told.push(difference === null ? `over ${timeS}` : `${timeS} since ${difference.sinceS}`);
  }
  return told;
}

test('a barometer that says otherwise for a minute is told of, and so is that it no longer does', () => {
  expect(turns((timeS) => (timeS < 500 || timeS >= 900 ? 98.5 : 101.3))).toEqual([
    '560 since 500',
    'over 960',
  ]);
});

test('a short jump, the weather of a run, silence, and what an altitude leaves open are not told of', () => {
  expect([
    turns((timeS) => (timeS >= 500 && timeS < 550 ? 60 : 98.6)),
    turns((timeS) => 98.6 + timeS / 4000),
    turns(() => null),
    turns(() => 101, 1),
  ]).toEqual([[], [], [], []]);
});
