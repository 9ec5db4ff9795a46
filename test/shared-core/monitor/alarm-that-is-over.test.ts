import { expect, test } from 'vitest';
import { createMonitor, type RunInput } from '#shared-core';
import { mark, pearSettings, simulatedReadings } from './support.ts';

/** What the alarms ask for at each whole second, in a run that is watched from the beginning to its end. */
function asked(inputs: readonly RunInput[]) {
  const monitor = createMonitor(pearSettings);
  const told: { readonly isActive: boolean; readonly act: string | null }[] = [];
  let nextS = 0;
  for (const input of inputs) {
    for (; nextS <= input.timeS; nextS += 1) {
      for (const { state, act } of monitor.advanceTo(nextS).alarms) {
        told.push({ isActive: state === 'unacknowledged' || state === 'acknowledged', act });
      }
    }
    monitor.push(input);
  }
  return told;
}

test('an alarm asks for its act while its condition lasts, and for nothing once it is over', () => {
  const readings = simulatedReadings({ durationS: 5400 });
  const once = readings.filter(({ timeS }) => timeS <= 1400 || timeS >= 1420);
  const callS = 4700;
  const inputs = [...once, mark(callS, 1, { type: 'heat-off' })].toSorted(
    (a, b) => a.timeS - b.timeS,
  );
  const told = asked(inputs);
  expect(told.some(({ isActive }) => !isActive)).toBe(true);
  expect(told.filter(({ isActive, act }) => isActive === (act === null))).toEqual([]);
});
