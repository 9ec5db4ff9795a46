import { describe, expect, test } from 'vitest';
import { createMonitor, type RunInput } from '#shared-core';
import { limitTemperatureC } from '../../../shared-core/equilibrium/limit-temperature.ts';
import { createVapourScale } from '../../../shared-core/monitor/situation/vapour-scale.ts';
import { head, pearSettings, simulatedReadings } from './support.ts';

/** A still in which vapour leaves the plateau at 2300 s and reaches 80 % vol some two minutes later. */
const truly = simulatedReadings({ durationS: 3600 });
const truePassS = truly.find(
  (input) =>
    input.kind === 'reading' &&
    input.timeS > 1500 &&
    input.value > limitTemperatureC({ leastStrengthAbv: 80, pressureKPa: 99.4 }),
)?.timeS as number;

/** The same still by a bulb that hangs too high: it loses heat to the room, by more or less as the draught goes. */
function hungTooHigh(lostK: number, swing: number): RunInput[] {
  return truly.map((input) => {
    if (input.kind !== 'reading') return input;
    const lost = (lostK / 60) * (1 + swing * Math.sin(input.timeS / 150));
    return head(input.timeS, 20 + (input.value - 20) * (1 - lost));
  });
}

/** True strength of the vapour at a head temperature that a sound probe shows [% vol]. */
const trueAbvAt = (timeS: number): number => {
  const input = truly[timeS];
  if (input?.kind !== 'reading') throw new Error('There is a reading every second.');
  return createVapourScale(99.4, 80).strengthAbv(input.value);
};

describe('a head that reads too low for vapour and then rises away', () => {
  test('is doubted, staged all the same, and called off about when the limit is reached, once', () => {
    const monitor = createMonitor(pearSettings, { forecasts: false });
    for (const input of hungTooHigh(7, 0.15)) {
      if (input.timeS > truePassS + 300) break;
      const { vapour } = monitor.push(input);
      const told = vapour?.alcoholByVolume ?? null;
      if (told === null) continue;
      expect(told.low - 1).toBeLessThan(trueAbvAt(input.timeS));
      expect(told.high + 1).toBeGreaterThan(trueAbvAt(input.timeS));
    }
    const { alarms, stages } = monitor.verdicts();
    expect(alarms[0]?.alarm).toBe('bulb-doubted');
    const calls = alarms.filter(({ alarm }) => alarm === 'plateau-departure');
    expect(calls).toHaveLength(1);
    expect(calls[0]?.raisedS).toBeGreaterThan(truePassS - 90);
    expect(calls[0]?.raisedS).toBeLessThan(truePassS + 90);
    expect(stages.map(({ stage }) => stage)).toEqual([
      'warm-up',
      'first-fraction',
      'main-fraction',
      'tail',
    ]);
  });

  test('is left alone on its plateau, however long', () => {
    const monitor = createMonitor(pearSettings, { forecasts: false });
    for (const input of hungTooHigh(7, 0.15)) if (input.timeS < 2150) monitor.push(input);
    expect(monitor.verdicts().alarms.map(({ alarm }) => alarm)).toEqual(['bulb-doubted']);
  });
});
