import { expect, test } from 'vitest';
import { createMonitor, type RunInput } from '#shared-core';
import { barometerSettings, mark, simulatedReadings } from './support.ts';

const changeS = 2400;
const readings = simulatedReadings({ durationS: 2700 });

/** The snapshot at the end of a run whose line was lost for a minute and came back as it is said. */
function after(reason: 'unplugged' | 'probe-changed', settings = barometerSettings) {
  const monitor = createMonitor(settings, { forecasts: false });
  const link = (timeS: number, state: 'lost' | 'back'): RunInput => ({
    kind: 'link',
    timeS,
    state,
    reason: state === 'lost' ? 'unplugged' : reason,
  });
  const inputs = [
    mark(1, 1, { type: 'heat-on' }),
    ...readings.filter(({ timeS }) => timeS <= changeS || timeS > changeS + 60),
    link(changeS + 2, 'lost'),
    link(changeS + 60, 'back'),
  ].sort((a, b) => a.timeS - b.timeS);
  for (const input of inputs) monitor.push(input);
  return monitor.snapshot();
}

const widthOf = ({ vapour }: ReturnType<typeof after>): number => {
  const strength = vapour?.alcoholByVolume;
  if (strength === undefined || strength === null) throw new Error('No strength is told.');
  return strength.high - strength.low;
};

test('a strength by another probe than the run began with is told with more doubt, and why', () => {
  const [same, other] = [after('unplugged'), after('probe-changed')];
  expect(same.channelProblems).toEqual([]);
  expect(other.channelProblems).toEqual([
    { fromS: changeS + 60, problem: expect.stringMatching(/^Since 0:41:00 another probe is read/) },
  ]);
  expect(widthOf(other)).toBeGreaterThan(1.3 * widthOf(same));
});

test('a probe that was changed before the run’s first reading is the run’s own', () => {
  const monitor = createMonitor(barometerSettings, { forecasts: false });
  monitor.push({ kind: 'link', timeS: 0.5, state: 'back', reason: 'probe-changed' });
  for (const reading of readings.slice(0, 60)) monitor.push(reading);
  expect(monitor.snapshot().channelProblems).toEqual([]);
});
