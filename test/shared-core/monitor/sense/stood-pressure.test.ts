import { expect, test } from 'vitest';
import { createStoodPressure } from '../../../../shared-core/monitor/sense/stood-pressure.ts';

/** What has stood at the end of readings every five seconds. */
function stood(shownKPa: (timeS: number) => number, untilS: number): number | null {
  const watch = createStoodPressure();
  let stoodKPa: number | null = null;
  for (let timeS = 0; timeS <= untilS; timeS += 5) stoodKPa = watch.see(timeS, shownKPa(timeS));
  return stoodKPa;
}

test('a pressure is known once it has stood for a minute, and nothing shown later is followed', () => {
  const shown = (timeS: number): number => (timeS <= 60 ? 98.6 : timeS < 600 ? 60 : Number.NaN);
  expect([stood(shown, 55), stood(shown, 60), stood(shown, 3600)]).toEqual([null, 98.6, 98.6]);
});

test('what stands before the sensor has woken is not taken for the air pressure', () => {
  expect(stood((timeS) => (timeS < 30 ? 101.325 : 90.2), 600)).toBeCloseTo(90.2, 9);
});

test('a channel that never stands still is never believed', () => {
  expect(stood((timeS) => 98 + ((timeS / 5) % 2), 3600)).toBeNull();
});

test('a slow logger needs three readings', () => {
  const watch = createStoodPressure();
  expect([0, 60, 120].map((timeS) => watch.see(timeS, 95.1))).toEqual([null, null, 95.1]);
});
