import { describe, expect, test } from 'vitest';
import { createMonitor, limitTemperatureC, type RunInput } from '#shared-core';
import { createDoubtfulRiseWatch } from '../../../shared-core/monitor/doubtful-rise-watch.ts';
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

describe('a head that reads too low for vapour and then rises away', () => {
  test('asks for a look at the distillate about when the limit is reached, once, and tells no strength', () => {
    const monitor = createMonitor(pearSettings, { forecasts: false });
    const said = new Set<string>();
    for (const input of hungTooHigh(7, 0.15)) {
      const { alarms, sentence, act, vapour } = monitor.push(input);
      if (!alarms.some(({ alarm, state }) => alarm === 'plateau-departure' && state !== 'normal')) {
        continue;
      }
      said.add(`${sentence} ${act}`);
      expect(vapour?.alcoholByVolume ?? null).toBeNull();
      if (said.size > 0 && input.timeS > truePassS + 200) break;
    }
    expect([...said]).toEqual([
      'The head rises away from its level; it cannot be relied on for strength. Check the distillate; take the heat off if it is weak.',
    ]);
    const calls = monitor.verdicts().alarms.filter(({ alarm }) => alarm === 'plateau-departure');
    expect(calls).toHaveLength(1);
    expect(calls[0]?.raisedS).toBeGreaterThan(truePassS - 60);
    expect(calls[0]?.raisedS).toBeLessThan(truePassS + 120);
    expect(calls[0]?.because).toMatch(/^The head cannot be relied on: it has read as low as/);
  });

  test('is left alone on its plateau, however long', () => {
    const monitor = createMonitor(pearSettings, { forecasts: false });
    for (const input of hungTooHigh(7, 0.15)) if (input.timeS < 2250) monitor.push(input);
    expect(monitor.verdicts().alarms.map(({ alarm }) => alarm)).toEqual(['bulb-doubted']);
  });
});

describe('the watch for such a rise', () => {
  const azeotropeC = 77.5;
  const limitC = 82.8;
  /** Seconds of a doubted head; true where the rise has been found by the end. */
  const isFound = (
    endS: number,
    readC: (timeS: number) => number,
    scaleC: (timeS: number) => number = () => azeotropeC,
  ): boolean => {
    const watch = createDoubtfulRiseWatch();
    for (let timeS = 0; timeS <= endS; timeS += 1) {
      const bulbC = readC(timeS);
      watch.second({
        timeS,
        head: {
          bulbC,
          vapourC: bulbC,
          vapourSdK: 0.03,
          rateKPerS: bulbC - readC(timeS - 1),
          rateSdKPerS: 0.001,
        },
        doubt: bulbC < scaleC(timeS) - 1 ? 'below-boiling' : null,
        azeotropeC: scaleC(timeS),
        limitC: scaleC(timeS) + limitC - azeotropeC,
        isHeatOff: false,
      });
    }
    return watch.rise() !== null;
  };
  const ramp = (fromS: number, kPerS: number) => (timeS: number) =>
    71.5 + Math.max(0, kPerS * (timeS - fromS));

  test('finds a tail, though its end still reads below the limit', () => {
    expect(isFound(1200, ramp(900, 1.5 / 60))).toBe(true);
    expect(isFound(1150, ramp(900, 1.5 / 60))).toBe(false);
  });

  test('is not fooled by a swing, nor by heat that goes and comes back', () => {
    expect(isFound(6000, (timeS) => 71.5 + 2.5 * Math.sin(timeS / 120))).toBe(false);
    const away = (timeS: number): number =>
      timeS < 900 || timeS > 1100
        ? 71.5
        : 71.5 - Math.min(8, 0.1 * (timeS - 900), 0.2 * (1100 - timeS));
    expect(isFound(2000, away)).toBe(false);
  });

  test('takes a bulb that is wetted or hung lower for another bulb, and a corrected pressure for another scale', () => {
    const hungLower = (timeS: number): number =>
      71.5 + Math.min(7, Math.max(0, 0.3 * (timeS - 900)));
    expect(isFound(1500, hungLower)).toBe(false);
    const corrected = (timeS: number): number => (timeS < 1000 ? azeotropeC : 71.3);
    expect(isFound(1300, ramp(900, 1.5 / 60), corrected)).toBe(false);
    const correctedAfter = (timeS: number): number => (timeS < 1250 ? azeotropeC : 71.3);
    expect(isFound(1240, ramp(900, 1.5 / 60), correctedAfter)).toBe(true);
    expect(isFound(1300, ramp(900, 1.5 / 60), correctedAfter)).toBe(false);
  });
});
