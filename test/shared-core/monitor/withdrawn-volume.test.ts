import { expect, test } from 'vitest';
import type { Estimate, RunInput } from '#shared-core';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { mark, pearSettings, simulatedReadings } from './support.ts';

const endS = 1860;
const readings = simulatedReadings({ durationS: endS });

/** End of the main fraction as it was forecast last before a time [s]. */
function forecastBefore(timeS: number, ...marks: readonly RunInput[]): Estimate {
  const inputs = [...readings, ...marks].toSorted((a, b) => a.timeS - b.timeS);
  const made = analyseRun(pearSettings, inputs, endS).forecasts.findLast(
    ({ madeS }) => madeS <= timeS,
  );
  if (!made?.mainFractionEndS) throw new Error(`no forecast before ${timeS} s`);
  return made.mainFractionEndS;
}

/** A balance beside the head: then two twins take the run in, each in its own time. */
const weighed: readonly RunInput[] = readings.flatMap(({ timeS }) =>
  timeS < 900
    ? [{ kind: 'reading', timeS, channel: 'receiver', value: 0, unit: 'g', quality: 'good' }]
    : [],
);

// Some 13 mL have come by then: the figure of another line of the notebook was booked.
const wrong = mark(1500, 1, { type: 'volume-read', volumeMl: 3.5 });
const withdrawal = mark(1620, 2, { type: 'mark-withdrawn', withdrawnMarkId: 1 });

test('a volume booked wrong is as if not made once it is withdrawn, for the forecast too', () => {
  const without = forecastBefore(endS);
  const withdrawn = forecastBefore(endS, wrong, withdrawal);
  const widthS = without.high - without.low;
  expect(Math.abs(withdrawn.value - without.value)).toBeLessThan(0.15 * widthS);
  expect(withdrawn.high - withdrawn.low).toBeGreaterThan(0.75 * widthS);
  expect(withdrawn.high - withdrawn.low).toBeLessThan(1.3 * widthS);
});

test('it stood before, and moved the forecast by many minutes', () => {
  expect(forecastBefore(1600, wrong).value - forecastBefore(1600).value).toBeGreaterThan(600);
});

test('it may be withdrawn in any second in which the twins are taking in what they were shown', () => {
  for (const timeS of [1560, 1561, 1562, 1563, 1565]) {
    const inputs = [...readings, ...weighed, wrong, { ...withdrawal, timeS }];
    inputs.sort((a, b) => a.timeS - b.timeS);
    const { forecasts } = analyseRun(pearSettings, inputs, endS);
    const minutes = forecasts.map(({ madeS }) => madeS / 60);
    // Each minute is told of once, and none is left out.
    expect(minutes).toEqual(minutes.map((_, index) => (minutes[0] ?? 0) + index));
    expect(minutes.at(-1)).toBe(30);
  }
});
